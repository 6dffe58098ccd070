import { expect, test } from "vitest";
import { madeUpPerson } from "../testing/index.ts";
import { markAlike, nameOnRoster, nameOnSheet } from "./name-on-sheet.ts";

test.each([
  ["Dagny Thistlemere", "Dagny T."],
  ["Ilario Penhallow-Sato", "Ilario P."],
  ["Bao-Linh Merriwick", "Bao-Linh M."],
  ["Mary Ann de la Tour", "Mary Ann de la T."],
  ["  Wren   Castellamor ", "Wren C."],
  ["Ada ørsted", "Ada Ø."],
  ["Ευαγγελία Ξένου", "Ευαγγελία Ξ."],
  ["Дмитрий Щукин", "Дмитрий Щ."],
  ["Tamsilune", "Tamsilune"],
  ["王小明", "王小明"],
  ["山田 さくら", "山田 さくら"],
  ["ليان الصفصافي", "ليان الصفصافي"],
  ["Ann 7th", "Ann 7th"],
  ['"q" #x', '"q" #x'],
])("%s is written %s", (name, written) => expect(nameOnSheet({ id: "one", name })).toBe(written));

test("two who are written alike have their ids beside the name, others have not", () => {
  const people = [
    madeUpPerson({ id: "rowan-p", name: "Rowan Pellgarth" }),
    madeUpPerson({ id: "rowan-q", name: "rowan  pellgarth" }),
    madeUpPerson({ id: "rowan-r", name: "Rowan Quill" }),
    madeUpPerson({ id: "ro", name: "Rowan Penn" }),
  ];
  const marked = markAlike(people);
  expect(marked.map(nameOnSheet)).toEqual(["Rowan P. (rowan-p)", "rowan P. (rowan-q)", "Rowan Q.", "Rowan P. (ro)"]);
  expect(marked.map(nameOnRoster).slice(0, 3)).toEqual([
    "Rowan Pellgarth (rowan-p)",
    "rowan  pellgarth (rowan-q)",
    "Rowan Quill",
  ]);
  expect(markAlike([people[2]!])).toEqual([people[2]]);
});

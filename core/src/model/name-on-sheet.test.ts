import { expect, test } from "vitest";
import { nameOnRoster, nameOnSheet, writtenAlike } from "./name-on-sheet.ts";

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
    { id: "rowan-p", name: "Rowan Pellgarth" },
    { id: "rowan-q", name: "rowan  pellgarth" },
    { id: "rowan-r", name: "Rowan Quill" },
    { id: "ro", name: "Rowan Penn" },
  ];
  const alike = writtenAlike(people);
  const sheets = ["Rowan P. (rowan-p)", "rowan P. (rowan-q)", "Rowan Q.", "Rowan P. (ro)"];
  expect(people.map((person) => nameOnSheet(person, alike))).toEqual(sheets);
  expect(nameOnRoster(people[0]!, alike)).toBe("Rowan Pellgarth (rowan-p)");
  expect(nameOnRoster(people[2]!, alike)).toBe("Rowan Quill");
  expect(writtenAlike(people.slice(2)).size).toBe(0);
});

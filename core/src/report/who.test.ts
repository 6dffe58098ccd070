import { expect, test } from "vitest";
import { nameOnSheet } from "./who.ts";

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
])("%s is written %s", (name, written) => expect(nameOnSheet(name)).toBe(written));

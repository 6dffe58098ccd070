import { expect, test } from "vitest";
import { judgeCertainty, type Said } from "./judge-certainty.ts";

const said = (person: number, chance: number, happened: boolean): Said => ({ person, chance, happened });

test("what was said near a level, and how often it came true; edges belong to the level above", () => {
  const all = [
    said(1, 0.65, true),
    said(1, 0.7, false),
    said(1, 0.775, true),
    said(2, 0.899, false),
    said(2, 0.9, true),
    said(2, 1, true),
    said(2, 0.5, false),
  ];
  const found = judgeCertainty(all, 1);
  expect(found.map(({ level, cases }) => [level, cases])).toEqual([
    [0.7, 2],
    [0.85, 2],
    [0.95, 2],
  ]);
  expect(found.map((each) => each.said)).toEqual([0.675, 0.837, 0.95]);
  expect(found.map(({ happened }) => happened.value)).toEqual([0.5, 0.5, 1]);
  expect(found[1]!.happened).toMatchObject({ low: 0, high: 1, n: 2 });
});

test("nothing said, nothing told", () => expect(judgeCertainty([], 1)).toEqual([]));

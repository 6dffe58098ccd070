import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { CATALOGUE } from "./catalogue.ts";
import { readOwnExercises } from "./index.ts";
import { mergeOwn } from "./own-merge.ts";
import { entryFaults } from "./own-rules.ts";

test("every entry of the catalogue keeps the rules that a coach's own have to keep", () => {
  const faults = [...CATALOGUE.exercises.values()].flatMap((exercise) =>
    entryFaults(exercise).map(({ code, found }) => `${exercise.id}: ${code} ${found ?? ""}`),
  );
  expect(faults).toEqual([]);
});

test("an exercise of the catalogue is no new one: its id, its name and its faults are taken", () => {
  const squat = CATALOGUE.exercises.get("goblet-squat")!;
  const merged = mergeOwn(CATALOGUE, [{ exercise: squat, easier: [], harder: [], none: [] }]);
  expect(merged.ok ? [] : merged.faults[0]!.map(({ code }) => code)).toEqual([
    "own/taken",
    "own/name-taken",
    ...Array.from({ length: 3 }, () => "own/fault-taken"),
  ]);
});

test("what the guide shows is read", () => {
  const [, text] = /^```yaml\n([\s\S]*?)^```/m.exec(readFileSync("docs/guide/own-exercises.md", "utf8"))!;
  expect(readOwnExercises(text!, "guide").problems).toEqual([]);
});

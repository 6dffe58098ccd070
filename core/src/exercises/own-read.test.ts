import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { parse, stringify } from "yaml";
import { CATALOGUE, distance, easierOf, harderOf, nearExercises, readOwnExercises } from "./index.ts";

const TEXT = readFileSync("examples/ropewalk/own-exercises.yaml", "utf8");
type Entry = Record<string, unknown>;
const written = (value: unknown) => stringify(value, { aliasDuplicateObjects: false });
const [CAPSTAN, DRAG] = (parse(TEXT) as { exercises: [Entry, Entry] }).exercises;

/** The file with the first entry changed; undefined takes a key out. */
function withChange(change: Entry, ...more: readonly Entry[]): string {
  const entry = Object.fromEntries(
    Object.entries({ ...CAPSTAN, ...change }).filter(([, value]) => value !== undefined),
  );
  return written({ stave: 1, exercises: [entry, ...more] });
}
const read = (text: string) => readOwnExercises(text, "own.yaml");
const catalogueOf = (text: string) => {
  const found = read(text);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found.value;
};
const problemsOf = (change: Entry, ...more: readonly Entry[]) =>
  read(withChange(change, ...more)).problems.map(({ code, at }) => [code, at.slice(2).join(".")]);

describe("a coach's own exercises stand after the catalogue", () => {
  const merged = catalogueOf(TEXT);
  test("the catalogue itself stays as it was", () => {
    expect(merged.exercises.size).toBe(CATALOGUE.exercises.size + 2);
    expect([...merged.exercises.values()].slice(0, CATALOGUE.exercises.size)).toEqual([
      ...CATALOGUE.exercises.values(),
    ]);
    expect(CATALOGUE.exercises.has("capstan-touch-squat")).toBe(false);
  });
  test("easier and harder are mutual and count as steps", () => {
    expect(harderOf(merged, "sit-to-stand-45")).toContain("capstan-touch-squat");
    expect(easierOf(merged, "body-squat")).toContain("capstan-touch-squat");
    expect(distance(merged, "capstan-touch-squat", "goblet-squat")).toBe(2);
    expect(distance(merged, "sit-to-stand-45", "body-squat")).toBe(2);
  });
  test("what is not said comes from the usual of its kind; what is said stands", () => {
    expect(merged.exercises.get("rope-drag-seated")).toMatchObject({
      amounts: "reps",
      mode: "dynamic",
      eachSide: false,
      seated: true,
      hands: "two",
      needs: [["sled"]],
      loadMeaning: "total",
      stress: { grip: 2, pressor: 1, elbow: 1, floor: 1 },
      sources: ["ours"],
    });
  });
  test("near names find them", () => {
    expect(nearExercises(merged, "capstan squatt").map(({ id }) => id)).toContain("capstan-touch-squat");
  });
  test("a stress of 0 is said and not there; a share, a gate and a hold are taken", () => {
    const catalogue = catalogueOf(
      withChange({
        stress: { hip_deep: 2, knee_deep: 2, ankle_df: 1, pressor: 1, balance: 0 },
        share: 0.8,
        gate: { of: "sit-to-stand-45", reps: 12, sets: 2 },
      }),
    );
    const entry = catalogue.exercises.get("capstan-touch-squat")!;
    expect(entry.stress).not.toHaveProperty("balance");
    expect(entry).toMatchObject({
      bodyShare: { share: 0.8, source: "ours" },
      need: { count: { of: "sit-to-stand-45", reps: 12, sets: 2 }, conditions: ["heels stay down"] },
      sources: ["ours", "ours"],
    });
  });
  test("one own exercise may name another that stands before it, and not one after it", () => {
    const second = {
      ...DRAG,
      id: "capstan-pause",
      name: "Paused squat to the capstan",
      pattern: "squat",
      position: "standing",
    };
    const squat = {
      ...second,
      muscles: { "front thigh": 1 },
      stress: CAPSTAN["stress"],
      seated: undefined,
      needs: ["sled"],
    };
    const after = catalogueOf(withChange({}, { ...strip(squat), easier: ["capstan-touch-squat"] }));
    expect(harderOf(after, "capstan-touch-squat")).toEqual(["body-squat", "capstan-pause"]);
    const before = read(
      written({ stave: 1, exercises: [{ ...strip(squat), easier: ["capstan-touch-squat"] }, CAPSTAN] }),
    );
    expect(before.problems.map(({ code }) => code)).toContain("own/not-on-ladder");
  });
});

function strip(entry: Entry): Entry {
  return Object.fromEntries(Object.entries(entry).filter(([, value]) => value !== undefined));
}

describe("the same rules as the catalogue's own entries", () => {
  const faults = CAPSTAN["faults"] as readonly Entry[];
  test.each<[name: string, change: Entry, code: string, at: string]>([
    ["an id of the catalogue", { id: "goblet-squat", name: "Capstan" }, "own/taken", "id"],
    ["a name of the catalogue", { name: "goblet SQUAT" }, "own/name-taken", "name"],
    ["a small first letter", { name: "capstan" }, "own/name", "name"],
    ["a name too long", { name: `C${"apstan ".repeat(6)}x` }, "own/name", "name"],
    ["a set-up of 26 words", { "set-up": "word ".repeat(26).trim() }, "own/words", "set-up"],
    ["a move of 31 words", { move: "word ".repeat(31).trim() }, "own/words", "move"],
    ["a move of 3 words", { move: "Sit and rise" }, "own/words", "move"],
    ["a cue of 9 words", { cues: ["one two three four five six seven eight nine", "b", "c"] }, "own/words", "cues.0"],
    ["a cue that forbids", { cues: ["Rise", "Do not bounce", "Sit"] }, "own/cue-says-not", "cues.1"],
    ["the same cue twice", { cues: ["Rise", "Sit", "Rise"] }, "own/same-cue", "cues.2"],
    ["two cues", { cues: ["Rise", "Sit"] }, "value/few", "cues"],
    [
      "four driving muscles",
      { muscles: { "front thigh": 1, buttocks: 1, calf: 1, "low back": 1 } },
      "own/muscles",
      "muscles",
    ],
    ["no muscles in strength work", { muscles: {} }, "own/no-muscles", "muscles"],
    [
      "muscles in mobility",
      { pattern: "mobility", easier: undefined, harder: undefined },
      "own/muscles-uncounted",
      "muscles",
    ],
    ["on the back and no way down", { position: "supine" }, "own/floor", "stress"],
    ["one leg, not each side", { limb: "one leg", "each side": "no" }, "own/each-side", "each side"],
    ["a load with nothing that carries it", { load: "per hand" }, "own/load", "needs"],
    ["its own gate", { gate: { of: "capstan-touch-squat", reps: 8 } }, "own/gate-self", "gate.of"],
    ["a hold without a range", { amounts: "hold" }, "own/hold", "hold"],
    ["a range without a hold", { amounts: "reps", hold: { from: 10, to: 20, step: 5 } }, "own/hold", "hold"],
    ["harder without easier", { easier: undefined }, "own/no-easier", "harder"],
    ["two ladders at once", { harder: ["floor-push-up"] }, "own/not-on-ladder", "easier"],
    ["a way up that turns back", { easier: ["body-squat"], harder: ["sit-to-stand-45"] }, "own/cycle", "harder"],
    [
      "a stress that all beside it have",
      { stress: { hip_deep: 2, knee_deep: 2, pressor: 1 } },
      "own/stress-unsaid",
      "stress",
    ],
    ["an unknown form", { harder: ["body-sqat"] }, "name/unknown", "harder.0"],
    ["an unknown stress", { stress: { knees: 1 } }, "key/unknown", "stress.knees"],
    ["a grade of 4", { stress: { knee_deep: 4 } }, "value/type", "stress.knee_deep"],
    ["unknown equipment", { needs: ["capstan"] }, "value/type", "needs.0"],
    ["an unknown key", { colour: "green" }, "key/unknown", "colour"],
  ])("%s", (_, change, code, at) => {
    expect(problemsOf(change)).toContainEqual([code, at]);
  });
  test("a fault that stands word for word elsewhere is told with whose it is", () => {
    const [other] = CATALOGUE.exercises.get("goblet-squat")!.faults;
    const { problems } = read(withChange({ faults: [{ ...other }, ...faults.slice(1)] }));
    expect(problems).toMatchObject([{ code: "own/fault-taken", found: "goblet-squat", line: expect.any(Number) }]);
  });
  test("the stresses that are missing are named; a 0 answers", () => {
    const { problems } = read(withChange({ stress: { hip_deep: 2, pressor: 1 } }));
    expect(problems.map(({ found }) => found)).toEqual(
      ["knee_deep, ankle_df"].filter((each) => each === problems[0]?.found),
    );
    expect(read(withChange({ stress: { hip_deep: 2, pressor: 1, knee_deep: 0, ankle_df: 0 } })).ok).toBe(true);
  });
  test("on no ladder its kin of pattern and position are asked instead", () => {
    const alone = { easier: undefined, harder: undefined };
    expect(problemsOf({ ...alone, stress: { floor: 1 } }).map(([code]) => code)).toEqual(["own/stress-unsaid"]);
    expect(problemsOf({ ...alone })).toEqual([]);
  });
  test("all that is wrong is told at once, in the order of the file", () => {
    const { problems } = read(withChange({ name: "capstan", cues: ["Rise", "Never sit", "Sit"], id: "walk-brisk" }));
    expect(problems.map(({ code }) => code)).toEqual(["own/taken", "own/name", "own/cue-says-not"]);
    expect(problems.every(({ line, column }) => line > 0 && column > 0)).toBe(true);
  });
});

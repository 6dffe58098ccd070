import { expect, test } from "vitest";
import type { Silence } from "../../model/index.ts";
import {
  madeUpCatalogue,
  madeUpExercise,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
} from "../../testing/index.ts";
import { CHECKS } from "./all.ts";
import { checkProgramme, runChecks } from "./run-checks.ts";

const catalogue = madeUpCatalogue([madeUpExercise({ id: "squat", name: "Squat" })]);
const each = sets(3, reps(8, { eachSide: true }));
const slots = [
  madeUpSlot("squat", "squat", each),
  madeUpSlot("squat", "squat", each, { slot: "b" }),
  madeUpSlot("moonwalk", "squat", each),
];
const input = { programme: madeUpProgramme([madeUpSession("a", 200, slots)]), catalogue };

function idsWith(silence: readonly Silence[]) {
  const { findings, silenced, unused } = runChecks(input, silence);
  const ofSides = (list: readonly { check: string; data: Readonly<Record<string, unknown>> }[]) =>
    list.filter((finding) => finding.check === "dose/one-sided-without-side").map(({ data }) => data["slot"]);
  return { told: ofSides(findings), kept: ofSides(silenced.map(({ finding }) => finding)), unused };
}

test("a silenced finding is kept with its reason, for the whole programme or one slot", () => {
  const check = "dose/one-sided-without-side";
  expect(idsWith([]).told).toEqual(["squat", "b"]);
  expect(idsWith([{ check, reason: "we count so" }])).toMatchObject({ told: [], kept: ["squat", "b"], unused: [] });
  expect(idsWith([{ check, slot: "b", reason: "we count so" }])).toMatchObject({ told: ["squat"], kept: ["b"] });
  const { silenced } = runChecks(input, [{ check, reason: "we count so" }]);
  expect(silenced[0]?.reason).toBe("we count so");
});

test("an exercise that nobody knows cannot be silenced; a silence that silences nothing is told", () => {
  const silence = [
    { check: "slot/unknown-exercise", reason: "later" },
    { check: "no/such-check", reason: "old" },
  ];
  const { findings, silenced, unused } = runChecks(input, silence);
  expect(findings.some((finding) => finding.check === "slot/unknown-exercise")).toBe(true);
  expect(silenced).toEqual([]);
  expect(unused).toEqual(silence);
});

test("the silences of the file are used by themselves", () => {
  const silence = [{ check: "dose/one-sided-without-side", reason: "we count so" }];
  const programme = { ...input.programme, silence };
  expect(checkProgramme({ ...input, programme }).silenced).toHaveLength(2);
});

test("findings stand in the order of the file, what holds before what it holds", () => {
  const paths = runChecks(input, []).findings.map(({ at }) => at.join("."));
  const slotPaths = paths.filter((path) => path.includes("work"));
  expect(paths.indexOf("phases.0")).toBe(0);
  expect(slotPaths).toEqual([...slotPaths].sort());
});

test("of one session, its minutes come before its warm-up, and that before its work", () => {
  const each5 = sets(1, reps(5, { eachSide: true }));
  const tight = madeUpSession("a", 5, slots, { warmup: [{ do: "squat", dose: each5 }] });
  const slow = madeUpCatalogue([madeUpExercise({ id: "squat", name: "Squat", secondsPerRep: 60 })]);
  const { findings } = runChecks({ programme: madeUpProgramme([tight]), catalogue: slow }, []);
  const parts = findings.flatMap(({ at }) => (at[4] === undefined ? [] : [String(at[4])]));
  expect([...new Set(parts)]).toEqual(["minutes", "warmup", "work"]);
  expect(parts).toEqual(parts.toSorted((a, b) => (a < b ? -1 : a > b ? 1 : 0)));
  const works = findings.filter(({ at }) => at[4] === "work").map(({ at }) => Number(at[5]));
  expect(works).toEqual(works.toSorted((a, b) => a - b));
});

test("nothing is offered that brings something as serious", () => {
  const one = madeUpExercise({ id: "one-leg", name: "One leg", eachSide: true, limb: "one leg", secondsPerRep: 60 });
  const tight = {
    programme: madeUpProgramme([madeUpSession("a", 13, [madeUpSlot("one-leg", "single leg", sets(1, reps(10)))])]),
    catalogue: madeUpCatalogue([one]),
  };
  const sides = (minutes: number) => {
    const programme = madeUpProgramme([{ ...tight.programme.phases[0]!.sessions[0]!, minutes }]);
    const { findings } = runChecks({ ...tight, programme }, []);
    return findings.find((finding) => finding.check === "dose/one-sided-without-side")?.remedies.map(({ id }) => id);
  };
  // Twenty minutes of work, 25 at the upper estimate: the remedy would make the session too long.
  expect(sides(24)).toEqual([]);
  expect(sides(25)).toEqual(["say-each-side"]);
});

test("without remedies the findings are the same", () => {
  const full = runChecks(input, []).findings.map(({ remedies: _, ...finding }) => finding);
  const bare = runChecks(input, [], "none").findings;
  expect(bare.map(({ remedies: _, ...finding }) => finding)).toEqual(full);
  expect(bare.every((finding) => finding.remedies.length === 0)).toBe(true);
});

test("the same programme gives the same findings, and is left as it was", () => {
  const before = structuredClone(input.programme);
  expect(runChecks(input, [])).toEqual(runChecks(input, []));
  expect(input.programme).toEqual(before);
});

test("ids are permanent: a noun, a stroke, plain words", () => {
  const ids = CHECKS.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  for (const id of ids) expect(id).toMatch(/^[a-z]+\/[a-z]+(-[a-z]+)*$/);
});

test("the tenth slot comes after the second", () => {
  const many = Array.from({ length: 11 }, (_, n) => madeUpSlot("squat", "squat", each, { slot: `s-${n}` }));
  const { findings } = runChecks({ programme: madeUpProgramme([madeUpSession("a", 200, many)]), catalogue }, []);
  const at = findings.filter((finding) => finding.check === "dose/one-sided-without-side").map((one) => one.at[5]);
  expect(at).toEqual(Array.from({ length: 11 }, (_, n) => n));
});

import { expect, test } from "vitest";
import { typedAnswer } from "./typed-answer.ts";

test("a load with its unit is a load", () => {
  expect(typedAnswer("squat", "goblet-squat", "14 kg")).toEqual({
    ok: true,
    patch: { slot: "squat", change: "load", load: { value: 14, unit: "kg" }, exercise: "goblet-squat" },
  });
  expect(typedAnswer("squat", "goblet-squat", " 12,5kg ")).toMatchObject({
    patch: { load: { value: 12.5, unit: "kg" } },
  });
  expect(typedAnswer("row", "cable-row", "25 lb")).toMatchObject({ patch: { load: { value: 25, unit: "lb" } } });
});

test("sets and an amount are a dose", () => {
  const answer = typedAnswer("squat", "goblet-squat", "3 × 8–10, rest 90 s");
  expect(answer).toMatchObject({ ok: true, patch: { slot: "squat", change: "reps", dose: { restS: 90 } } });
  if (!answer.ok || answer.patch.change !== "reps") return expect.fail("no dose");
  expect(answer.patch.dose.sets.map(({ amount }) => amount)).toEqual(
    Array(3).fill({ kind: "reps", span: { from: 8, to: 10 } }),
  );
});

test("a bare number might be either, so it is asked back with its unit, never guessed", () => {
  expect(typedAnswer("squat", "goblet-squat", "14")).toMatchObject({
    ok: false,
    slips: [{ code: "load/unit", found: "14", maybe: "14 kg, 14 lb" }],
  });
});

test("slips are told with their place", () => {
  expect(typedAnswer("squat", "goblet-squat", "3 × 12-8")).toMatchObject({
    ok: false,
    slips: [{ code: "dose/reversed", maybe: "8–12" }],
  });
  expect(typedAnswer("squat", "goblet-squat", "5000 kg")).toMatchObject({ ok: false, slips: [{ code: "load/size" }] });
  expect(typedAnswer("squat", "goblet-squat", "")).toMatchObject({ ok: false, slips: [{ code: "dose/empty" }] });
});

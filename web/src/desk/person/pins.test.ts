import { type PlanSlot, readDose } from "@stave/core/model";
import { expect, test } from "vitest";
import { draftOf, readPins, typedOf } from "./pins.ts";

const dose = readDose("3 × 8–10 each side, rest 90 s");
const SLOT: PlanSlot = {
  key: "squat-a",
  exercise: "goblet-squat",
  dose: dose.ok ? dose.value : { sets: [] },
  load: { value: 14, unit: "kg" },
  why: [],
  offer: [],
};
const pins = (over: Partial<ReturnType<typeof typedOf>>) => readPins(SLOT, { ...typedOf(SLOT), ...over });

test("what nobody touched is no pin, nor is a load that was emptied", () => {
  expect(pins({})).toEqual({ ok: true, patches: [] });
  expect(pins({ load: " " })).toEqual({ ok: true, patches: [] });
});

test("each thing typed over is a pin of its own", () => {
  expect(pins({ exercise: "front-squat", load: "16 kg" })).toEqual({
    ok: true,
    patches: [
      { slot: "squat-a", change: "exercise", exercise: "front-squat" },
      { slot: "squat-a", change: "load", load: { value: 16, unit: "kg" }, exercise: "front-squat" },
    ],
  });
});

test("sides and rest stand in the text that is typed over, so they are kept", () => {
  expect(typedOf(SLOT).dose).toBe("3 × 8–10 each side, rest 90 s");
  const typed = pins({ dose: "4 × 8–10 each side, rest 90 s" });
  expect(typed).toMatchObject({ ok: true, patches: [{ change: "reps", dose: { restS: 90 } }] });
});

test("a load in the dose's field and a dose in the load's are slips of their own fields", () => {
  expect(pins({ dose: "16 kg" })).toMatchObject({ ok: false, dose: [{ found: "16 kg" }], load: [] });
  expect(pins({ load: "3 × 8" })).toMatchObject({ ok: false, dose: [], load: [{ code: "load/form", found: "3 × 8" }] });
  expect(pins({ load: "16" })).toMatchObject({ ok: false, load: [{ code: "load/unit", maybe: "16 kg, 16 lb" }] });
});

test("a draft comes back, and one that cannot be read is none", () => {
  const stands = typedOf(SLOT);
  expect(draftOf('{"load":"16 kg","dose":3}', stands)).toEqual({ ...stands, load: "16 kg" });
  for (const kept of [undefined, "", "null", "{", "7"]) expect(draftOf(kept, stands)).toEqual(stands);
});

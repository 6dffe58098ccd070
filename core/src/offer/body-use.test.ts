import { describe, expect, test } from "vitest";
import type { Exercise } from "../model/index.ts";
import { madeUpExercise } from "../testing/index.ts";
import { armUse, legUse, type Use, usesTrunk } from "./body-use.ts";

const form = (said: Partial<Exercise>) => madeUpExercise({ id: "form", ...said });

describe("arms", () => {
  const rows: [string, Partial<Exercise>, Use][] = [
    ["a leg press that needs no grip uses none", { hands: "none", position: "seated, back supported" }, "none"],
    [
      "the handles of a leg press can be left by one hand",
      { hands: "two", position: "seated, back supported", loadMeaning: "stack" },
      "either hand",
    ],
    [
      "so can those of a cycle",
      { hands: "two", position: "seated", mode: "cyclic", loadMeaning: "none" },
      "either hand",
    ],
    [
      "those of a rowing machine cannot",
      { hands: "two", position: "seated", mode: "cyclic", loadMeaning: "none", stress: { grip: 1 } },
      "both",
    ],
    [
      "a bar across the hips is held by both, whatever grips it",
      { hands: "two", position: "supine", loadMeaning: "total" },
      "both",
    ],
    ["a barbell takes both", { hands: "two" }, "both"],
    ["one hand works, the other braces: both", { hands: "one, other braces", limb: "one arm" }, "both"],
    ["a one-arm press is one side at a time", { hands: "one", limb: "one arm" }, "one side"],
    ["a one-side carry is one side at a time", { hands: "one", limb: "whole body" }, "one side"],
    ["one hand on a rail while a leg works: either hand", { hands: "one", limb: "split stance" }, "either hand"],
    ["running swings both", { hands: "none", armsUsed: true }, "both"],
    ["no hand on anything but the elbow is loaded: both", { hands: "none", stress: { elbow: 1 } }, "both"],
  ];
  test.each(rows)("%s", (_, said, want) => expect(armUse(form(said))).toBe(want));
});

describe("legs", () => {
  const rows: [string, Partial<Exercise>, Use][] = [
    ["whatever is done standing", { limb: "two arms", position: "standing" }, "both"],
    ["one leg standing still bears on a leg that might slip", { limb: "one leg", position: "standing" }, "both"],
    ["one leg alone in a seat", { limb: "one leg", position: "seated" }, "one side"],
    ["both legs in a seat", { limb: "two legs", position: "seated", muscles: { "front thigh": 1 } }, "both"],
    ["a press flat on the back", { limb: "two arms", position: "supine", muscles: { chest: 1 } }, "none"],
    [
      "arms that work while the buttocks brace hard",
      { limb: "two arms", position: "supine", muscles: { buttocks: 0.5 } },
      "both",
    ],
    ["an entry that needs no leg function", { seated: true, limb: "trunk", position: "seated" }, "none"],
  ];
  test.each(rows)("%s", (_, said, want) => expect(legUse(form(said))).toBe(want));
});

describe("trunk", () => {
  const rows: [string, Partial<Exercise>, boolean][] = [
    [
      "a seated machine press leaves it alone",
      { limb: "two arms", stress: { elbow: 1 }, muscles: { chest: 1 } },
      false,
    ],
    ["trained", { limb: "two arms", muscles: { "low back": 0.5 } }, true],
    ["loaded along the spine", { limb: "two arms", stress: { sp_axial: 1 } }, true],
    ["braced", { limb: "two legs", stress: { abd_press: 1 } }, true],
    ["the limb itself", { limb: "trunk" }, true],
    ["the whole body", { limb: "whole body" }, true],
  ];
  test.each(rows)("%s", (_, said, want) => expect(usesTrunk(form(said))).toBe(want));
});

import { EQUIPMENT, MUSCLES, PATTERNS, STRESS_TAGS } from "@stave/core/model";
import { z } from "zod";
import { documentOf, whole } from "./document.ts";

const text = z.string().min(1);
const pattern = z.enum(PATTERNS);

const exercise = z
  .strictObject({
    id: text,
    name: text,
    synonyms: z.array(text),
    pattern,
    alsoCounts: pattern.exactOptional(),
    limb: z.enum(["two arms", "one arm", "alternating", "two legs", "split stance", "one leg", "whole body", "trunk"]),
    plane: z.enum(["sagittal", "frontal", "transverse", "mixed"]),
    position: z.enum([
      "standing",
      "half-kneeling",
      "tall-kneeling",
      "seated, back supported",
      "seated",
      "supine",
      "prone",
      "side-lying",
      "hands and knees",
      "hanging",
      "leaning",
    ]),
    mode: z.enum(["dynamic", "hold", "ballistic", "cyclic"]),
    hands: z.enum(["none", "one", "one, other braces", "two"]),
    amounts: z.enum(["reps", "hold", "metres", "time", "contacts"]),
    eachSide: z.boolean(),
    /** 1 where the muscle drives the movement, 0.5 where it helps. */
    muscles: z.partialRecord(z.enum(MUSCLES), z.union([z.literal(1), z.literal(0.5)])),
    /** All of the groups, any one of each. */
    needs: z.array(z.array(z.enum(EQUIPMENT)).min(1)),
    loadMeaning: z.enum([
      "total",
      "per hand",
      "one implement",
      "stack",
      "added to body",
      "assist",
      "band",
      "body only",
      "height",
      "none",
    ]),
    bodyShare: z.strictObject({ share: z.number().min(0).max(1), source: text }).exactOptional(),
    need: z.strictObject({
      count: z
        .strictObject({
          of: text,
          reps: whole.exactOptional(),
          holdS: whole.exactOptional(),
          sets: whole.exactOptional(),
        })
        .exactOptional(),
      conditions: z.array(text),
    }),
    /** Base grades at a middle dose, 0 to 3. */
    stress: z.partialRecord(z.enum(STRESS_TAGS), whole.max(3)),
    fixed: z.boolean(),
    coachOnly: z.boolean(),
    armsUsed: z.boolean(),
    seated: z.boolean(),
    lowering: z.boolean(),
    hold: z.strictObject({ from: whole, to: whole, step: whole }).exactOptional(),
    secondsPerRep: z.number().min(0),
    switchS: whole,
    setupS: whole,
    changeS: whole,
    moveS: whole,
    setUp: text,
    move: text,
    cues: z.array(text).length(3),
    faults: z.array(z.strictObject({ see: text, why: text, fix: text })).length(3),
    sources: z.array(text).min(1),
  })
  .meta({ id: "Exercise" });

/** What `stave exercises --json` prints. */
export const exercisesDocument = documentOf("exercises", z.array(exercise).min(1));

import { z } from "zod";
import { type Bundle, EQUIPMENT, MOST_OFFERED, STRESS_TAGS, type StressTag } from "../model/index.ts";
import { counterPiece, dayTextPiece, loadPiece, minutePiece, namePiece, reasonPiece, textPiece } from "./pieces.ts";
import { dosePiece, planSessionPiece } from "./plan-piece.ts";

const MANY = 500;

const stressPiece = z.partialRecord(
  z.enum(STRESS_TAGS),
  z.union([z.literal(0), z.literal(1), z.literal(2), z.literal(3)]),
) as z.ZodType<Readonly<Partial<Record<StressTag, 0 | 1 | 2 | 3>>>>;

const exercisePiece: z.ZodType<Bundle["exercises"][number]> = z.strictObject({
  id: namePiece,
  name: textPiece,
  setUp: textPiece,
  move: textPiece,
  cues: z.tuple([textPiece, textPiece, textPiece]),
  eachSide: z.boolean(),
  amounts: z.enum(["reps", "hold", "metres", "time", "contacts"]),
  hold: z.exactOptional(z.strictObject({ from: z.number(), to: z.number(), step: z.number() })),
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
  stress: stressPiece,
  needs: z.array(z.array(z.enum(EQUIPMENT)).max(MANY)).max(MANY),
  loads: z.array(loadPiece).max(MANY),
  last: z.exactOptional(loadPiece),
});

export const bundlePiece: z.ZodType<Bundle> = z.strictObject({
  v: z.literal(1),
  person: z.strictObject({ id: namePiece, name: textPiece, units: z.enum(["kg", "lb"]) }),
  plan: namePiece,
  n: counterPiece,
  sessions: z
    .array(
      z.strictObject({
        id: namePiece,
        day: dayTextPiece,
        from: minutePiece,
        title: textPiece,
        session: planSessionPiece,
      }),
    )
    .max(MANY),
  exercises: z.array(exercisePiece).max(MANY),
  offers: z
    .array(
      z.strictObject({
        slot: namePiece,
        forms: z
          .array(
            z.strictObject({
              exercise: namePiece,
              load: z.exactOptional(loadPiece),
              dose: z.exactOptional(dosePiece),
              side: z.exactOptional(z.enum(["left", "right"])),
              rung: z.int().min(-100).max(100),
            }),
          )
          .max(MOST_OFFERED),
      }),
    )
    .max(MANY),
  withheld: z.exactOptional(reasonPiece),
  stops: z.array(reasonPiece).max(50),
  paused: z.array(z.strictObject({ slot: namePiece, because: reasonPiece })).max(MANY),
  call: textPiece,
});

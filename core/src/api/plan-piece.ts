import { z } from "zod";
import {
  type Amount,
  DOSE_BOUNDS,
  type Dose,
  type Plan,
  type PlanSession,
  type PlanSlot,
  RUN_WALK_BOUNDS,
  type SetDose,
  type Span,
} from "../model/index.ts";
import { loadPiece, namePiece, reasonPiece, textPiece } from "./pieces.ts";

/** Most entries of a list in a plan. Ours, no source. */
const MANY = 500;

function spanPiece({ from, to }: { readonly from: number; readonly to: number }): z.ZodType<Span> {
  return z
    .strictObject({ from: z.number().min(from).max(to), to: z.number().min(from).max(to) })
    .refine((span) => span.from <= span.to);
}

const amountPiece: z.ZodType<Amount> = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("reps"), span: spanPiece(DOSE_BOUNDS.reps) }),
  z.strictObject({
    kind: z.literal("most"),
    least: z.exactOptional(z.int().min(DOSE_BOUNDS.reps.from).max(DOSE_BOUNDS.reps.to)),
  }),
  z.strictObject({ kind: z.literal("hold"), span: spanPiece(DOSE_BOUNDS.hold) }),
  z.strictObject({ kind: z.literal("metres"), span: spanPiece(DOSE_BOUNDS.metres) }),
  z.strictObject({ kind: z.literal("time"), span: spanPiece(DOSE_BOUNDS.time) }),
  z.strictObject({ kind: z.literal("contacts"), span: spanPiece(DOSE_BOUNDS.contacts) }),
]);

function between({ from, to }: { readonly from: number; readonly to: number }) {
  return z.int().min(from).max(to);
}

const setPiece: z.ZodType<SetDose> = z.strictObject({
  amount: amountPiece,
  eachSide: z.boolean(),
  percent: z.exactOptional(z.number().min(DOSE_BOUNDS.percent.from).max(DOSE_BOUNDS.percent.to)),
  reserve: z.exactOptional(spanPiece(DOSE_BOUNDS.reserve)),
  load: z.exactOptional(loadPiece),
  within: z.exactOptional(
    z.strictObject({
      bouts: z.array(between(DOSE_BOUNDS.reps)).max(DOSE_BOUNDS.bouts.to),
      restS: between(DOSE_BOUNDS.inside),
    }),
  ),
});

const tempoPart = between(DOSE_BOUNDS.tempo);

export const dosePiece: z.ZodType<Dose> = z.strictObject({
  sets: z.array(setPiece).min(1).max(DOSE_BOUNDS.sets.to),
  restS: z.exactOptional(between(DOSE_BOUNDS.rest)),
  tempo: z.exactOptional(z.tuple([tempoPart, tempoPart, tempoPart, tempoPart])),
});

/** No heart beats faster in a minute. */
const MOST_BEATS = 220;
const beatsPiece = z.int().min(30).max(MOST_BEATS);

const sidePiece = z.enum(["left", "right"]);
const reasonsPiece = z.array(reasonPiece).max(MANY);

const slotPiece: z.ZodType<PlanSlot> = z.strictObject({
  key: namePiece,
  exercise: namePiece,
  dose: dosePiece,
  side: z.exactOptional(sidePiece),
  load: z.exactOptional(loadPiece),
  loads: z.exactOptional(z.array(loadPiece).max(DOSE_BOUNDS.sets.to)),
  find: z.exactOptional(z.strictObject({ from: z.exactOptional(loadPiece), because: reasonPiece })),
  why: reasonsPiece,
  offer: z.array(namePiece).max(MANY),
});

export const planSessionPiece: z.ZodType<PlanSession> = z.strictObject({
  key: namePiece,
  title: textPiece,
  warmup: z
    .array(
      z.strictObject({
        exercise: namePiece,
        dose: dosePiece,
        load: z.exactOptional(loadPiece),
        for: z.exactOptional(namePiece),
      }),
    )
    .max(MANY),
  blocks: z
    .array(
      z.strictObject({
        kind: z.enum(["straight", "pair", "round"]),
        restS: z.exactOptional(between(DOSE_BOUNDS.rest)),
        slots: z.array(slotPiece).max(MANY),
      }),
    )
    .max(MANY),
  conditioning: z
    .array(
      z.strictObject({
        exercise: namePiece,
        dose: dosePiece,
        effort: z.enum(["easy", "steady", "hard"]),
        run: z.exactOptional(z.strictObject({ slot: namePiece, level: between(RUN_WALK_BOUNDS) })),
        pulse: z.exactOptional(
          z.strictObject({ from: beatsPiece, to: beatsPiece, miss: z.int().min(0).max(MOST_BEATS) }),
        ),
      }),
    )
    .max(MANY),
  open: z.array(z.strictObject({ key: namePiece, why: reasonsPiece })).max(MANY),
  minutes: z.strictObject({ low: z.number().min(0), high: z.number().min(0) }),
});

export const planPiece: z.ZodType<Plan> = z.strictObject({
  id: namePiece,
  person: namePiece,
  programme: namePiece,
  made: z.strictObject({ engine: namePiece, catalogue: namePiece, state: namePiece, decisions: namePiece }),
  firmTo: z.strictObject({ phase: namePiece }),
  notes: reasonsPiece,
  phases: z
    .array(
      z.strictObject({
        key: namePiece,
        title: textPiece,
        score: z.strictObject({ must: z.number(), want: z.number(), bound: z.number(), proven: z.boolean() }),
        weeks: z
          .array(
            z.strictObject({
              week: z.int().min(1).max(MANY),
              light: z.boolean(),
              sessions: z.array(planSessionPiece).max(MANY),
            }),
          )
          .max(MANY),
      }),
    )
    .max(MANY),
});

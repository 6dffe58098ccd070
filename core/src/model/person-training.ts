import { z } from "zod";
import { ALWAYS, dayPiece, given, tell } from "./file-pieces.ts";
import { MUSCLES } from "./muscle.ts";
import type { Pulse } from "./person.ts";

/** What can be wrong with what a person did of late, beyond the form of its values. Each names a sentence. */
export const TRAINING_PROBLEMS = ["recent/same-week"] as const;

/** Weeks that are looked back on are few; a year of them is a whole history. */
const MAX_WEEKS = 53;
/** A week begins so many days after the one before. */
const WEEK_DAYS = 7;

/** Weeks before the plan, with the sets of each muscle; of one week there is one entry. */
export const recentPiece = z
  .array(
    z.strictObject({
      week: dayPiece,
      sets: z.partialRecord(z.enum(MUSCLES), z.number().min(0).max(60).multipleOf(0.25)),
    }),
  )
  .max(MAX_WEEKS)
  .superRefine((said, ctx) => {
    if (!Array.isArray(said)) return;
    const begins = said.map((each) => each?.week);
    begins.forEach((week, index) => {
      const same = begins.slice(0, index).some((other) => Math.abs(Number(other) - Number(week)) < WEEK_DAYS);
      if (same) tell(ctx, [index, "week"], { code: "recent/same-week" });
    });
  }, ALWAYS);

/** Pulse at rest, the highest one where it was measured, and whether a medicine slows the heart. */
export const pulsePiece = z
  .strictObject({
    rest: z.int().min(30).max(100),
    highest: z.int().min(101).max(220).optional(),
    slowed: z.boolean().default(false),
    on: dayPiece,
  })
  .transform((said): Pulse => given(said));

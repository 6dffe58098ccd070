import { z } from "zod";
import { documentOf, sha256Text, whole } from "./document.ts";

/** What `stave cohort --json` prints: counts. The plans themselves stand in files. */
export const cohortDocument = documentOf(
  "cohort",
  z.strictObject({
    programme: z.strictObject({ programme: z.string().min(1), hash: sha256Text }),
    people: z.strictObject({
      fitted: whole,
      /** Left out because their line could not be read. */
      unread: whole,
      /** Have a slot that stays open. */
      withOpenSlots: whole,
      /** Have no slot that could be filled. */
      unserved: whole,
    }),
    /** People whom the programme cannot tell apart are one class, with one plan. */
    classes: z.strictObject({
      all: whole,
      /** Their plan had been made by an earlier run. */
      alreadyThere: whole,
      /** Their plan is not proven best. */
      unproven: whole,
    }),
    files: z.array(z.string().min(1)),
  }),
);

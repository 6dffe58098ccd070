import { z } from "zod";
import { dayText, documentOf, reason } from "./document.ts";

const id = z.string().min(1);

/** What `stave morning --json` prints. */
export const morningDocument = documentOf(
  "morning",
  z.strictObject({
    day: dayText,
    /** Stops first, then by today's hours, then who does not come today. */
    people: z.array(
      z.strictObject({
        person: id,
        name: z.string().min(1),
        /** The session they come to today, wall minutes after midnight. */
        today: z.strictObject({ from: z.int().min(0).max(1440), title: z.string() }).exactOptional(),
        items: z.array(
          z.strictObject({
            proposal: id,
            slot: id,
            exercise: id,
            title: reason,
            stop: z.boolean(),
            evidence: z.array(reason).min(1),
            others: z.array(reason),
          }),
        ),
        /** What in the record calls for a look. */
        notes: z.array(reason),
        /** Figures beside it. */
        figures: z.array(reason),
      }),
    ),
    decided: z.array(
      z.strictObject({ id, person: id, kind: z.enum(["accepted", "changed", "refused", "pinned"]), title: reason }),
    ),
  }),
);

import { MUSCLES } from "@stave/core/model";
import { z } from "zod";
import { dayText, documentOf, reason, whole } from "./document.ts";

const text = z.string().min(1);

/** What `stave schedule --json` prints: the days of each person, in wall time of the zone. */
export const scheduleDocument = documentOf(
  "schedule",
  z.array(
    z.strictObject({
      person: text,
      zone: text,
      sessions: z.array(
        z.strictObject({
          session: text,
          day: dayText,
          /** Minutes after midnight. */
          start: whole.max(1439),
          place: text.exactOptional(),
          why: z.array(reason),
        }),
      ),
      rows: z.array(reason),
      dropped: z.array(z.strictObject({ session: text, reason })),
      points: whole,
      equalPlans: whole,
      proven: z.boolean(),
      /** The slots of the first week dealt anew, where days cannot keep a muscle's recovery. */
      recut: z
        .strictObject({
          sessions: z.array(
            z.strictObject({ key: text, slots: z.array(text), hard: z.array(z.enum(MUSCLES)), minutes: whole }),
          ),
          why: z.array(reason),
        })
        .exactOptional(),
    }),
  ),
);

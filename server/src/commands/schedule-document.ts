import { MISS_CAUSES, MUSCLES } from "@stave/core/model";
import { z } from "zod";
import { dayText, documentOf, reason, whole } from "./document.ts";

const text = z.string().min(1);
/** Where a session stands; start in minutes after midnight. */
const at = { session: text, day: dayText, start: whole.max(1439), place: text.exactOptional() };
const parts = <T extends z.ZodType>(points: T) => ({
  window: points,
  late: points,
  moved: points,
  nextDay: points,
  close: points,
});
const levels = z.strictObject({ fixed: whole, dropped: whole, close: whole, points: whole }).meta({ id: "Levels" });
/** Points on top of those of the plan; below 0 where they are fewer. */
const more = z.strictObject({ points: z.int(), parts: z.strictObject(parts(z.int())) }).meta({ id: "More" });

/** What follows a session that was missed. */
export const missedDocument = z.strictObject({
  because: z.enum(MISS_CAUSES),
  answer: z.enum(["skip", "move"]),
  skipped: z.array(text),
  why: z.array(reason),
});

/** What `stave schedule --json` prints: the days of each person, in wall time of the zone. */
export const scheduleDocument = documentOf(
  "schedule",
  z.array(
    z.strictObject({
      person: text,
      zone: text,
      missed: missedDocument.exactOptional(),
      sessions: z.array(z.strictObject({ ...at, why: z.array(reason) })),
      rows: z.array(reason),
      /** Days away and other hours than usual. */
      notAsUsual: z.array(reason),
      /** Sessions of each week of the calendar, with the day on which weeks begin. */
      aWeek: reason,
      /** Each with every single change that would give it a day, the least first. */
      dropped: z.array(z.strictObject({ session: text, reason, changes: z.array(reason) })),
      points: whole,
      parts: z.strictObject(parts(whole)),
      /** Compared level by level; no plan has a value below the bound. */
      value: levels,
      bound: levels,
      proven: z.boolean(),
      equalPlans: whole,
      /** Other ways for each week, the other weeks as they are; none after a miss. */
      weeks: z.array(
        z.strictObject({
          week: whole.min(1),
          /** Ways that are as good. */
          equal: whole,
          others: z.array(z.strictObject({ sessions: z.array(z.strictObject(at)), dropped: z.array(text), more })),
          /** For each session the best week that has it on another day; its name alone where there is none. */
          elsewhere: z.array(z.union([z.strictObject({ ...at, more }), z.strictObject({ session: text })])),
        }),
      ),
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

import { z } from "zod";
import { dayText, documentOf, whole } from "./document.ts";

const text = z.string().min(1);
const move = z.enum(["up", "same", "back"]);
const share = z.number().min(0).max(1);
const load = z.strictObject({ value: z.number(), unit: z.enum(["kg", "lb"]) }).meta({ id: "Load" });
const seen = z
  .strictObject({
    ruled: move,
    decided: move,
    occasions: whole,
    /** Of the sessions that were entered, those done as asked, with the 95 % interval; of what was decided. */
    done: z.strictObject({ value: share, low: share, high: share, n: whole }).exactOptional(),
  })
  .meta({ id: "Seen" });

/** What `stave replay --json` prints. */
export const replayDocument = documentOf(
  "replay",
  z.strictObject({
    rule: z.strictObject({
      rule: text,
      title: text,
      up: z.strictObject({
        over: whole,
        sessions: whole,
        sets: z.enum(["last", "first", "all"]),
        reserve: z.enum(["counts", "is left out"]),
      }),
      back: z.strictObject({ under: whole, sessions: whole }).exactOptional(),
      within: whole,
    }),
    people: whole,
    movements: whole,
    /** Where the rule would have said what was asked: what was seen of it. */
    agreed: z.array(seen),
    /** First differences: what the rule would have led to was not seen. */
    differed: z.array(seen),
    /** Sessions after a first difference, of which nothing is evidence. */
    after: whole,
    notCompared: whole,
    occasions: z.array(
      z.strictObject({
        person: text,
        slot: text,
        exercise: text,
        on: dayText,
        load: z.strictObject({ before: load, asked: load }),
        ruled: move,
        decided: move,
        outcome: z.enum(["done", "short", "hurt", "not entered"]),
        counts: z.boolean(),
      }),
    ),
    /** What it says of the next session, where that is another load. */
    open: z.array(z.strictObject({ person: text, slot: text, exercise: text, load, ruled: move })),
  }),
);

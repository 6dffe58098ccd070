import { z } from "zod";
import { documentOf, problem, reason, whole } from "./document.ts";

const id = z.string().min(1);

/** What `stave record --json` prints. What is asked stands among the problems, line by line. */
export const recordDocument = documentOf(
  "record",
  z.strictObject({
    /** Whether it was taken into the records. */
    taken: z.boolean(),
    people: z.array(z.strictObject({ person: id, events: whole })),
    /** About the headings. */
    repairs: z.array(reason),
    rows: z.array(
      z.strictObject({
        line: whole,
        person: id.nullable(),
        /** Events that it makes, and those of it that were there already. */
        fresh: whole,
        known: whole,
        /** How many questions about it; with one, nothing of it is taken. */
        asked: whole,
        /** What was read as what. */
        repairs: z.array(reason),
      }),
    ),
    /** Questions about lines that were left out on purpose. */
    left: z.array(problem),
  }),
);

import { z } from "zod";
import { dayText, documentOf, reason, whole, written } from "./document.ts";

/** What `stave demo --json` prints. */
export const demoDocument = documentOf(
  "demo",
  z.strictObject({
    start: dayText,
    weeks: whole,
    people: whole,
    sheets: whole,
    withheld: z.array(z.strictObject({ person: z.string().min(1), reason })),
    files: z.array(written),
  }),
);

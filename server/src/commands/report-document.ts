import { REPORT_KINDS } from "@stave/core/report";
import { z } from "zod";
import { documentOf, reason, written } from "./document.ts";

const words = z.string();
const picture = { svg: z.string().min(1), label: z.string().min(1) };

/** What `stave report --json` prints. */
export const reportDocument = documentOf(
  "report",
  z.strictObject({
    report: z
      .strictObject({
        kind: z.enum(REPORT_KINDS),
        lang: z.literal("en"),
        paper: z.enum(["a4", "us-letter"]),
        title: words,
        name: words,
        about: z.array(words),
        parts: z.array(
          z.strictObject({
            heading: words,
            lines: z.array(words),
            /** Movements, each with its sets as strokes. */
            strips: z.array(z.strictObject({ ...picture, name: words, words })),
            picture: z.strictObject(picture).nullable(),
            table: z.strictObject({ columns: z.array(words), rows: z.array(z.array(words)) }).nullable(),
          }),
        ),
        foot: z.array(words),
      })
      .nullable(),
    /** Why there is none for the person. */
    withheld: reason.nullable(),
    files: z.array(written),
  }),
);

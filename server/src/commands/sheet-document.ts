import { z } from "zod";
import { documentOf, reason, written } from "./document.ts";

/** What `stave sheet --json` prints. */
export const sheetDocument = documentOf(
  "sheet",
  z.strictObject({
    files: z.array(written),
    withheld: z.array(z.strictObject({ person: z.string().min(1), name: z.string().min(1), reason })),
  }),
);

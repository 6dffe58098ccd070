import { z } from "zod";
import { documentOf, written } from "./document.ts";
import { plan } from "./document-plan.ts";

/** What `stave fit --json` prints. */
export const fitDocument = documentOf(
  "fit",
  z.strictObject({
    plans: z.array(plan),
    /** People whose programme is not among the files. */
    without: z.array(z.strictObject({ person: z.string().min(1), programme: z.string().nullable() })),
    files: z.array(written),
  }),
);

import { z } from "zod";
import { documentOf, written } from "./document.ts";

/** What `stave export --json` prints. */
export const exportDocument = documentOf(
  "export",
  z.strictObject({ person: z.string().min(1), events: z.int().min(0), files: z.array(written) }),
);

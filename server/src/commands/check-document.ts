import { z } from "zod";
import { documentOf, finding, sha256Text } from "./document.ts";

/** What `stave check --json` prints. */
export const checkDocument = documentOf(
  "check",
  z.array(
    z.strictObject({
      file: z.string().min(1),
      programme: z.string().min(1),
      version: z.int().min(1),
      hash: sha256Text,
      silenced: z.array(z.strictObject({ finding, reason: z.string() })),
    }),
  ),
);

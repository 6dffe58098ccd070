import { z } from "zod";
import { dayText, documentOf, finding, sha256Text } from "./document.ts";

/** What `stave check --json` prints. */
export const checkDocument = documentOf(
  "check",
  z.array(
    z.strictObject({
      file: z.string().min(1),
      programme: z.string().min(1),
      version: z.int().min(1),
      hash: sha256Text,
      /** The place and the person that it was checked for, where one was named. */
      place: z.string().min(1).exactOptional(),
      person: z.string().min(1).exactOptional(),
      /** The first day for that person. */
      from: dayText.exactOptional(),
      silenced: z.array(z.strictObject({ finding, reason: z.string() })),
    }),
  ),
);

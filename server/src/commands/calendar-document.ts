import { z } from "zod";
import { documentOf, written } from "./document.ts";
import { missedDocument } from "./schedule-document.ts";

/** What `stave calendar --json` prints. */
export const calendarDocument = documentOf(
  "calendar",
  z.strictObject({ files: z.array(written), missed: missedDocument.exactOptional() }),
);

import { OUTCOMES } from "@stave/core/model";
import { EFFORTS } from "@stave/core/screen";
import { z } from "zod";
import { dayText, reason, written } from "./document.ts";

const text = z.string().min(1);

/** A screening outcome, as it is entered in the roster. */
export const screeningOutcome = z.strictObject({
  outcome: z.enum(OUTCOMES),
  on: dayText,
  until: dayText,
  by: text,
  agreed: z.strictObject({ on: dayText, who: text }).exactOptional(),
  effort: z.enum(EFFORTS).exactOptional(),
});

/** The page to a clinician, or why there is none. */
export const requested = z.union([z.strictObject({ file: written }), z.strictObject({ withheld: reason })]);

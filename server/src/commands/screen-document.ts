import { OUTCOMES } from "@stave/core/model";
import { EFFORTS } from "@stave/core/screen";
import { z } from "zod";
import { dayText, documentOf, reason } from "./document.ts";

const text = z.string().min(1);

/** What `stave screen --json` prints. */
export const screenDocument = documentOf(
  "screen",
  z.strictObject({
    person: text,
    /** As it is entered in the roster. */
    screening: z.strictObject({
      outcome: z.enum(OUTCOMES),
      on: dayText,
      until: dayText,
      by: text,
      agreed: z.strictObject({ on: dayText, who: text }).exactOptional(),
      effort: z.enum(EFFORTS).exactOptional(),
    }),
    readiness: z.enum([
      "start light to moderate",
      "ask a doctor before starting",
      "go on",
      "go on, moderate at most",
      "ask a doctor before vigorous",
      "stop and ask a doctor",
    ]),
    because: z.array(reason).min(1),
    locked: z.array(reason),
    ruleSet: z.strictObject({ id: z.literal("riebe2015"), dated: text, diabetes: z.enum(["strict", "mild"]) }),
  }),
);

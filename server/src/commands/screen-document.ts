import { CONSENT_STATES, PURPOSES } from "@stave/core/screen";
import { z } from "zod";
import { documentOf, reason } from "./document.ts";
import { requested, screeningOutcome } from "./screening-document.ts";

const text = z.string().min(1);

/** What `stave screen --json` prints. */
export const screenDocument = documentOf(
  "screen",
  z.strictObject({
    person: text,
    /** As it is entered in the roster. */
    screening: screeningOutcome,
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
    /** What was agreed to on the day of the answers, purpose by purpose. */
    consents: z.array(z.strictObject({ purpose: z.enum(PURPOSES), state: z.enum(CONSENT_STATES) })),
    request: requested.exactOptional(),
  }),
);

import { BEFORE, CHECKED, CONSENT_STATES, PURPOSES, STOP_SIGNS } from "@stave/core/screen";
import { SOURCES } from "@stave/core/sources";
import { z } from "zod";
import { dayText, documentOf, reason } from "./document.ts";
import { requested, screeningOutcome } from "./screening-document.ts";

const text = z.string().min(1);
const before = z.enum(BEFORE);

/** A rule by its name, with where it is printed or who wrote it. */
const rule = z
  .strictObject({
    id: text,
    dated: text,
    source: z.enum(Object.keys(SOURCES)).exactOptional(),
    by: text.exactOptional(),
  })
  .meta({ id: "Rule" });

/** What `stave before --json` prints. */
export const beforeDocument = documentOf(
  "before",
  z.strictObject({
    person: text,
    on: dayText,
    by: text,
    /** The strictest of all checks. */
    before,
    because: z.array(reason),
    screening: screeningOutcome,
    screenedAgain: z.boolean(),
    consents: z.array(z.strictObject({ purpose: z.enum(PURPOSES), state: z.enum(CONSENT_STATES) })),
    checks: z
      .array(
        z.strictObject({
          kind: z.enum(CHECKED),
          before,
          because: z.array(reason),
          rule: rule.exactOptional(),
          /** Printed rules of this kind that answer otherwise. */
          others: z.array(z.strictObject({ rule, before })),
        }),
      )
      .min(1),
    stopList: z.array(z.enum(STOP_SIGNS)),
    request: requested.exactOptional(),
  }),
);

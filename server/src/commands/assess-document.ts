import { ASSESSMENT_TESTS } from "@stave/core/assess";
import { z } from "zod";
import { dayText, documentOf, reason } from "./document.ts";

const sides = { left: z.number(), right: z.number() };

/** What `stave assess --json` prints. */
export const assessDocument = documentOf(
  "assess",
  z.strictObject({
    person: z.string().min(1),
    tests: z.array(
      z.strictObject({
        test: z.enum(ASSESSMENT_TESTS.map(({ id }) => id)),
        unit: z.enum([...new Set(ASSESSMENT_TESTS.map(({ unit }) => unit))]),
        /** Oldest first. */
        results: z.array(
          z.strictObject({
            on: dayText,
            conditions: z.record(z.string(), z.string()),
            /** By the rules of the protocol. */
            score: z.union([z.strictObject({ value: z.number() }), z.strictObject(sides)]),
            gap: z
              .strictObject({ weaker: z.enum(["left", "right", "none"]), gapPercent: z.number().min(0).max(100) })
              .exactOptional(),
            notes: z.array(reason),
            /** Against the last result under the same conditions. */
            change: z
              .union([
                z.strictObject({ since: dayText, value: z.number() }),
                z.strictObject({ since: dayText, ...sides }),
              ])
              .exactOptional(),
          }),
        ),
      }),
    ),
    /** Where a side was injured: its share of the other in every test, and whether each is over the line. */
    return: z
      .strictObject({
        side: z.enum(["left", "right"]),
        weeks: z.int().min(0),
        over: z.int().min(50).max(100),
        lines: z.array(
          z.strictObject({ test: z.string().min(1), percent: z.number(), passed: z.boolean(), on: dayText }),
        ),
        /** N m per kilogram of body mass; left out where the mass was not said. */
        torque: z
          .strictObject({ perKg: z.number().exactOptional(), least: z.number(), passed: z.boolean() })
          .exactOptional(),
        passed: z.boolean(),
      })
      .exactOptional(),
    /** Where the person starts on the ladders that a test belongs to. */
    rungs: z.array(
      z.strictObject({
        ladder: z.string().min(1),
        exercise: z.string().min(1),
        test: z.enum(ASSESSMENT_TESTS.map(({ id }) => id)),
        on: dayText,
        because: z.array(reason).min(1),
      }),
    ),
    /** Starts that could not be judged. */
    open: z.array(reason),
  }),
);

import { WORLDS } from "@stave/core/simulate";
import { z } from "zod";
import { documentOf, whole } from "./document.ts";

/** With its 95 % interval; n people were drawn again, or n cases counted. */
const estimate = z
  .strictObject({ value: z.number(), low: z.number(), high: z.number(), n: whole })
  .meta({ id: "Estimate" });
/** Stave's own figure and that of the yardstick, the average of six sessions. */
const both = z.strictObject({ ours: estimate, average: estimate }).meta({ id: "Both" });
const share = z.number().min(0).max(1);
/** What was said with a certainty near a level, and how often it came true. */
const certainty = z
  .strictObject({ level: share, from: share, to: share, said: share, happened: estimate, cases: whole })
  .meta({ id: "Certainty" });
/** Per person. */
const way = z
  .strictObject({ steps: estimate, tooSoon: estimate, stepsBack: estimate, late: estimate, heavy: estimate })
  .meta({ id: "Way" });

/** What `stave simulate --json` prints: the figures of each world. Errors, biases and widths are in per cent. */
export const simulateDocument = documentOf(
  "simulate",
  z.array(
    z.strictObject({
      world: z.enum(WORLDS.map(({ id }) => id)),
      people: whole,
      weeks: whole,
      seed: whole,
      /** Left out when nobody has sessions enough. */
      forecast: z
        .strictObject({
          sessions: whole,
          /** Share of sessions of which nothing was said. */
          unsaid: z.strictObject({ ours: share, average: share }),
          error: both,
          bias: both,
          /** Error of ours over that of the average. */
          ratio: estimate,
        })
        .exactOptional(),
      coverage: z
        .strictObject({
          sessions: whole,
          covers: both,
          width: both,
          /** Mean interval score. */
          scores: both,
          /** Interval score of ours over that of the average. */
          score: estimate,
        })
        .exactOptional(),
      certainty: z.strictObject({ sets: z.array(certainty), steps: z.array(certainty) }),
      /** Of changes over six weeks: gains told of those who rose by less than 1 %, and by 5 % or more. */
      changes: z.strictObject({
        asked: whole,
        falseGains: estimate.exactOptional(),
        gainsFound: estimate.exactOptional(),
      }),
      outcome: z.strictObject({
        people: whole,
        /** Trained, per person. */
        weeks: z.number(),
        ours: way,
        plain: way,
        /** Ours less the plain rule. */
        less: z.strictObject({ tooSoon: estimate, late: estimate, heavy: estimate }),
      }),
    }),
  ),
);

import { z } from "zod";
import { given, idPiece, namePiece, type Read, readYaml, type YamlDocument } from "../model/index.ts";

/** A coach's rule for the next load of a slot whose range of repetitions is asked. */
export interface Rule {
  readonly rule: string;
  readonly title: string;
  /** A load more: so many repetitions over the top of the range, in these sets, in so many sessions running. */
  readonly up: {
    readonly over: number;
    readonly sessions: number;
    readonly sets: "last" | "first" | "all";
    /** Whether repetitions said to be left beyond what was asked count as done, and missing ones as not. */
    readonly reserve: "counts" | "is left out";
  };
  /** A load back: so many repetitions under the bottom of the range in the first set, in so many sessions running. */
  readonly back?: { readonly under: number; readonly sessions: number };
  /** So many days between two sessions, or since the last, and they do not run on. */
  readonly within: number;
}

/** The plain published rule, as it is held against others when none is named. Source: haffTriplett2016. */
export const TWO_FOR_TWO: Rule = {
  rule: "two-for-two",
  title: "Two over in the last set, twice running",
  up: { over: 2, sessions: 2, sets: "last", reserve: "is left out" },
  within: 14,
};

const sessions = z.int().min(1).max(8);
const up = z.strictObject({
  over: z.int().min(0).max(10),
  sessions,
  sets: z.enum(["last", "first", "all"]).default("last"),
  reserve: z.enum(["counts", "is left out"]).default("counts"),
});
const ruleFile = z
  .strictObject({
    stave: z.literal(1),
    rule: idPiece,
    title: namePiece(80),
    up,
    back: z.strictObject({ under: z.int().min(1).max(10), sessions }).optional(),
    within: z.int().min(2).max(60).default(14),
  })
  .transform(({ stave: _, ...file }): Rule => given(file));

/** Reads a coach's rule, strictly: a name that is not known is told and not passed over. */
export function readRule(text: string, file: string): Read<YamlDocument<Rule>> {
  return readYaml(text, file, ruleFile);
}

import { type Day, printDay } from "../day.ts";
import type { Person, Reason, Screening } from "../model/index.ts";
import { reason } from "./reasons.ts";

/** Repetitions left that an effort ceiling asks for at least. Ours, no source. */
export const RESERVE_FOR_EFFORT = { light: 4, moderate: 3 } as const;

/**
 * The effort that the screening allows; undefined when it sets no ceiling.
 *
 * "start light to moderate" implies moderate at most. So does a start after a doctor was asked, since the published
 * logic begins light to moderate after clearance, unless the agreement came with "vigorous". A written "light" or
 * "moderate" is never raised, and an outcome that has run out keeps its ceiling.
 *
 * @source riebe2015
 */
export function effortCeiling(screening: Screening | undefined, on: Day): "light" | "moderate" | undefined {
  if (screening === undefined || !(screening.on <= on)) return undefined;
  const { outcome, effort } = screening;
  if (effort === "light" || effort === "moderate") return effort;
  if (outcome === "no reason found") return undefined;
  return outcome === "ask a doctor first" && effort === "vigorous" && hasAgreement(screening, on)
    ? undefined
    : "moderate";
}

function hasAgreement(screening: Screening, on: Day): boolean {
  return screening.agreed !== undefined && screening.agreed.on <= on;
}

/** @returns the question that is due when the outcome has run out */
export function screeningAsks(screening: Screening | undefined, on: Day): readonly Reason[] {
  if (screening === undefined || on <= screening.until) return [];
  return [reason("offer/ask-screening", { until: printDay(screening.until) })];
}

export type MayPrint = { readonly ok: true } | { readonly ok: false; readonly reason: Reason };

/**
 * Whether anything may be handed to a person: only with a dated screening outcome that stands on that day, and after
 * "ask a doctor first" only with a clinician's written agreement. "stop" lets nothing through.
 *
 * @example
 * mayPrint(personWithoutScreening, day("2027-03-01")) //=> { ok: false, reason: { code: "offer/no-screening", … } }
 */
export function mayPrint(person: Person, on: Day): MayPrint {
  const { screening } = person;
  if (screening === undefined) return { ok: false, reason: reason("offer/no-screening") };
  const entered = { on: printDay(screening.on), by: screening.by };
  if (!(screening.on <= on)) return { ok: false, reason: reason("offer/screening-not-yet", entered) };
  if (screening.outcome === "stop") return { ok: false, reason: reason("offer/stop", entered) };
  if (!(on <= screening.until)) {
    return { ok: false, reason: reason("offer/screening-expired", { until: printDay(screening.until) }) };
  }
  if (screening.outcome === "ask a doctor first" && !hasAgreement(screening, on)) {
    return { ok: false, reason: reason("offer/ask-doctor", entered) };
  }
  return { ok: true };
}

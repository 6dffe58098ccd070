import type { Json, Reason } from "../model/index.ts";

/**
 * Why a form is set aside, what was changed so that it may be done, what must be asked, and why nothing is printed.
 * Each code names one sentence; its data are listed beside it. Days are written YYYY-MM-DD.
 */
export const OFFER_CODES = [
  // Set aside.
  /** groups: what is needed, any one of each list, and is not in this place */
  "offer/equipment",
  /** groups as above; out: [{ what, from, to }] */
  "offer/out-of-order",
  /** tag, grade, ceiling, from: [{ by, ceiling, who }], strictest first; who only where one tag was limited alone */
  "offer/ceiling",
  /** tag, grade, ceiling */
  "offer/cannot",
  /** lane, from: statements */
  "offer/lane-withheld",
  /** from: statements */
  "offer/seated-only",
  /** from: statements */
  "offer/arms-used",
  /** from: statements */
  "offer/lowering-only",
  /** no data: only a coach adds it by hand */
  "offer/coach-only",
  /** no data: done in a wheelchair, and the person has not stated that they use one */
  "offer/wheelchair",
  /** ladder, stands: the form the person stands on, or the start for somebody who was never assessed; assessed */
  "offer/above-rung",
  "offer/not-shown",
  /** needs: the form that must be shown first; for entries that stand on no ladder */
  "offer/count-not-shown",
  /** applies ("total" or "hand"), side, atMost: { value, unit }, who, to, held: { value, unit }, asked or the lightest */
  "offer/over-limit",
  /** as above without held: the true load of this machine or band is not known */
  "offer/load-unknown",
  /** part (none: everything), movement (none: all), side, who, to */
  "offer/rest-order",
  /** movement, side, who, to */
  "offer/forbidden",
  /** asked: seconds { from, to }, range: { from, to } */
  "offer/hold-range",
  /** asked, takes: kinds of amount */
  "offer/amount",
  // Changed.
  /** asked, limit: whole per cent; from */
  "offer/percent-cut",
  /** asked: repetitions left or null when not said, limit; from */
  "offer/reserve-raised",
  /** asked: seconds, limit: seconds; from */
  "offer/hold-cut",
  /** limit: whole per cent of the best hold; from */
  "offer/hold-short-of-best",
  /** from: hard conditioning is done so that whole sentences can be spoken */
  "offer/in-sentences",
  // Said beside a form that is offered.
  /** train: the side that is trained, and the order: part or movement, side, who, to */
  "offer/one-side",
  /** hand: the hand to hold on with, and the order as above */
  "offer/other-hand",
  /** ladder: nobody has assessed this person on it */
  "offer/not-assessed",
  /** no data: the share of body mass cannot be told in kilograms */
  "offer/body-mass-unknown",
  // To be asked; nothing lifts by itself.
  /** statement or tag, recheck, who */
  "offer/ask-caution",
  /** kind, to, who, and what it limits */
  "offer/ask-limit",
  /** until */
  "offer/ask-screening",
  // Stands on some of the days only, and binds on all: first and last day of them.
  /** kind, from, to, who, and what it limits; first, last */
  "offer/limit-throughout",
  /** statement or tag, from, who; first, last */
  "offer/caution-throughout",
  // Nothing is printed.
  /** no data */
  "offer/no-screening",
  /** on: the day it was entered for */
  "offer/screening-not-yet",
  /** until */
  "offer/screening-expired",
  /** on, by */
  "offer/ask-doctor",
  /** on, by */
  "offer/stop",
] as const;
export type OfferCode = (typeof OFFER_CODES)[number];

/** @returns a reason whose code is one of ours */
export function reason(code: OfferCode, data: Readonly<Record<string, Json>> = {}): Reason {
  return { code, data };
}

import { printDay } from "../day.ts";
import type { HurtRecord } from "../measures/index.ts";
import type { Reason } from "../model/index.ts";
import type { ProgressInput } from "./progress-input.ts";
import { reason } from "./reasons.ts";

/** What the morning after says of a pain. */
export interface MorningAfter {
  /** normal: more may come · unknown: not asked, not answered, or answered too late · above: less comes. */
  readonly says: "normal" | "unknown" | "above";
  readonly because: readonly Reason[];
}

/** Above the usual pain by at most so much. Ours, on the pain monitoring model. Source: silbernagel2007. */
const OVER_USUAL = 1;
/** An answer later than so many days after the session is no morning after. Ours, no source. */
const LATE_DAYS = 2;
/** The usual pain is the middle of so many answers before. Ours, no source. */
const USUAL_OF = 3;

/**
 * What the morning after a pain says: it must lie at most one over the usual pain, at most at 5, and must not have risen
 * from answer to answer twice running. Without an answer nobody knows, so nothing rises.
 *
 * The usual pain of a place is the middle of the last three answers before; the first answer is its own.
 *
 * @source silbernagel2007, ours
 */
export function morningAfter({ record, dayOf, edges }: ProgressInput, hurt: HurtRecord): MorningAfter {
  const about = (where: string) => new Set(record.hurts.filter((each) => each.where === where).map(({ id }) => id));
  const same = about(hurt.where);
  const answers = record.mornings
    .filter(({ data }) => same.has(data.hurt))
    .toSorted((a, b) => a.at - b.at || a.n - b.n)
    .filter(({ data, at }) => {
      const of = record.hurts.find(({ id }) => id === data.hurt)!;
      return dayOf(at) - dayOf(of.at) <= LATE_DAYS;
    });
  const index = answers.findIndex(({ data }) => data.hurt === hurt.id);
  const on = printDay(dayOf(hurt.at));
  const { where } = hurt;
  if (index === -1) {
    const late = record.mornings.some(({ data }) => data.hurt === hurt.id);
    const code = late ? "progress/morning-late" : "progress/morning-unanswered";
    return { says: "unknown", because: [reason(code, { where, on, days: LATE_DAYS })] };
  }
  const morning = answers[index]!.data.howMuch;
  const before = answers.slice(0, index).map(({ data }) => data.howMuch);
  const usual = middle(before.slice(-USUAL_OF)) ?? morning;
  const [first, second] = before.slice(-2);
  const rising = first !== undefined && second !== undefined && first < second && second < morning;
  const fine = morning <= usual + OVER_USUAL && morning <= edges.most && !rising;
  const data = { where, on, morning, usual, most: Math.min(usual + OVER_USUAL, edges.most), rising };
  return fine
    ? { says: "normal", because: [reason("progress/morning-normal", data)] }
    : { says: "above", because: [reason("progress/morning-above", data)] };
}

function middle(values: readonly number[]): number | undefined {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];
}

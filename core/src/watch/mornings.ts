import { printDay } from "../day.ts";
import type { Reason } from "../model/index.ts";
import { reason } from "./reasons.ts";
import type { WatchInput } from "./watch-input.ts";

/** For so many days an answer is still waited for, and one that came is still told. Ours. */
const WAITED_DAYS = 3;
const TOLD_DAYS = 7;
/** The morning after is the next one; what is said a day later still tells it. Ours, as the next dose reads it. */
const NEXT = 1;
const LATE_AFTER = 1;
/** Soreness builds up over a day and is at its worst on the second or third. From memory. */
const AFTER_FIRST_DAYS = 2;

/** What is asked on the mornings after pain or a first session, and answers that call for a look. */
export function mornings({ record, dayOf, today }: WatchInput): readonly Reason[] {
  const said = record.hurts.flatMap((hurt): Reason[] => {
    const on = dayOf(hurt.at);
    const answer = record.mornings.filter(({ data }) => data.hurt === hurt.id).at(-1);
    const common = { where: hurt.where, on: printDay(on) };
    if (answer === undefined) {
      const waits = hurt.howMuch >= 1 && on < today && today - on <= WAITED_DAYS;
      return waits ? [reason("watch/ask-morning", { ...common, howMuch: hurt.howMuch })] : [];
    }
    if (today - dayOf(answer.at) > TOLD_DAYS) return [];
    const now = answer.data.howMuch;
    const late = dayOf(answer.at) - on - NEXT;
    if (late > LATE_AFTER) return [reason("watch/morning-late", { ...common, days: late, now })];
    return now > hurt.howMuch ? [reason("watch/morning-worse", { ...common, was: hurt.howMuch, now })] : [];
  });
  const [first] = record.sessions.map(({ at }) => dayOf(at)).sort((a, b) => a - b);
  const asks = first !== undefined && first < today && today - first <= AFTER_FIRST_DAYS;
  return asks ? [...said, reason("watch/ask-after-first", { on: printDay(first) })] : said;
}

import { printDay } from "../day.ts";
import { MUSCLE_BREAK_DAYS, musclePast } from "../measures/index.ts";
import { MUSCLES, type Reason } from "../model/index.ts";
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
export function mornings(input: WatchInput): readonly Reason[] {
  const { record, dayOf, today } = input;
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
  said.push(...afterNew(input));
  const [first] = record.sessions.map(({ at }) => dayOf(at)).sort((a, b) => a - b);
  const asks = first !== undefined && first < today && today - first <= AFTER_FIRST_DAYS;
  return asks ? [...said, reason("watch/ask-after-first", { on: printDay(first) })] : said;
}

/** After a session with muscles that nothing had trained for two weeks or more, in whomever. The person's first session is asked about anyway. */
function afterNew({ log, catalogue, record, person, dayOf, today }: WatchInput): readonly Reason[] {
  const lately = log.filter(({ at, sets }) => {
    const ago = today - dayOf(at);
    return sets.length > 0 && ago >= 1 && ago <= AFTER_FIRST_DAYS;
  });
  const first = Math.min(...record.sessions.map(({ at }) => dayOf(at)));
  const days = [...new Set(lately.map(({ at }) => dayOf(at)))].filter((day) => day !== first);
  return days.flatMap((day): Reason[] => {
    const done = lately.filter(({ at }) => dayOf(at) === day).flatMap(({ sets }) => sets);
    const driven = MUSCLES.filter((muscle) =>
      done.some(({ exercise }) => catalogue.exercises.get(exercise)?.muscles[muscle] === 1),
    );
    const muscles = driven.filter((muscle) => {
      const past = musclePast(muscle, log, catalogue, dayOf, day, person.recent);
      return past?.exposures === 0 && past.days >= MUSCLE_BREAK_DAYS;
    });
    return muscles.length === 0 ? [] : [reason("watch/ask-after-new", { on: printDay(day), muscles })];
  });
}

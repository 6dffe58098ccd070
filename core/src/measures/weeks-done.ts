import type { Day } from "../day.ts";
import type { Away, NotDone, Plan } from "../model/index.ts";
import type { RecordFold } from "./record.ts";
import { occurrencesOf, slotsIn } from "./slot-history.ts";

/** First and last day of a week of a plan. */
export interface WeekSpan {
  readonly first: Day;
  readonly last: Day;
}

/** Why a week was no training week. */
export type OffCause = "away" | "sick" | "nothing recorded" | "little done";

/** One week of a plan beside what was done in it. */
export interface WeekDone extends WeekSpan {
  /** phase/week */
  readonly name: string;
  /** Asked lighter by the plan. */
  readonly light: boolean;
  /** Working sets asked, and recorded on its days. */
  readonly asked: number;
  readonly done: number;
  /** Days just before it or in it on which the plan stood still. */
  readonly stoodStill: number;
  /** Over or to come: why it is no training week; undefined where it is one, or nothing speaks against it yet. */
  readonly off?: OffCause;
}

/**
 * Days off from which a week counts as a light one: light weeks of lifters last 6.4 ± 1.7 days, so from 4.7 on.
 * Source: rogerson2024.
 */
export const OFF_DAYS = 5;
/** Under this share of the sets asked a week was none of hard training: a light week asks for half. Ours, no source. */
const HALF = 0.5;

/**
 * Every week of a plan with what was asked of it and what was recorded on its days. A week is off where the person is
 * away on five of its days or more, or, once it is over, where less than half of its sets was recorded. What a clock puts
 * outside the plan counts in the week it was asked in.
 *
 * @param spans days of each week of the plan, in its order
 * @source rogerson2024, ours
 */
export function weeksDone(
  plan: Plan,
  spans: readonly WeekSpan[],
  { sessions, missed }: Pick<RecordFold, "sessions" | "missed">,
  { away, today, dayOf }: { readonly away: readonly Away[]; readonly today: Day; readonly dayOf: (at: number) => Day },
): readonly WeekDone[] {
  const occurrences = occurrencesOf(plan);
  const weekOf = new Map(occurrences.map(({ id, phase, week }) => [id, `${phase}/${week}`]));
  const names = plan.phases.flatMap(({ key, weeks }) =>
    weeks.map(({ week, light }) => ({ name: `${key}/${week}`, light })),
  );
  const inside = (day: Day) => spans.findIndex(({ first, last }) => first <= day && day <= last);
  const done = names.map(() => 0);
  for (const { session, at, slots } of sessions) {
    const day = dayOf(at);
    const by = day <= today ? inside(day) : -1;
    const week = by === -1 ? names.findIndex(({ name }) => name === weekOf.get(session)) : by;
    if (week !== -1) done[week]! += slots.reduce((sum, { sets }) => sum + sets.length, 0);
  }
  const causes = new Map(missed.map(({ session, data }) => [weekOf.get(session ?? ""), data.because]));
  return names.map(({ name, light }, at): WeekDone => {
    const { first, last } = spans[at]!;
    const asked = occurrences
      .filter(({ phase, week }) => `${phase}/${week}` === name)
      .flatMap(({ session }) => slotsIn(session))
      .reduce((sum, { dose }) => sum + dose.sets.length, 0);
    const before = at === 0 ? first : ((spans[at - 1]!.last + 1) as Day);
    const off = isAway(away, first, last)
      ? "away"
      : last < today && !(done[at]! >= HALF * asked)
        ? whyOff(done[at]!, causes.get(name))
        : undefined;
    const stoodStill = daysIn(
      away.filter(({ waits }) => waits),
      before,
      last,
    );
    return { name, light, first, last, asked, done: done[at]!, stoodStill, ...(off === undefined ? {} : { off }) };
  });
}

function whyOff(done: number, because: NotDone | undefined): OffCause {
  if (because === "sick" || because === "away") return because;
  return done === 0 ? "nothing recorded" : "little done";
}

function isAway(away: readonly Away[], first: Day, last: Day): boolean {
  return (
    daysIn(
      away.filter(({ waits }) => waits !== true),
      first,
      last,
    ) >= OFF_DAYS
  );
}

/** Days from `first` to `last`, both included, that lie in one of the stretches. */
function daysIn(stretches: readonly Away[], first: Day, last: Day): number {
  let count = 0;
  for (let day = first as number; day <= last; day++)
    if (stretches.some(({ from, to }) => from <= day && day <= to)) count++;
  return count;
}

import { occurrencesOf, slotsIn } from "../measures/index.ts";
import type { Plan, SetDone, StaveEvent } from "../model/index.ts";
import { madeUpEvent } from "./events.ts";

/** What was said of one slot in one session: for each set what was touched, or nothing. */
export type Said = readonly Partial<SetDone>[];

/**
 * The events of one session, done set by set in the order of the plan; slots that are not named are done as asked, with
 * nothing touched.
 *
 * @param n counter before the first event
 */
export function recordedSession(
  plan: Plan,
  session: string,
  n: number,
  at: number,
  said: Readonly<Record<string, Said>> = {},
): readonly StaveEvent[] {
  const occurrence = occurrencesOf(plan).find(({ id }) => id === session);
  if (occurrence === undefined) throw new Error(`The plan has no session ${session}`);
  const of = { plan: plan.id, session };
  const id = (what: string) => `${session.replaceAll("/", "-")}-${n}-${what}`;
  const events: StaveEvent[] = [madeUpEvent(id("start"), n + 1, "session-started", {}, { of, at })];
  for (const slot of slotsIn(occurrence.session)) {
    const sets = said[slot.key] ?? slot.dose.sets.map(() => ({}));
    for (const [set, touched] of sets.entries()) {
      const data: SetDone = {
        exercise: slot.exercise,
        reps: "as asked",
        load: "as asked",
        reserve: "not said",
        ...touched,
      };
      const next = n + events.length + 1;
      events.push(
        madeUpEvent(id(`${slot.key}-${set}`), next, "set-done", data, { of: { ...of, slot: slot.key, set }, at }),
      );
    }
  }
  events.push(madeUpEvent(id("end"), n + events.length + 1, "session-ended", { early: false }, { of, at }));
  return events;
}

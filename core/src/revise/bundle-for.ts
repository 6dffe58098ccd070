import { addDays, printDay } from "../day.ts";
import { loadsLeft } from "../loads/index.ts";
import { exerciseHistory, liftsFrom, runsIn, slotsIn } from "../measures/index.ts";
import {
  type Bundle,
  type BundleExercise,
  type BundleSession,
  type Exercise,
  type ExerciseId,
  highestCounter,
  type PlanSession,
  type PlanSlot,
  type Reason,
  type SlotKey,
} from "../model/index.ts";
import { admitter, mayPrint } from "../offer/index.ts";
import { unansweredPains, unansweredStop } from "../progress/index.ts";
import { STOP_SIGNS, stopBefore } from "../screen/index.ts";
import type { Load } from "../units.ts";
import { minutesOf } from "./minutes-of.ts";
import { offersFor, type SlotOffer } from "./offers-for.ts";
import type { SessionDay } from "./session-days.ts";
import type { PlannedPerson } from "./situation.ts";
import { type View, viewOf } from "./view-of.ts";
import { withoutSlots } from "./without-slots.ts";

/** Sessions and days ahead that a phone carries. Ours, no source. */
const MOST_SESSIONS = 6;
const MOST_DAYS = 14;

/**
 * All that a phone needs to run the next sessions with no network. It holds no reason but why something waits or
 * stops: a phone lies about in a room. Movements on which pain bears wait at once, before a coach has said a word; after
 * a sign to stop there is no session until the coach lets it go on.
 *
 * @param call whom to call when a message has not been sent
 */
export function bundleFor(person: PlannedPerson, call: string): Bundle {
  const view = viewOf(person);
  const may = mayPrint(person.person, person.today);
  const ahead = may.ok ? sessionsAhead(view) : [];
  const slots = new Map<SlotKey, { readonly slot: PlanSlot; readonly day: SessionDay }>();
  for (const day of ahead)
    for (const slot of slotsIn(day.occurrence.session)) if (!slots.has(slot.key)) slots.set(slot.key, { slot, day });
  const hurting = painsIn(view, [
    ...[...slots.values()].map(({ slot }) => slot),
    ...ahead.flatMap(({ occurrence }) => runsIn(occurrence.session).map(({ slot }) => slot)),
  ]);
  const stop = unansweredStop(view.progress)?.evidence.at(-1);
  const now = withLifts(view);
  const offers = new Map([...slots].map(([key, { slot, day }]) => [key, offersFor(person, now, day.occurrence, slot)]));
  const sessions = stop === undefined ? ahead.map((day) => bundled(person, day, hurting)) : [];
  const withheld = may.ok ? stop : may.reason;
  return {
    v: 1,
    person: { id: person.person.id, name: person.person.name, units: person.person.units },
    plan: person.plan.id,
    n: highestCounter(person.events),
    sessions,
    exercises: formsOf(view, sessions, slots, offers),
    offers: [...offers].map(([slot, { forms }]) => ({ slot, forms })),
    ...(withheld === undefined ? {} : { withheld }),
    stops: stopBefore(STOP_SIGNS).because,
    paused: [...hurting, ...decided(ahead)].map(([slot, because]) => ({ slot, because })),
    call,
  };
}

/** Today and the days after, without what has ended. */
function sessionsAhead({ days, record, person }: View): readonly SessionDay[] {
  const ended = new Set(record.sessions.flatMap((one) => (one.ended === undefined ? [] : [one.session])));
  const last = addDays(person.today, MOST_DAYS);
  return days
    .filter(({ occurrence, day }) => day >= person.today && day < last && !ended.has(occurrence.id))
    .slice(0, MOST_SESSIONS);
}

function painsIn({ progress, person, waiting }: View, slots: readonly PlanSlot[]): ReadonlyMap<SlotKey, Reason> {
  return new Map(
    slots.flatMap(({ key, exercise }) => {
      const form = person.catalogue.exercises.get(exercise);
      const pain = form && unansweredPains(progress, key, form).find(({ waits }) => waits);
      const stop = waiting.find((one) => one.stop && one.slot.key === key)?.proposal;
      const because = (pain ?? stop)?.evidence[0];
      return because === undefined ? [] : [[key, because] as const];
    }),
  );
}

/** Slots that the coach paused, with the plan's own reason. */
function decided(ahead: readonly SessionDay[]): ReadonlyMap<SlotKey, Reason> {
  return new Map(
    ahead.flatMap(({ occurrence }) =>
      occurrence.session.open.flatMap(({ key, why }) => {
        const because = why.find(({ code }) => code === "plan/paused");
        return because === undefined ? [] : [[key, because] as const];
      }),
    ),
  );
}

function bundled(
  { catalogue }: PlannedPerson,
  { occurrence, day, from }: SessionDay,
  out: ReadonlyMap<SlotKey, Reason>,
): BundleSession {
  const { id, session } = occurrence;
  const left = withoutSlots(session, out);
  const now = left === session ? session : { ...left, minutes: minutesOf(left, catalogue) };
  return { id, day: printDay(day), from, title: session.title, session: withoutReasons(now) };
}

function withoutReasons(session: PlanSession): PlanSession {
  const blocks = session.blocks.map((block) => ({
    ...block,
    slots: block.slots.map((slot) => ({ ...slot, why: [], offer: [] })),
  }));
  return { ...session, blocks, open: session.open.map(({ key }) => ({ key, why: [] })) };
}

function withLifts({ person, log }: View): PlannedPerson["person"] {
  const lifts = liftsFrom(log, person, addDays(person.today, 1));
  return { ...person.person, lifts: [...person.person.lifts, ...lifts] };
}

/** Every form that the sessions or their offers name, once. */
function formsOf(
  view: View,
  sessions: readonly BundleSession[],
  slots: ReadonlyMap<SlotKey, { readonly slot: PlanSlot }>,
  offers: ReadonlyMap<SlotKey, SlotOffer>,
): readonly BundleExercise[] {
  const loads = new Map<ExerciseId, readonly Load[]>();
  for (const { session } of sessions)
    for (const { exercise } of [...session.warmup, ...session.conditioning]) loads.set(exercise, []);
  for (const { candidates } of offers.values())
    for (const candidate of candidates) loads.set(candidate.exercise.id, candidate.loadsLeft().loads);
  for (const { slot } of slots.values()) loads.set(slot.exercise, loadsOf(view, slot));
  return [...loads]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([id, left]) => {
      const form = view.person.catalogue.exercises.get(id);
      return form === undefined ? [] : [bundledForm(view, form, left)];
    });
}

/** The loads of the form that a slot asks for, whoever chose it. */
function loadsOf({ person: { person, place, catalogue, today: on } }: View, slot: PlanSlot): readonly Load[] {
  const exercise = catalogue.exercises.get(slot.exercise);
  const admission = exercise && admitter({ person, place, catalogue, on, byHand: true })(exercise, slot.dose);
  return admission?.ok === true ? loadsLeft({ exercise: exercise!, person, place, on, cap: admission.cap }).loads : [];
}

function bundledForm({ log, person }: View, form: Exercise, loads: readonly Load[]): BundleExercise {
  const { id, name, setUp, move, cues, eachSide, amounts, hold, loadMeaning, stress, needs } = form;
  const recorded = exerciseHistory(log, id).flatMap(({ sets }) => sets.flatMap(({ lifted }) => lifted ?? []));
  const before = person.person.lifts.filter(({ exercise }) => exercise === id).toSorted((a, b) => b.on - a.on)[0]?.load;
  const last = recorded.at(-1) ?? before;
  return {
    ...{ id, name, setUp, move, cues, eachSide, amounts, loadMeaning, stress, needs, loads },
    ...(hold === undefined ? {} : { hold }),
    ...(last === undefined ? {} : { last }),
  };
}

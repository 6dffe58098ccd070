import type { PeopleOutput, PersonOutput } from "../api/index.ts";
import type { OnceShown } from "../capacity/index.ts";
import { printDay } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import { type Decided, occurrencesOf, slotHistory, slotsIn } from "../measures/index.ts";
import {
  type Catalogue,
  DECISION_KINDS,
  type ExerciseId,
  mergeEvents,
  type Patch,
  type PlanSlot,
  type StandingRule,
  type StaveEvent,
} from "../model/index.ts";
import { slotsAhead } from "../progress/index.ts";
import { carriedInto } from "./carried-into.ts";
import { decisionTitle, itemOf } from "./morning-for.ts";
import type { PlannedPerson } from "./situation.ts";
import { strokesAhead, strokesOf } from "./strokes.ts";
import { type View, viewOf } from "./view-of.ts";

/** One person: plan with reasons, record, what waits, what was decided. */
export function personPage(person: PlannedPerson, rules: readonly StandingRule[] = []): PersonOutput {
  const view = viewOf(person);
  const { plan, programme } = person;
  const slots = new Map<string, PlanSlot>();
  for (const { session } of occurrencesOf(plan))
    for (const slot of slotsIn(session)) if (!slots.has(slot.key)) slots.set(slot.key, slot);
  const ahead = new Map(slotsAhead(view.progress).map(({ slot }) => [slot.key, slot]));
  return {
    day: printDay(person.today),
    person: {
      id: person.person.id,
      name: person.person.name,
      units: person.person.units,
      programme: programme.title,
    },
    plan,
    names: namesIn(view),
    own: ownIn(person.catalogue),
    dates: datesIn(view),
    slots: [...slots.values()].map((slot) => ({
      slot: slot.key,
      past: slotHistory(view.log, slot.key)
        .filter(({ sets, leftOut }) => sets.length + leftOut.length > 0)
        .map((session) => ({ day: printDay(person.dayOf(session.at)), strokes: strokesOf(view, session) })),
      ...capacityIn(view.capacity(slot.exercise)?.once),
      ...carriedIn(view, slot.exercise),
      ...nextIn(view, ahead.get(slot.key)),
    })),
    waiting: view.waiting.map((one) => itemOf(view, one, rules)),
    notes: view.watched().notes,
    figures: view.watched().figures,
    decided: decisionsIn(view),
  };
}

function nextIn(view: View, slot: PlanSlot | undefined): Pick<PersonOutput["slots"][number], "next"> {
  return slot === undefined ? {} : { next: strokesAhead(view, slot) };
}

function capacityIn(capacity: OnceShown | undefined): Pick<PersonOutput["slots"][number], "capacity" | "missing"> {
  if (capacity === undefined) return {};
  if (capacity.kind === "unknown") return { missing: capacity.missing };
  const { value, low, high, sessions } = capacity;
  return { capacity: { value, low, high, sessions } };
}

function carriedIn(view: View, id: ExerciseId): Pick<PersonOutput["slots"][number], "carried"> {
  const carried = carriedInto(view, id);
  return carried === undefined ? {} : { carried };
}

/** What stands in no other catalogue but this practice's. */
function ownIn({ exercises }: Catalogue): PersonOutput["own"] {
  return [...exercises.keys()].flatMap((id) =>
    CATALOGUE.exercises.has(id) ? [] : { id, name: exercises.get(id)!.name },
  );
}

/** Every form that the plan or the record names, and what is proposed. */
function namesIn({ person, record, waiting }: View): PersonOutput["names"] {
  const ids = new Set<ExerciseId>();
  for (const { session } of occurrencesOf(person.plan)) {
    for (const { exercise } of [...session.warmup, ...session.conditioning]) ids.add(exercise);
    for (const { exercise, offer } of slotsIn(session)) for (const id of [exercise, ...offer]) ids.add(id);
  }
  for (const { slots } of record.sessions)
    for (const { sets } of slots) for (const { exercise } of sets) ids.add(exercise);
  for (const { others } of waiting)
    for (const patch of others) if (patch.change === "exercise") ids.add(patch.exercise);
  return [...ids].sort().flatMap((id) => {
    const form = person.catalogue.exercises.get(id);
    return form === undefined ? [] : [{ id, name: form.name }];
  });
}

/** What was recorded stands on the day of its record; the rest on its planned day. */
function datesIn({ days, record, person }: View): PersonOutput["dates"] {
  const done = new Map(record.sessions.map(({ session, at }) => [session, person.dayOf(at)]));
  return days
    .map(({ occurrence, day, from }) => ({ session: occurrence.id, day: done.get(occurrence.id) ?? day, from }))
    .sort((a, b) => a.day - b.day || a.from - b.from)
    .map(({ session, day, from }) => ({ session, day: printDay(day), from }));
}

/** Every decision that was ever made, latest first; what was undone stays beside its undoing. */
function decisionsIn(view: View): PersonOutput["decided"] {
  const isDecision = ({ kind }: StaveEvent) => (DECISION_KINDS as readonly string[]).includes(kind);
  const events = mergeEvents(view.person.events).filter(isDecision);
  const stands = new Set(view.record.decisions.map(({ id }) => id));
  const patchIn = ({ data }: StaveEvent) => {
    const { patch, instead } = data as { patch?: Patch; instead?: Patch };
    return instead ?? patch;
  };
  return events.toReversed().flatMap((event) => {
    const undone = (event.data as { decision?: string }).decision;
    const about = undone === undefined ? event : events.find(({ id }) => id === undone);
    const patch = about && patchIn(about);
    if (patch === undefined) return [];
    const { id, at } = event;
    const kind = event.kind as Decided["kind"] | "undone";
    const by = (event.data as { by?: string }).by ?? "";
    return [{ id, at, kind, by, title: decisionTitle(view, patch), slot: patch.slot, stands: stands.has(id) }];
  });
}

/** One line of the list of people. */
export function personLine(person: PlannedPerson): PeopleOutput["people"][number] {
  const { record, days, waiting } = viewOf(person);
  const recorded = new Set(record.sessions.map(({ session }) => session));
  const last = Math.max(...record.sessions.map(({ at }) => person.dayOf(at)));
  const next = days.find(({ occurrence, day }) => day >= person.today && !recorded.has(occurrence.id));
  return {
    id: person.person.id,
    name: person.person.name,
    programme: person.programme.title,
    ...(Number.isFinite(last) ? { last: printDay(last as PlannedPerson["today"]) } : {}),
    ...(next === undefined
      ? {}
      : { next: { day: printDay(next.day), from: next.from, title: next.occurrence.session.title } }),
    waiting: waiting.length,
  };
}

import type { Morning, MorningItem, MorningPerson } from "../api/index.ts";
import { type Day, printDay } from "../day.ts";
import { type Decided, lightDose, occurrencesOf, runsIn, slotHistory, slotsIn } from "../measures/index.ts";
import {
  nameOnRoster,
  type Patch,
  type PlanSlot,
  type Reason,
  type SlotKey,
  type StandingRule,
  writtenAlike,
} from "../model/index.ts";
import { titleOf, type Waiting } from "../progress/index.ts";
import { runWalkDose } from "../tables/index.ts";
import { leftBy } from "./by-rule.ts";
import type { PlannedPerson } from "./situation.ts";
import { strokesAhead, strokesOf } from "./strokes.ts";
import { type View, viewOf } from "./view-of.ts";

/** Sessions shown beside a proposal. */
const MOST_PAST = 4;

/**
 * The morning list: for whom something waits, who comes today, and whose record calls for a look. Stops stand on top,
 * then it goes by today's hours; those who do not come today follow, first those for whom something waits.
 */
export function morningFor(people: readonly PlannedPerson[], day: Day, rules: readonly StandingRule[] = []): Morning {
  const views = people.map(viewOf);
  const alike = writtenAlike(people.map(({ person }) => person));
  const named = ({ person }: PlannedPerson) => ({ id: person.id, name: nameOnRoster(person, alike) });
  const rows = views
    .map((view) => rowOf(view, named(view.person), day, rules))
    .filter(({ today, items, notes }) => today !== undefined || items.length > 0 || notes.length > 0)
    .sort(
      (a, b) =>
        rank(a) - rank(b) ||
        (a.today?.from ?? Number.POSITIVE_INFINITY) - (b.today?.from ?? Number.POSITIVE_INFINITY) ||
        (a.person.id < b.person.id ? -1 : 1),
    );
  const decided = views.flatMap((view) =>
    view.record.decisions
      .filter(({ at }) => view.person.dayOf(at) === day)
      .map((one) => ({ at: one.at, n: one.n, said: decidedOf(view, named(view.person), one) })),
  );
  return {
    day: printDay(day),
    people: rows,
    decided: decided.sort((a, b) => b.at - a.at || b.n - a.n).map(({ said }) => said),
  };
}

/** Infinity minus infinity is no order: whoever has no stop and does not come today counts last by rank alone. */
function rank({ items, today }: MorningPerson): number {
  if (items.some(({ stop }) => stop)) return 0;
  if (today !== undefined) return 1;
  return items.length > 0 ? 2 : 3;
}

function rowOf(view: View, who: MorningPerson["person"], day: Day, rules: readonly StandingRule[]): MorningPerson {
  const { days, waiting } = view;
  const coming = days.find((one) => one.day === day);
  return {
    person: who,
    ...(coming === undefined ? {} : { today: { from: coming.from, title: coming.occurrence.session.title } }),
    items: waiting.map((one) => itemOf(view, one, rules)),
    ...watchedOf(view),
  };
}

/** What the record tells, with the names of the movements in it. */
export function watchedOf(view: View): Pick<MorningPerson, "notes" | "figures" | "names"> {
  const { notes, figures } = view.watched();
  const ids = new Set(
    [...notes, ...figures].flatMap(({ data }) => (typeof data["exercise"] === "string" ? data["exercise"] : [])),
  );
  const names = [...ids].flatMap((id) => {
    const form = view.person.catalogue.exercises.get(id);
    return form === undefined ? [] : [{ id, name: form.name }];
  });
  return { notes, figures, names };
}

/** A proposal with everything to decide by. */
export function itemOf(view: View, waits: Waiting, rules: readonly StandingRule[] = []): MorningItem {
  const { proposal, slot, exercise, title, stop, others } = waits;
  const { person } = view.person;
  const past = slotHistory(view.log, slot.key).filter(({ sets, leftOut }) => sets.length + leftOut.length > 0);
  return {
    proposal,
    slot: slot.key,
    exercise: { id: exercise.id, name: exercise.name },
    title,
    stop,
    past: past.slice(-MOST_PAST).map((session) => ({
      day: printDay(view.person.dayOf(session.at)),
      strokes: strokesOf(view, session),
    })),
    next: nextOf(view, proposal.patch, slot),
    others: others.map((patch) => ({ patch, title: titleOf(patch, slot, exercise, person) })),
    left: leftBy(view, waits, rules),
  };
}

function nextOf(view: View, patch: Patch, slot: PlanSlot) {
  switch (patch.change) {
    case "load": {
      const { loads: _, ...kept } = slot;
      return strokesAhead(view, { ...kept, load: patch.load });
    }
    case "reps": {
      const loads = patch.dose.sets.flatMap(({ load }) => load ?? []);
      const said = loads.length === patch.dose.sets.length ? { load: loads[0]!, loads } : {};
      return strokesAhead(view, { ...slot, dose: patch.dose, ...said });
    }
    case "run-walk":
      return strokesAhead(view, { ...slot, dose: runWalkDose(patch.level) });
    case "pause":
      return [];
    case "light week":
      return strokesAhead(view, { ...slot, dose: lightDose(slot.dose) });
    default:
      return strokesAhead(view, slot);
  }
}

/** A slot as the plan asks it, wherever it comes first. */
function slotOf({ person }: View, key: SlotKey): PlanSlot | undefined {
  return occurrencesOf(person.plan)
    .flatMap(({ session }) => [...slotsIn(session), ...runsIn(session).map(({ slot }) => slot)])
    .find((slot) => slot.key === key);
}

/** What a decision did, or for a refusal what was refused, as a reason; as of the plan that stands now. */
export function decisionTitle(view: View, patch: Patch): Reason {
  const slot = slotOf(view, patch.slot);
  const exercise = slot && view.person.catalogue.exercises.get(slot.exercise);
  const title = titleOf(patch, slot, exercise, view.person.person);
  return patch.change === "load" ? { ...title, data: { ...title.data, from: null, percent: null } } : title;
}

function decidedOf(
  view: View,
  person: MorningPerson["person"],
  { id, kind, by, patch, proposal }: Decided,
): Morning["decided"][number] {
  return {
    id,
    person,
    kind,
    by,
    title: decisionTitle(view, (patch ?? proposal?.patch)!),
  };
}

import type { Day } from "../day.ts";
import type { FitInput } from "../fit/index.ts";
import { foldRecord, liftsFrom, logOf } from "../measures/index.ts";
import {
  type Block,
  type Conditioning,
  canonicalJson,
  type Dose,
  type Person,
  type Pin,
  type Plan,
  type PlanPhase,
  type Programme,
  type Slot,
} from "../model/index.ts";
import { type LightWeeks, lighterIn, lightWeeksOf, withLightWeeks } from "./light-weeks.ts";
import { patchesInForce } from "./patches-in-force.ts";
import { bindingDay, phaseOn } from "./phase-facts.ts";
import { type Days, daysOfPhases, fitTask, notesFor, planPhase } from "./plan-for.ts";
import type { Pins } from "./plan-week.ts";
import type { Situation } from "./situation.ts";

/** What a revision is made from, ready to be fitted. */
interface Basis {
  readonly made: Plan["made"];
  readonly pins: Pins;
  readonly light: LightWeeks;
  /** Phase that runs today, 0 = first. */
  readonly now: number;
  /** For each phase: the days for which it is to be safe, and the person with what they lifted before it. */
  readonly phases: readonly { readonly days: Days; readonly person: Person }[];
}

function basisOf(situation: Situation): Basis {
  const { programme, programmeHash, person, place, others, on, today, engine, catalogueHash, hash } = situation;
  const record = foldRecord(situation.events);
  const pins = patchesInForce(record, today);
  const light = lightWeeksOf(record);
  const now = phaseOn(situation, today);
  const stretches = daysOfPhases(situation);
  const log = logOf(undefined, record, situation.revisionOf);
  const phases = stretches.map(({ on: first, to }, index) => {
    const lifts = liftsFrom(log, situation, stretches[Math.min(index, now)]!.on);
    return {
      days: { on: index === now ? bindingDay(person, first, Math.min(to, today) as Day) : first, to },
      person: { ...person, lifts: [...person.lifts, ...lifts], pins: withPins(programme, person.pins, pins) },
    };
  });
  const facts = { programme: programmeHash, person, place, others, on, now, phases: phases.map((phase) => phase.days) };
  const lifts = phases.map((phase) => phase.person.lifts.slice(person.lifts.length));
  const made = {
    engine,
    catalogue: catalogueHash,
    state: hash(canonicalJson({ ...facts, lifts })),
    decisions: hash(canonicalJson([...inOrder(pins), ...inOrder(light)])),
  };
  return { made, pins, light, now, phases };
}

function inOrder<Value>(map: ReadonlyMap<string, Value>): readonly (readonly [string, Value])[] {
  return [...map].sort(([a], [b]) => (a < b ? -1 : 1));
}

/** What the next revision would be made from. While it equals that of the plan that stands, the plan is up to date. */
export function madeFor(situation: Situation): Plan["made"] {
  return basisOf(situation).made;
}

/**
 * The plan from facts, record and decisions: every phase fitted with what was lifted before it began, under the limits
 * that bind, with the coach's decisions as pins. A pin beats every want; what may never be beats a pin, and says so.
 *
 * What is recorded during a phase changes nothing in it by itself: that takes a decision. Equal `made` gives equal bytes,
 * and the same id. Limits and phases begin on days, so `made` is to be looked at again each day.
 */
export function nextRevision(situation: Situation): Plan {
  const { programmeHash, person, hash } = situation;
  const { made, pins, light, now, phases } = basisOf(situation);
  const programme = withLightWeeks(situation.programme, light);
  const planned = phases.map((facts, index) =>
    pinnedPhase(programme, pins, lighterIn(light, programme.phases[index]!), (asked) => {
      const input = { ...situation, programme: asked, person: facts.person };
      return fitTask(input, index, facts.days);
    }),
  );
  const name = hash(canonicalJson({ made, programmeHash, person: person.id })).slice(0, 16);
  return {
    id: `${person.id}/${programme.id}/${programme.version}/${name}`,
    person: person.id,
    programme: programmeHash,
    made,
    firmTo: { phase: programme.phases[now]!.key },
    notes: notesFor(
      situation,
      phases.map(({ days }) => days),
      phases[now]!.days.on,
    ),
    phases: planned,
  };
}

/** A dose that was decided for one form does not stay when the slot turns out to hold another. */
function pinnedPhase(
  programme: Programme,
  pins: Pins,
  lighter: ReadonlySet<number>,
  taskOf: (programme: Programme) => FitInput,
): PlanPhase {
  const phase = planPhase(taskOf(withDoses(programme, pins)), pins, lighter);
  const slots = phase.weeks.flatMap(({ sessions }) =>
    sessions.flatMap(({ blocks }) => blocks.flatMap((one) => one.slots)),
  );
  const stale = slots.filter(({ key, exercise }) => {
    const form = pins.get(key)?.dose?.form;
    return form !== undefined && form !== exercise;
  });
  if (stale.length === 0) return phase;
  const without = new Map(pins);
  for (const { key } of stale) without.set(key, { ...pins.get(key)!, dose: undefined });
  return planPhase(taskOf(withDoses(programme, without)), without, lighter);
}

/** Forms, and numbers of sets of slots that stand alone; those in a pair or round share one with the others. */
function withPins(programme: Programme, own: readonly Pin[], pins: Pins): readonly Pin[] {
  const alone = new Set(blocksOf(programme).flatMap((block) => ("slot" in block ? [block.slot] : [])));
  const decided = [...pins].flatMap(([slot, { exercise, dose }]): Pin[] => [
    ...(exercise === undefined ? [] : [{ slot, exercise }]),
    ...(dose === undefined || !alone.has(slot) ? [] : [{ slot, sets: dose.dose.sets.length }]),
  ]);
  const beaten = (pin: Pin) =>
    decided.some(
      ({ slot, exercise, sets }) =>
        slot === pin.slot && (exercise === undefined ? pin.sets !== undefined && sets !== undefined : true),
    );
  return [...own.filter((pin) => !beaten(pin)), ...decided];
}

function blocksOf(programme: Programme): readonly Block[] {
  return programme.phases.flatMap(({ sessions }) => sessions.flatMap(({ work }) => work));
}

/** The programme with the doses and levels that were decided, from the first week of their phase on. */
function withDoses(programme: Programme, pins: Pins): Programme {
  const pinned = (slot: Slot, inTurn: boolean): Slot => {
    const decided = pins.get(slot.slot)?.dose?.dose;
    if (decided === undefined) return slot;
    const { changes = [], ...kept } = slot;
    if (!inTurn) return { ...kept, dose: decided };
    const withSetsOf = ({ sets }: Dose): Dose => ({
      ...decided,
      sets: sets.map((_, at) => decided.sets[at] ?? decided.sets.at(-1)!),
    });
    return {
      ...kept,
      dose: withSetsOf(slot.dose),
      changes: changes.map(({ week, dose }) => ({ week, dose: withSetsOf(dose) })),
    };
  };
  const block = (one: Block): Block => {
    if ("pair" in one) return { ...one, pair: one.pair.map((slot) => pinned(slot, true)) };
    if ("round" in one) return { ...one, round: one.round.map((slot) => pinned(slot, true)) };
    return pinned(one, false);
  };
  const run = (item: Conditioning): Conditioning =>
    "runWalk" in item ? { ...item, runWalk: pins.get(item.slot)?.run ?? item.runWalk } : item;
  return {
    ...programme,
    phases: programme.phases.map((phase) => ({
      ...phase,
      sessions: phase.sessions.map((session) => ({
        ...session,
        work: session.work.map(block),
        ...(session.conditioning === undefined ? {} : { conditioning: session.conditioning.map(run) }),
      })),
    })),
  };
}

import { distance } from "../exercises/index.ts";
import { admitFor, type Candidate, choicesFor, withSets } from "../fit/index.ts";
import { lightDose, type Occurrence } from "../measures/index.ts";
import {
  canonicalJson,
  type Dose,
  MOST_OFFERED,
  type OfferedForm,
  type PlanSlot,
  type Slot,
  slotsOf,
} from "../model/index.ts";
import { daysOfPhases } from "./plan-for.ts";
import type { PlannedPerson } from "./situation.ts";

/** What a slot offers, and the loads of each form. */
export interface SlotOffer {
  readonly forms: readonly OfferedForm[];
  readonly candidates: readonly Candidate[];
}

/**
 * The forms that may take a slot's place for this person today: itself, then the easier ones on its ladder, nearest
 * first, then others of the pattern. Whatever the coach pinned, an easier form stays on offer.
 *
 * @param person with what they lifted lately among their lifts
 * @returns itself alone where the programme has no such slot any more
 */
export function offersFor(
  { programme, place, catalogue, on, today }: PlannedPerson,
  person: PlannedPerson["person"],
  { phase: key, week, light }: Occurrence,
  slot: PlanSlot,
): SlotOffer {
  const index = programme.phases.findIndex((each) => each.key === key);
  const phase = programme.phases[index];
  const from: Slot | undefined = phase?.sessions
    .flatMap(({ work }) => work.flatMap(slotsOf))
    .find((each) => each.slot === slot.key);
  if (phase === undefined || from === undefined)
    return { forms: [{ exercise: slot.exercise, rung: 0 }], candidates: [] };
  const { to } = daysOfPhases({ programme, person, on })[index]!;
  const free = { ...person, pins: person.pins.filter((pin) => pin.slot !== slot.key) };
  const context = { phase, person: free, place, catalogue, on: today, to: today < to ? to : today };
  const { candidates } = choicesFor(context, admitFor(context), from);
  const stood = candidates.map((candidate) => ({
    candidate,
    rung: distance(catalogue, slot.exercise, candidate.exercise.id) ?? 0,
  }));
  const others = stood.filter(({ candidate, rung }) => rung <= 0 && candidate.exercise.id !== slot.exercise);
  const easier = others.filter(({ rung }) => rung < 0).sort((a, b) => b.rung - a.rung);
  const like = others.filter(({ rung }) => rung === 0);
  const chosen = [...easier.slice(0, MOST_OFFERED - 4), ...like].slice(0, MOST_OFFERED - 1);
  const own: OfferedForm = {
    exercise: slot.exercise,
    rung: 0,
    ...(slot.load === undefined ? {} : { load: slot.load }),
  };
  return {
    forms: [own, ...chosen.map(({ candidate, rung }) => offered(candidate, rung, slot, week, light))],
    candidates: candidates.filter(({ exercise }) => chosen.some(({ candidate }) => candidate.exercise === exercise)),
  };
}

function offered(candidate: Candidate, rung: number, slot: PlanSlot, week: number, light: boolean): OfferedForm {
  const full = candidate.doses[week - 1] ?? candidate.doses[0]!;
  const dose: Dose = withSets(light ? lightDose(full) : full, slot.dose.sets.length);
  const start = candidate.startOf(dose);
  return {
    exercise: candidate.exercise.id,
    rung,
    ...(start.kind === "load" ? { load: start.load } : {}),
    ...(canonicalJson(dose) === canonicalJson(slot.dose) ? {} : { dose }),
    ...(candidate.side === undefined ? {} : { side: candidate.side }),
  };
}

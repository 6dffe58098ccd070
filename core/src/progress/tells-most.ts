import { settledBy } from "../capacity/index.ts";
import { setSeconds, slotsIn } from "../measures/index.ts";
import type { ExerciseId, PlanSession, Reason, SlotKey } from "../model/index.ts";
import { kgMoved } from "./likely.ts";
import { nextLoad } from "./next-load.ts";
import type { ProgressInput } from "./progress-input.ts";
import { dosesFor, type SlotDose } from "./proposals-for.ts";
import { reason } from "./reasons.ts";
import { rangeOf } from "./titles.ts";
import { trained } from "./trained.ts";
import { unansweredPains } from "./waiting-pains.ts";

/** One of a session's own sets, no harder than it is asked, with load, repetitions and reserve said. */
export interface TellingSet {
  readonly slot: SlotKey;
  readonly exercise: ExerciseId;
  /** Seconds that it takes, the rest after it included. */
  readonly seconds: number;
  /** Open decisions that it settles on average. */
  readonly settles: number;
  /** Slots whose next dose is open and that it bears on. */
  readonly bearsOn: readonly SlotKey[];
  readonly because: Reason;
}

/** Rest after a set where none is said, seconds. Ours, as in the minutes of a session. */
const USUAL_REST_S = 90;
/** Sessions of a form before one of its sets is asked to tell anything. Ours: first tests learn more than they tell. */
const FIRST_SESSIONS = 2;
/** Fewer decisions than this on average, and a set tells nothing worth asking for. Ours, no source. */
const LEAST_SETTLED = 0.05;

/**
 * Which of a session's sets tell most: how many open decisions each settles on average, per minute. A decision is open
 * where a slot's next load is neither sure nor unlikely, or where one more session is missing to say anything.
 *
 * Safe only: forms that nothing hurts at, that were done twice before, at what is asked and no harder.
 *
 * @returns the most telling first; empty where nothing is open or nothing bears on it
 * @source ours
 */
export function tellsMost(input: ProgressInput, session: PlanSession): readonly TellingSet[] {
  const doses = dosesFor(input);
  const today = new Set(slotsIn(session).map(({ key }) => key));
  const sets = doses
    .filter(({ slot }) => today.has(slot.key))
    .flatMap((dose): TellingSet[] => {
      const { slot, exercise, state } = dose;
      const [set] = slot.dose.sets;
      const isNew = trained(state).length < FIRST_SESSIONS;
      if (set === undefined || isNew || unansweredPains(input, slot.key, exercise).length > 0) return [];
      const open = doses
        .filter((each) => each.exercise.id === exercise.id)
        .map((each) => ({ slot: each.slot.key, settles: settledIn(each) }))
        .filter(({ settles }) => settles > 0);
      const settles = open.reduce((sum, each) => sum + each.settles, 0);
      if (!(settles >= LEAST_SETTLED)) return [];
      const seconds = setSeconds(exercise, set, slot.dose.tempo).seconds + (slot.dose.restS ?? USUAL_REST_S);
      const shown = Math.round(settles * 100) / 100;
      const data = { exercise: exercise.id, seconds, settles: shown, slots: open.map((each) => each.slot) };
      return [
        {
          slot: slot.key,
          exercise: exercise.id,
          seconds,
          settles: shown,
          bearsOn: open.map((each) => each.slot),
          because: reason("progress/tells-most", data),
        },
      ];
    });
  const rate = ({ settles, seconds }: TellingSet) => settles / seconds;
  return sets.sort((a, b) => rate(b) - rate(a) || (a.slot < b.slot ? -1 : 1));
}

/** How likely one sure set settles a slot's next load; 0 where nothing is open. */
function settledIn({ state, next }: SlotDose): number {
  const { capacity, slot, home, exercise, person, loads } = state;
  const range = rangeOf(home);
  const step = slot.load === undefined ? undefined : nextLoad(exercise, person, loads, slot.load);
  const kg = step === undefined ? undefined : kgMoved(exercise, person, step.to);
  if (next.kind === "up" || next.kind === "down" || range === undefined || kg === undefined) return 0;
  if (capacity.kind === "unknown") {
    const { code, data } = capacity.missing;
    return code === "capacity/few-sessions" ? 1 / (Number(data["needed"]) - Number(data["sessions"])) : 0;
  }
  return settledBy(capacity, { kg, reps: range.from, reserve: home.sets[0]?.reserve?.from ?? 0 });
}

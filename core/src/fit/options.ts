import { type AskedBlock, blockSeconds, isLight, rampDose, slotQuarters } from "../measures/index.ts";
import { type Dose, doseInWeek, MUSCLES, type Phase } from "../model/index.ts";
import { balanceEntry, muscleRow } from "./bands.ts";
import type { Candidate, SlotChoices } from "./candidates.ts";
import { setChoices, takesLoad, withSets } from "./dose-for.ts";
import type { Line, Option } from "./task.ts";

/** Must points of a slot that stays open; a quarter-set outside a band that must hold is 1. Ours, no source. */
const OPEN_SLOT = 10;
/** Want points for each set left out or added to what the coach wrote. Ours, no source. */
const SET_LEFT_OUT = -8;
const SET_ADDED = -20;

/** Seconds of a typical length that make one unit of 5 s at the upper estimate, which is a quarter longer. */
export const TYPICAL_PER_UNIT = 4;

/** A block of the programme with everything that may stand in it. */
export interface BlockChoices {
  readonly kind: AskedBlock["kind"];
  readonly restS?: number;
  readonly slots: readonly SlotChoices[];
  /** Lighter sets before the work that lead up to a slot of this block, by slot key. */
  readonly ramps: ReadonlyMap<string, number>;
}

/**
 * The week that stands for the phase in weekly sums: of the weeks that are not light, the one that asks for most sets
 * of this block, the first of equals.
 */
export function fullWeek(phase: Phase, setsInWeek: (week: number) => number): number {
  let best = 1;
  let most = -1;
  for (let week = 1; week <= phase.weeks; week++) {
    if (isLight(phase, week) && phase.weeks > (phase.light?.length ?? 0)) continue;
    if (setsInWeek(week) > most) {
      most = setsInWeek(week);
      best = week;
    }
  }
  return best;
}

/** @returns a slot's dose in a week when fit gives so many sets in the full week */
export function doseWithSets(doses: readonly Dose[], week: number, full: number, sets: number): Dose {
  const dose = doses[week - 1]!;
  const change = sets - doses[full - 1]!.sets.length;
  return withSets(dose, Math.max(1, dose.sets.length + change));
}

function setsPoints(change: number): number {
  return change > 0 ? SET_ADDED * change : SET_LEFT_OUT * -change;
}

/** Every choice of one candidate, or none, for each slot. */
function combinations(slots: readonly SlotChoices[]): readonly (readonly (Candidate | undefined)[])[] {
  return slots.reduce<readonly (readonly (Candidate | undefined)[])[]>(
    (sofar, { candidates }) => sofar.flatMap((start) => [...candidates, undefined].map((next) => [...start, next])),
    [[]],
  );
}

/** The longest that the block takes in any week, at the upper estimate, in units of 5 s. */
function timeOf(
  phase: Phase,
  block: BlockChoices,
  filled: readonly { candidate: Candidate; choices: SlotChoices }[],
  full: number,
  sets: number,
  moves: boolean,
): number {
  let longest = 0;
  for (let week = 1; week <= phase.weeks; week++) {
    if (isLight(phase, week)) continue;
    const timed = filled.map(({ candidate }) => ({
      exercise: candidate.exercise,
      dose: doseWithSets(candidate.doses, week, full, sets),
    }));
    const took = blockSeconds(
      filled.length === 1 ? "straight" : block.kind,
      timed,
      filled.length === 1 ? undefined : block.restS,
    );
    const ramp = filled.reduce((sum, { candidate, choices }) => {
      const count = block.ramps.get(choices.slot.slot);
      if (count === undefined || !takesLoad(candidate.exercise)) return sum;
      const lead = blockSeconds("straight", [{ exercise: candidate.exercise, dose: rampDose(count) }], undefined, 0);
      return sum + lead.work + lead.rest + candidate.exercise.changeS;
    }, 0);
    longest = Math.max(longest, took.setUp + took.work + took.rest + took.changes + ramp);
  }
  const reach = moves ? filled[0]!.candidate.exercise.moveS : 0;
  return Math.ceil((longest + reach) / TYPICAL_PER_UNIT);
}

function rowsOf(filled: readonly Candidate[], full: number, sets: number): Option["rows"] {
  const sums = new Map<number, number>();
  const add = (row: number, amount: number) => sums.set(row, (sums.get(row) ?? 0) + amount);
  for (const candidate of filled) {
    const counted = slotQuarters(candidate.exercise, doseWithSets(candidate.doses, full, full, sets));
    for (const muscle of MUSCLES) if (counted[muscle] !== undefined) add(muscleRow(muscle), counted[muscle]);
    const balance = balanceEntry(candidate.exercise.pattern, sets);
    if (balance !== undefined) add(balance[0], balance[1]);
  }
  return [...sums].sort(([a], [b]) => a - b);
}

/**
 * A stated order of options, for ties: the better by itself first, then nearer the coach's sets, then as the candidates
 * stand.
 */
function inStatedOrder(options: readonly Option[], asked: number): readonly Option[] {
  return options.toSorted(
    (a, b) => a.must - b.must || b.want - a.want || Math.abs(a.sets - asked) - Math.abs(b.sets - asked),
  );
}

/**
 * Every way to fill a block: each combination of admitted forms, or none, with each number of sets. Slots of a pair or
 * round have one number of sets between them, so the block is one choice.
 *
 * @param moves whether somebody has to walk to this block, because it is not the first of its session
 * @param pinnedSets the coach's own number of sets for this person
 */
export function optionsOf(phase: Phase, block: BlockChoices, moves: boolean, pinnedSets?: number): readonly Option[] {
  const first = block.slots[0]!;
  const asked = (week: number) => doseInWeek(first.slot, week).sets.length;
  const full = fullWeek(phase, asked);
  const coach = asked(full);
  const options: Option[] = [];
  for (const combination of combinations(block.slots)) {
    const filled = combination.flatMap((candidate, index) =>
      candidate === undefined ? [] : [{ candidate, choices: block.slots[index]! }],
    );
    const names = filled.map(({ candidate }) => candidate.exercise.id);
    if (new Set(names).size < names.length) continue;
    const fillings = combination.map((candidate, index) => ({
      slot: block.slots[index]!.slot.slot,
      exercise: candidate?.exercise.id,
    }));
    const open = combination.length - filled.length;
    const openLines: readonly Line[] = fillings.flatMap(({ slot, exercise }) =>
      exercise === undefined
        ? [{ id: "fit/open-slot", level: "must", points: -OPEN_SLOT, data: { slot } } as const]
        : [],
    );
    const own = filled.flatMap(({ candidate }) => candidate.lines);
    const counts = filled.length === 0 ? [0] : pinnedSets === undefined ? setChoices(coach) : [pinnedSets];
    for (const sets of counts) {
      const changed = filled.length === 0 || pinnedSets !== undefined ? 0 : filled.length * setsPoints(sets - coach);
      const changedLines: readonly Line[] =
        changed === 0 ? [] : [{ id: "fit/sets-changed", level: "want", points: changed, data: { asked: coach, sets } }];
      options.push({
        fillings,
        sets,
        must: OPEN_SLOT * open,
        want: own.reduce((sum, line) => sum + line.points, 0) + changed,
        time: filled.length === 0 ? 0 : timeOf(phase, block, filled, full, sets, moves),
        rows: rowsOf(
          filled.map(({ candidate }) => candidate),
          full,
          sets,
        ),
        lines: [...openLines, ...own, ...changedLines],
      });
    }
  }
  return inStatedOrder(options, coach);
}

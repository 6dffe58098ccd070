import {
  type AskedBlock,
  type BlockSeconds,
  blockSeconds,
  isLight,
  rampDose,
  slotQuarters,
} from "../measures/index.ts";
import { type Dose, doseInWeek, type Exercise, MUSCLES, type Phase, type Place, STATIONS } from "../model/index.ts";
import { balanceEntry, muscleRow } from "./bands.ts";
import type { Candidate, SlotChoices } from "./candidates.ts";
import { setChoices, takesLoad, withSets } from "./dose-for.ts";
import type { BlockTask, Line, Option, Way } from "./task.ts";

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

/** What the ways of a block are counted with. */
interface Setting {
  readonly phase: Phase;
  readonly place: Place;
  readonly block: BlockChoices;
  /** The week that stands for the phase, and the sets that the coach asks for in it. */
  readonly full: number;
  readonly asked: number;
  /** Somebody has to walk to the block, because it is not the first of its session. */
  readonly moves: boolean;
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

/** Units of 5 s that something takes in the longest week that is not light. Weeks with the same doses take the same. */
function longest(
  phase: Phase,
  dosesIn: (week: number) => readonly (Dose | undefined)[],
  secondsIn: (week: number) => number,
): number {
  let most = 0;
  let before: readonly (Dose | undefined)[] | undefined;
  for (let week = 1; week <= phase.weeks; week++) {
    if (isLight(phase, week)) continue;
    const doses = dosesIn(week);
    if (before === undefined || doses.some((dose, at) => dose !== before![at])) most = Math.max(most, secondsIn(week));
    before = doses;
  }
  return Math.ceil(most / TYPICAL_PER_UNIT);
}

function withoutRest({ setUp, work, changes }: BlockSeconds): number {
  return setUp + work + changes;
}

/** The lighter sets before a form that takes a load. */
function rampSeconds({ block }: Setting, slot: string, exercise: Exercise): number {
  const count = block.ramps.get(slot);
  if (count === undefined || !takesLoad(exercise)) return 0;
  const lead = blockSeconds("straight", [{ exercise, dose: rampDose(count) }], undefined, 0);
  return lead.work + lead.rest + exercise.changeS;
}

/** Everything of one form in a slot but, in company, the rest between turns. */
function timeOf(setting: Setting, at: number, { exercise, doses }: Candidate, sets: number, alone: boolean): number {
  const { phase, block, full, moves } = setting;
  const reach = moves || (!alone && at > 0) ? exercise.moveS : 0;
  const ramp = rampSeconds(setting, block.slots[at]!.slot.slot, exercise);
  const dosesIn = (week: number) => [doses[week - 1]];
  return longest(phase, dosesIn, (week) => {
    const took = blockSeconds("straight", [{ exercise, dose: doseWithSets(doses, week, full, sets) }]);
    return withoutRest(took) + (alone ? took.rest : 0) + ramp + reach;
  });
}

/** Rest between the turns of those slots of a pair or round that are filled. */
function restOf({ phase, block, full }: Setting, filled: readonly number[], sets: number): number {
  const slots = filled.flatMap((at) => {
    const { slot, candidates } = block.slots[at]!;
    const exercise = candidates[0]?.exercise;
    const asked = Array.from({ length: phase.weeks }, (_, index) => doseInWeek(slot, index + 1));
    return exercise === undefined ? [] : [{ exercise, asked }];
  });
  const dosesIn = (week: number) => slots.map(({ asked }) => asked[week - 1]);
  return longest(phase, dosesIn, (week) => {
    const timed = slots.map(({ exercise, asked }) => ({ exercise, dose: doseWithSets(asked, week, full, sets) }));
    return blockSeconds(block.kind, timed, block.restS).rest;
  });
}

function rowsOf({ exercise, doses }: Candidate, full: number, sets: number): Option["rows"] {
  const counted = slotQuarters(exercise, doseWithSets(doses, full, full, sets));
  const muscles = MUSCLES.flatMap((muscle) =>
    counted[muscle] === undefined ? [] : [[muscleRow(muscle), counted[muscle]] as const],
  );
  const balance = balanceEntry(exercise.pattern, sets);
  return balance === undefined ? muscles : [...muscles, balance];
}

/** Each need that only busy stations of this place can meet, as the names of those that can. */
function stationsOf(exercise: Exercise, place: Place): readonly string[] {
  const groups = exercise.needs.map((group) => group.filter((what) => (place.equipment[what] ?? 0) > 0));
  const busy = groups.filter((group) => group.length > 0 && group.every((what) => STATIONS.includes(what)));
  return [...new Set(busy.map((group) => group.toSorted().join(" or ")))];
}

function optionOf(setting: Setting, at: number, rank: number, sets: number, alone: boolean): Option {
  const candidate = setting.block.slots[at]!.candidates[rank]!;
  const { asked, full } = setting;
  const changed = setsPoints(sets - asked);
  const line: Line = { id: "fit/sets-changed", level: "want", points: changed, data: { asked, sets } };
  return {
    exercise: candidate.exercise.id,
    sets,
    must: 0,
    want: candidate.want + changed,
    time: timeOf(setting, at, candidate, sets, alone),
    rows: rowsOf(candidate, full, sets),
    stations: stationsOf(candidate.exercise, setting.place),
    rank,
    lines: changed === 0 ? candidate.lines : [...candidate.lines, line],
  };
}

function openOption({ slot, candidates }: SlotChoices): Option {
  const line: Line = { id: "fit/open-slot", level: "must", points: -OPEN_SLOT, data: { slot: slot.slot } };
  const rank = candidates.length;
  return {
    exercise: undefined,
    sets: 0,
    must: OPEN_SLOT,
    want: 0,
    time: 0,
    rows: [],
    stations: [],
    rank,
    lines: [line],
  };
}

/** The better by itself first, then nearer the coach's sets, then as the candidates stand. */
function inStatedOrder(options: readonly Option[], asked: number): readonly Option[] {
  return options.toSorted(
    (a, b) =>
      a.must - b.must || b.want - a.want || Math.abs(a.sets - asked) - Math.abs(b.sets - asked) || a.rank - b.rank,
  );
}

/** A slot by itself: every form with every number of sets. */
function aloneIn(setting: Setting, at: number, counts: readonly number[]): readonly Option[] {
  const { candidates } = setting.block.slots[at]!;
  const options = candidates.flatMap((_, rank) => counts.map((sets) => optionOf(setting, at, rank, sets, true)));
  return inStatedOrder(options, setting.asked);
}

/** Which of so many slots are filled: every choice, the most filled first, of as many the earlier slots first. */
function fillings(slots: number): readonly (readonly number[])[] {
  const all = Array.from({ length: 2 ** slots }, (_, mask) =>
    Array.from({ length: slots }, (_, at) => at).filter((at) => Math.floor(mask / 2 ** (slots - 1 - at)) % 2 === 1),
  );
  return all.toReversed().toSorted((a, b) => b.length - a.length);
}

/**
 * The ways to do a block. A slot alone has one way: any form with any number of sets, or open. Slots of a pair or round
 * have one number of sets between them, so that each number is a way, for each choice of slots that are filled; one that
 * is filled alone is done as a slot alone.
 */
function waysOf(setting: Setting, counts: readonly number[]): readonly Way[] {
  const { slots } = setting.block;
  const open = slots.map(openOption);
  const alone = slots.map((_, at) => aloneIn(setting, at, counts));
  if (slots.length === 1) return [{ time: 0, steps: [[...alone[0]!, open[0]!]] }];
  const nearestFirst = counts.toSorted((a, b) => Math.abs(a - setting.asked) - Math.abs(b - setting.asked) || a - b);
  const inTurn = nearestFirst.map((sets) =>
    slots.map(({ candidates }, at) => candidates.map((_, rank) => optionOf(setting, at, rank, sets, false))),
  );
  const ways = fillings(slots.length).flatMap((filled): readonly Way[] => {
    const steps = (options: readonly (readonly Option[])[]) =>
      slots.map((_, at) => (filled.includes(at) ? options[at]! : [open[at]!]));
    if (filled.length < 2) return [{ time: 0, steps: steps(alone) }];
    return nearestFirst.map((sets, index) => ({ time: restOf(setting, filled, sets), steps: steps(inTurn[index]!) }));
  });
  return ways.filter(({ steps }) => steps.every((step) => step.length > 0));
}

/**
 * Every way to fill a block.
 *
 * @param moves whether somebody has to walk to this block, because it is not the first of its session
 * @param pinnedSets the coach's own number of sets for this person, which costs nothing
 */
export function blockTask(
  session: number,
  input: { readonly phase: Phase; readonly place: Place },
  block: BlockChoices,
  moves: boolean,
  pinnedSets?: number,
): BlockTask {
  const first = block.slots[0]!;
  const setsIn = (week: number) => doseInWeek(first.slot, week).sets.length;
  const full = fullWeek(input.phase, setsIn);
  const setting = { ...input, block, full, moves, asked: pinnedSets ?? setsIn(full) };
  const counts = pinnedSets === undefined ? setChoices(setting.asked) : [pinnedSets];
  const ways = waysOf(setting, counts);
  const names = new Set(ways.flatMap(({ steps }) => steps.flat().flatMap(({ stations }) => stations)));
  const count = (name: string) =>
    name.split(" or ").reduce((sum, what) => sum + (input.place.equipment[what as keyof Place["equipment"]] ?? 0), 0);
  const atOnce = new Map([...names].sort().map((name) => [name, count(name)]));
  return { session, slots: block.slots.map(({ slot }) => slot.slot), ways, atOnce };
}

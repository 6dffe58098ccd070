import type { Day } from "../day.ts";
import { type SetFact, ZONE_TOP, type Zone, zoneOf } from "./set-fact.ts";

/** What one session says in one zone, on the scale of the estimate: ln of kilograms once, or of seconds. */
export interface Reading {
  readonly day: Day;
  readonly zone: Zone;
  /** Undefined where a movement was done and nothing was told. */
  readonly told?: {
    readonly value: number;
    /** sure: of every set all is known · short: stopped under what was asked, reserve not said · least: a lower bound. */
    readonly how: "sure" | "short" | "least";
    /** All were past the end of the zone, so the value is its end and the truth lies above. */
    readonly past: boolean;
    /** All were so far past it that the value says little of the truth. */
    readonly farPast: boolean;
    readonly sets: number;
  };
  /** Of sets that were asked for so many at least: what that needs of the level, and whether so many were done. */
  readonly floors: readonly { readonly need: number; readonly done: boolean }[];
}

/** More in reserve than so many nobody can tell: it counts as so many at least. Source: hackett2017. */
const MOST_RESERVE = 5;
/** A whole repetition counts what was finished; half of one more is left on average. Ours, no source. */
export const HALF = 0.5;
/**
 * Where some are left, or a set ended with what was asked, people say too few by so much. Half of the published mean of 0.95 (0.17 to 1.73): the studies
 * disagree widely, and half is wrong by no more than half either way. Source: halperin2022; the half is ours.
 */
const SAID_TOO_FEW = 0.5;
/** Each set before makes the next so much weaker, in ln units: about two thirds of a repetition. Ours, no source. */
const TIRED = 0.018;
/** Sets beyond this many tire no further. Ours, no source. */
const MOST_TIRED = 5;
/** So many repetitions past the end of a zone are far past it. Ours, as in the rule of two more than asked, no source. */
const FAR = 2;
/** Repetitions per unit of load on the curve that readings are compared on. Source: epley1985. */
export const CURVE = 30;

type Told = Omit<NonNullable<Reading["told"]>, "sets">;

/** @returns what the sets before one cost it, ln units; `set` 0 = first */
export function tired(set: number): number {
  return TIRED * Math.min(set, MOST_TIRED);
}

/** ln of what could be lifted "at 0 repetitions" on the curve, from a load and the repetitions it leaves. @source epley1985 */
export function onCurve(kg: number, reps: number): number {
  return Math.log(kg * (1 + reps / CURVE));
}

/**
 * What the sets of one movement say, session by session: all sets of one day and zone together are one reading.
 *
 * A set says something for sure when its load and repetitions are known and its reserve was said, or as many as
 * possible were asked. A set stopped at what was asked, with the reserve not said, is a lower bound; one stopped under
 * it is about as much as was possible. The zone is that of what was asked, so that doing more never changes it.
 *
 * @param facts in any order
 * @returns in order of day, then zone; a day on which nothing was told keeps its place
 * @source epley1985, hackett2017, halperin2022, ours
 */
export function readingsOf(facts: readonly SetFact[]): readonly Reading[] {
  const groups = new Map<string, SetFact[]>();
  for (const fact of facts.toSorted(inOrder)) {
    const key = `${fact.day}/${zoneAsked(fact)}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [fact]);
    else group.push(fact);
  }
  return [...groups.values()].map(readingOf);
}

function readingOf(facts: readonly SetFact[]): Reading {
  const zone = zoneAsked(facts[0]!);
  const { day } = facts[0]!;
  const told = facts.flatMap((fact) => toldBy(fact, zone) ?? []);
  const kind = (["sure", "short", "least"] as const).find((how) => told.some((one) => one.how === how));
  const floors = facts.flatMap((fact) => floorOf(fact) ?? []);
  if (kind === undefined) return { day, zone, floors };
  const of = told.filter(({ how }) => how === kind);
  const values = of.map(({ value }) => value);
  const value = kind === "least" ? Math.max(...values) : values.reduce((sum, each) => sum + each, 0) / values.length;
  return {
    day,
    zone,
    told: {
      value,
      how: kind,
      past: of.every(({ past }) => past),
      farPast: of.every(({ farPast }) => farPast),
      sets: of.length,
    },
    floors,
  };
}

/** A set that only strength could keep from the least that was asked: what that needs of the level, and whether it came. */
function floorOf(fact: SetFact): Reading["floors"][number] | undefined {
  const { set, kg, reps, asked, stoppedEarly } = fact;
  if (stoppedEarly === true || asked === undefined || asked === "most") return undefined;
  if (!(kg !== undefined && kg > 0 && reps !== undefined)) return undefined;
  return { need: onCurve(kg, asked.from) + tired(set), done: isFloorDone(fact) };
}

function isFloorDone({ reps = 0, asked }: SetFact): boolean {
  return asked !== undefined && asked !== "most" && reps >= asked.from;
}

function isOverAsked({ reps = 0, asked }: SetFact): boolean {
  return asked !== undefined && asked !== "most" && reps > asked.to;
}

function toldBy(fact: SetFact, zone: Zone): Told | undefined {
  const fresh = tired(fact.set);
  const how = howSure(fact);
  if (zone === "hold") {
    if (!(fact.holdS !== undefined && fact.holdS > 0)) return undefined;
    return { value: Math.log(fact.holdS) + fresh, how, past: false, farPast: false };
  }
  const { kg, reps, reserve = 0 } = fact;
  if (!(kg !== undefined && kg > 0 && reps !== undefined && reps >= 0)) return undefined;
  const judged = reserve <= MOST_RESERVE;
  // Who says 0 and did just what was asked stopped by choice, so that 0 is said too low as well.
  const chosen = reserve > 0 || (fact.reserve === 0 && isFloorDone(fact) && !isOverAsked(fact));
  const left = Math.min(reserve, MOST_RESERVE) + (chosen ? SAID_TOO_FEW : 0);
  const possible = reps + left + (how === "least" || !judged ? 0 : HALF);
  if (possible < 1) return undefined;
  const top = ZONE_TOP[zone] + HALF;
  const value = onCurve(kg, Math.min(possible, top)) + fresh;
  return { value, how: judged ? how : "least", past: possible > top, farPast: possible > top + FAR };
}

function howSure({ reps, holdS, reserve, asked, stoppedEarly }: SetFact): Told["how"] {
  if (reserve !== undefined && holdS === undefined) return "sure";
  if (stoppedEarly === true) return "least";
  if (asked === "most") return "sure";
  const done = holdS ?? reps;
  // In a hold nobody says a reserve: what ends under the time that was asked is what could be held.
  if (asked !== undefined && done !== undefined && done < asked.from) return holdS === undefined ? "short" : "sure";
  return "least";
}

/** The zone by what was asked; where nothing was, the middle one, so that doing more never changes it either. */
function zoneAsked({ holdS, asked }: SetFact): Zone {
  if (holdS !== undefined) return "hold";
  if (asked === undefined || asked === "most") return "middle";
  return zoneOf(asked.to + (asked.reserve ?? 0));
}

function inOrder(a: SetFact, b: SetFact): number {
  const keys = ({ day, set, kg = 0, reps = 0, holdS = 0, reserve = -1 }: SetFact) => [
    day,
    set,
    kg,
    reps,
    holdS,
    reserve,
  ];
  const [one, other] = [keys(a), keys(b)];
  const at = one.findIndex((key, index) => key !== other[index]);
  return at === -1 ? 0 : one[at]! - other[at]!;
}

import { distance } from "../exercises/index.ts";
import { offScale } from "../loads/index.ts";
import type { Catalogue, Exercise, ExerciseId, Muscle, Pattern, Person } from "../model/index.ts";
import { asLoad, kg, type Load } from "../units.ts";
import { type Capacity, onceOf } from "./capacity.ts";
import { Z80 } from "./normal.ts";

/** How two forms are alike: the same work with another tool, with one arm instead of two, or one step of a ladder apart. */
export type CarriedBy = "tool" | "arms" | "rung";

/** What may be lifted once in a form, from what is known of another: a range and never a figure of the form itself. */
export interface CarriedFrom {
  readonly from: ExerciseId;
  readonly by: CarriedBy;
  /** Ends of an 80 % interval, in the meaning of the form; with help, the first is the greater help. */
  readonly low: Load;
  readonly high: Load;
  /** Sessions of the other form behind it. */
  readonly sessions: number;
}

/**
 * How far the same person's strength per limb differs between two forms that are so alike, ln units: 80 % lie within
 * ÷ and × 1.38, 1.47 and 1.90. No ratio between tools, arms or rungs was found in print, so the middle is 1. Ours.
 */
const APART_SD: Readonly<Record<CarriedBy, number>> = { tool: 0.25, arms: 0.3, rung: 0.5 };

/** Loads that weigh the same wherever they are; the numbers of a stack belong to one machine, a band has none. */
const CARRIES: readonly string[] = ["total", "per hand", "one implement", "added to body", "assist"];

/** Movements over several joints, where the same muscles make the same lift with another tool. */
const MULTI_JOINT: readonly Pattern[] = [
  "squat",
  "hinge",
  "single leg",
  "horizontal push",
  "vertical push",
  "horizontal pull",
  "vertical pull",
];

/**
 * What somebody may lift once in a form of which too little is known, carried from the likeliest other form: another tool
 * for the same work, one arm for two, or the next rung. Each carries what one limb moves, with a wide interval of its
 * own besides that of the other form's figure.
 *
 *   ln range = ln (moved per limb) ± 1.28 × √(spread² + apart²)
 *
 * Legs are not carried between one and two, since body mass is moved too.
 *
 * @param known what is known of the other forms on the day
 * @returns undefined where no form that is alike has a figure
 * @source ours
 */
export function carriedFrom(
  exercise: Exercise,
  known: readonly { readonly exercise: Exercise; readonly capacity: Capacity }[],
  { person, catalogue }: { readonly person: Person; readonly catalogue: Catalogue },
): CarriedFrom | undefined {
  if (!carries(exercise)) return undefined;
  const found = known.flatMap((other) => {
    const by = alike(catalogue, other.exercise, exercise);
    const once = other.capacity.kind === "known" && by !== undefined ? onceOf(other.capacity) : undefined;
    if (by === undefined || once === undefined || "missing" in once) return [];
    const spread = Math.log(once.high / once.low) / 2 / Z80;
    return [{ by, once, from: other.exercise, sd: Math.hypot(spread, APART_SD[by]) }];
  });
  const [best] = found.sort((a, b) => a.sd - b.sd || (a.from.id < b.from.id ? -1 : 1));
  if (best === undefined) return undefined;
  const moved = (best.once.kg * (best.from.loadMeaning === "per hand" ? 2 : 1) * limbs(exercise)) / limbs(best.from);
  const times = Math.exp(Z80 * best.sd);
  const said = (mass: number): Load | undefined => {
    const load = offScale(exercise, person, kg(Math.round(mass * 100) / 100));
    return load === undefined ? undefined : asLoad(load, person.units);
  };
  const [low, high] = [said(moved / times), said(moved * times)];
  if (low === undefined || high === undefined) return undefined;
  return { from: best.from.id, by: best.by, low, high, sessions: best.once.sessions };
}

/** @returns how one form is like another, the closest likeness first; undefined where nothing carries */
function alike(catalogue: Catalogue, from: Exercise, to: Exercise): CarriedBy | undefined {
  if (from.id === to.id || !carries(from) || from.pattern !== to.pattern || isWithBody(from) !== isWithBody(to))
    return undefined;
  const apart = Math.abs(distance(catalogue, from.id, to.id) ?? 0) === 1;
  if (primes(from) !== primes(to)) return apart && limbs(from) === limbs(to) ? "rung" : undefined;
  const one = limbs(from) !== limbs(to);
  if (one) return isArms(from) && isArms(to) ? "arms" : undefined;
  // What hands hold ends a set before the legs do, so only presses and pulls carry between a bar and dumbbells.
  const held = from.loadMeaning === to.loadMeaning || (isArms(from) && isPair(from) && isPair(to)) || isWithBody(from);
  if (held && from.position === to.position && from.limb === to.limb) return "tool";
  return apart ? "rung" : undefined;
}

const carries = ({ loadMeaning, amounts, mode, pattern }: Exercise) =>
  CARRIES.includes(loadMeaning) && amounts === "reps" && mode === "dynamic" && MULTI_JOINT.includes(pattern);
const isWithBody = ({ loadMeaning }: Exercise) => loadMeaning === "added to body" || loadMeaning === "assist";
/** A bar, or one in each hand. */
const isPair = ({ loadMeaning }: Exercise) => loadMeaning === "total" || loadMeaning === "per hand";

function primes({ muscles }: Exercise): string {
  return (Object.keys(muscles) as Muscle[])
    .filter((muscle) => muscles[muscle] === 1)
    .sort()
    .join();
}

const isArms = ({ limb }: Exercise) => limb.endsWith("arm") || limb.endsWith("arms");
const limbs = ({ limb }: Exercise) => (limb === "one arm" || limb === "one leg" ? 1 : 2);

import type { Day } from "../day.ts";
import type { Catalogue, Exercise, Lift, Person, Place } from "../model/index.ts";
import { repsBracket, repsSpread } from "../tables/index.ts";
import { type Load, type Mass, massOf } from "../units.ts";
import { legLoad } from "./leg-load.ts";
import { easiestFirst } from "./load-set.ts";
import { loadsFor } from "./loads-for.ts";
import { onScale, ownStrength } from "./own-strength.ts";
import { isOld, repsPossible, type Strength, strengthFrom } from "./record.ts";

/** Share of an old 1RM that is surely still there. Ours, no source: the largest loss in 12 weeks that we read is 14 %. */
const KEPT = 0.7;

export interface EffortContext {
  readonly exercise: Exercise;
  readonly person: Person;
  readonly place: Place;
  readonly on: Day;
  /** To know the other exercises in the person's records. */
  readonly catalogue?: Catalogue;
}

/** How many repetitions somebody can do at least with the heaviest load that exists here, and how we know. */
export interface EffortAtHeaviest {
  /** Left out where the body alone is moved. */
  readonly heaviest?: Load;
  readonly least: number;
  readonly by: "record" | "maximum" | "squat";
  readonly lift: Lift;
  /** Whole per cent of the 1RM, rounded up; over 100 is more than can be done once. */
  readonly percent?: number;
}

/**
 * Repetitions that are possible at least with the heaviest load here (with the body alone where there is none), from
 * the person's own record at that or a heavier load, from their own 1RM in this exercise, or else from a two-legged
 * squat carried over to the legs of this exercise by shares of body mass (legLoad).
 *
 * Ours, with these limits: one leg alone is often stronger than half of two and the split-stance share counts a little
 * too much, so the true number is often larger; balance may end a set first; a squat to another depth is another squat;
 * body mass is taken as it is now. People differ widely around the table (REPS_SPREAD). Of a record older than 12 weeks
 * 70 % of the 1RM counts, and its repetitions do not.
 *
 * @returns undefined when nothing known tells: no record, no body mass, no published share, another machine
 * @source nscaEssentialsTable, helme2020, deLeva1996, shimano2006
 * @example
 * effortAtHeaviest({ exercise: gobletSquat, person, place: home, on }) //=> { heaviest: 10 kg, least: 30, by: "record", … }
 */
export function effortAtHeaviest(context: EffortContext): EffortAtHeaviest | undefined {
  const { exercise, person, place } = context;
  if (exercise.amounts !== "reps") return undefined;
  const set = loadsFor(exercise, place);
  const heaviest = easiestFirst(set).at(-1);
  const loaded = exercise.loadMeaning !== "body only" && exercise.loadMeaning !== "height";
  if (loaded && heaviest === undefined) return undefined;
  if (set.kind === "stack" && place.id !== person.place) return undefined;
  const own = [byRecord(context, heaviest), byMaximum(context, heaviest)].filter((each) => each !== undefined);
  const best = own.sort((a, b) => b.least - a.least)[0] ?? bySquat(context, heaviest);
  return best === undefined || heaviest === undefined ? best : { heaviest, ...best };
}

function byRecord({ exercise, person, on }: EffortContext, heaviest: Load | undefined): EffortAtHeaviest | undefined {
  const help = exercise.loadMeaning === "assist" ? -1 : 1;
  const asHard = person.lifts.flatMap((lift): EffortAtHeaviest[] => {
    const reps = repsPossible(lift);
    if (lift.exercise !== exercise.id || reps === undefined || isOld(lift, on)) return [];
    if (heaviest !== undefined && !(lift.load && help * (massOf(lift.load) - massOf(heaviest)) >= 0)) return [];
    return [{ least: reps, by: "record", lift }];
  });
  return asHard.sort((a, b) => b.least - a.least)[0];
}

function byMaximum({ exercise, person, on }: EffortContext, heaviest: Load | undefined): EffortAtHeaviest | undefined {
  return at(onScale(exercise, person, heaviest), ownStrength(exercise, person, on), "maximum");
}

function bySquat(context: EffortContext, heaviest: Load | undefined): EffortAtHeaviest | undefined {
  const { exercise, person, catalogue, on } = context;
  if (person.mass === undefined || catalogue === undefined) return undefined;
  const bodyMass = massOf(person.mass.load);
  const legOf = (lift: Lift) => {
    const squat = catalogue.exercises.get(lift.exercise);
    const known = squat?.pattern === "squat" && squat.limb === "two legs";
    return known ? legLoad(squat, lift.load, bodyMass) : undefined;
  };
  const found = at(legLoad(exercise, heaviest, bodyMass), strengthFrom(person.lifts, legOf, on), "squat");
  if (found?.percent === undefined) return found;
  const measured = repsSpread("back squat", 60).map(({ mean, sd }) => Math.floor(mean - sd));
  return found.percent <= 60 ? { ...found, least: Math.max(found.least, ...measured) } : found;
}

function at(
  moved: Mass | undefined,
  strength: Strength | undefined,
  by: "maximum" | "squat",
): EffortAtHeaviest | undefined {
  if (moved === undefined || strength === undefined || !(moved > 0)) return undefined;
  const percent = Math.ceil((100 * moved) / (strength.old ? KEPT * strength.low : strength.low) - 1e-9);
  return { least: percent > 100 ? 0 : repsBracket(percent).least, by, lift: strength.lift, percent };
}

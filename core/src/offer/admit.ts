import type { Day } from "../day.ts";
import type { LoadCap } from "../loads/index.ts";
import type { Catalogue, Dose, Exercise, Person, Place, Reason, StressTag } from "../model/index.ts";
import { setAsideByFilters, underCeilings } from "./cautioned.ts";
import { type Clearance, clearanceOf } from "./clearance.ts";
import { cutDose } from "./cut-dose.ts";
import type { Effort } from "./dose-words.ts";
import { outsideRange, wrongAmounts } from "./hold-range.ts";
import { missingKit } from "./kit.ts";
import { underLoadLimits } from "./load-cap.ts";
import { reason } from "./reasons.ts";
import { earnedBy } from "./rung.ts";
import { underOrders } from "./written-orders.ts";

export interface AdmitContext {
  readonly person: Person;
  readonly place: Place;
  readonly catalogue: Catalogue;
  readonly on: Day;
  /** The last of the days that the form is to be done on; `on` when left out. Health binds on all of them. */
  readonly to?: Day;
  /** Of this person on these days, where it is already known. */
  readonly clearance?: Clearance;
  /** The coach chose the form by hand: what only keeps it from being offered becomes a note. No limit does. */
  readonly byHand?: boolean;
}

/**
 * Whether a person may do a form at a dose, and how.
 *
 * `dose` and `effort` have the limits cut in. `watch` are tags that stand on their ceiling: said to the coach and asked
 * about afterwards. `cap` bounds the load: held in all, held in one hand, and as whole per cent of today's best. `side`
 * is the only side that may be trained.
 */
export type Admission =
  | {
      readonly ok: true;
      readonly dose: Dose;
      readonly effort?: Effort;
      readonly watch: readonly StressTag[];
      readonly cap: LoadCap;
      readonly side?: "left" | "right";
      readonly notes: readonly Reason[];
    }
  | { readonly ok: false; readonly why: readonly Reason[] };

/** @param effort how hard conditioning is meant; left out for everything else */
export type Admit = (exercise: Exercise, dose: Dose, effort?: Effort) => Admission;

/**
 * The door between a person and the catalogue: answers, for a form at an asked dose, whether this person may do it in
 * this place on this day. Every reason against it is given, not only the first.
 *
 * @example
 * admitter({ person, place, catalogue, on })(gobletSquat, dose) //=> { ok: true, dose, watch: ["pressor"], … }
 */
export function admitter(context: AdmitContext): Admit {
  const { person, place, catalogue, on, byHand = false } = context;
  const clearance = context.clearance ?? clearanceOf(person, on, context.to);
  const served = (exercise: Exercise) => missingKit(exercise, place, on, clearance.wheelchair).length === 0;
  const earned = earnedBy(person, catalogue, served);
  const known = new Map<Exercise, AtAnyDose>();
  const atAnyDose = (exercise: Exercise): AtAnyDose => {
    const before = known.get(exercise);
    if (before !== undefined) return before;
    const rung = earned(exercise);
    const notOffered = [...(exercise.coachOnly ? [reason("offer/coach-only")] : []), ...(rung.ok ? [] : rung.why)];
    const whole = {
      why: [
        ...missingKit(exercise, place, on, clearance.wheelchair),
        ...(byHand ? [] : notOffered),
        ...setAsideByFilters(exercise, clearance),
      ],
      notes: [...notOffered, ...(rung.ok ? rung.notes : [])],
    };
    known.set(exercise, whole);
    return whole;
  };
  return (exercise, asked, effort) => {
    const whole = atAnyDose(exercise);
    // Most forms fail here. What else speaks against them is only worked out when somebody asks.
    if (whole.why.length > 0) return refused(() => atThisDose(context, clearance, whole, exercise, asked, effort).why);
    return atThisDose(context, clearance, whole, exercise, asked, effort).answer;
  };
}

/** What is said of a form whatever its dose: why it is refused, and what is noted where it is not. */
interface AtAnyDose {
  readonly why: readonly Reason[];
  readonly notes: readonly Reason[];
}

function atThisDose(
  { person, place }: AdmitContext,
  clearance: Clearance,
  whole: AtAnyDose,
  exercise: Exercise,
  asked: Dose,
  effort: Effort | undefined,
): { readonly why: readonly Reason[]; readonly answer: Admission } {
  const bestHoldS = bestHold(person, exercise);
  const cut = cutDose(exercise, asked, clearance, {
    ...(bestHoldS === undefined ? {} : { bestHoldS }),
    ...(effort === undefined ? {} : { effort }),
  });
  const ceilings = underCeilings(exercise, cut, clearance.ceilings);
  const orders = underOrders(exercise, clearance.limits);
  const load = underLoadLimits(exercise, cut.dose, place, clearance.limits.loads, orders.side);
  const why = [
    ...whole.why,
    ...ceilings.why,
    ...orders.why,
    ...load.why,
    ...wrongAmounts(exercise, cut.dose),
    ...outsideRange(exercise, cut.dose),
  ];
  if (why.length > 0) return { why, answer: refused(() => why) };
  const unweighed = exercise.bodyShare !== undefined && person.mass === undefined;
  const answer: Admission = {
    ok: true,
    dose: cut.dose,
    ...(cut.effort === undefined ? {} : { effort: cut.effort }),
    watch: ceilings.watch,
    cap: { ...load.cap, ...(clearance.percent === undefined ? {} : { percent: clearance.percent.value }) },
    ...(orders.side === undefined ? {} : { side: orders.side }),
    notes: [...cut.notes, ...orders.notes, ...whole.notes, ...(unweighed ? [reason("offer/body-mass-unknown")] : [])],
  };
  return { why, answer };
}

function refused(why: () => readonly Reason[]): Admission {
  return {
    ok: false,
    get why() {
      return why();
    },
  };
}

/** Seconds of the latest recorded hold of a form, undefined when there is none. */
function bestHold(person: Person, exercise: Exercise): number | undefined {
  const held = person.lifts.filter((lift) => lift.exercise === exercise.id && lift.holdS !== undefined);
  const latest = Math.max(...held.map((lift) => lift.on));
  const best = Math.max(...held.filter((lift) => lift.on === latest).map((lift) => lift.holdS!));
  return best > 0 ? best : undefined;
}

import type { Day } from "../day.ts";
import type { Catalogue, Dose, Exercise, Person, Place, Reason } from "../model/index.ts";
import type { Load, Mass } from "../units.ts";
import { askedOf } from "./asked.ts";
import { effortAtHeaviest } from "./effort-at-heaviest.ts";
import { find } from "./find.ts";
import { fromRecords } from "./from-records.ts";
import type { LoadSet } from "./load-set.ts";
import { loadsFor } from "./loads-for.ts";
import { offScale, ownStrength } from "./own-strength.ts";
import { plain, reason } from "./reasons.ts";
import { plainRecord } from "./record.ts";
import { type LoadCap, underCap } from "./under-cap.ts";
import { writtenLoad } from "./written-load.ts";

/** Repetitions over those asked, with those in reserve, from which a load counts as too light. Ours, no source. */
const TOO_MANY = 5;

/**
 * The load to begin with.
 *
 * load                one that exists here, with its evidence
 * find                nothing tells: begin at `from` and let the repetitions decide
 * body                no load belongs to this exercise
 * too light           even the heaviest here cannot make the asked repetitions hard
 * too heavy           even the lightest here is more than was aimed at: another tool is needed, not another number
 * none under the cap  limits leave no load, or nobody knows the true load of the machine
 */
export type StartingLoad =
  | { readonly kind: "load"; readonly load: Load; readonly evidence: Reason }
  | { readonly kind: "find"; readonly from?: Load; readonly because: Reason }
  | { readonly kind: "body" }
  | { readonly kind: "too light"; readonly heaviest: Load; readonly because: Reason }
  | { readonly kind: "too heavy"; readonly lightest: Load; readonly because: Reason }
  | { readonly kind: "none under the cap"; readonly because: Reason };

export interface StartingLoadContext {
  readonly exercise: Exercise;
  readonly dose: Dose;
  readonly person: Person;
  readonly place: Place;
  /** Today: records of long ago count less. */
  readonly on: Day;
  /** To know the other exercises in the person's records. */
  readonly catalogue?: Catalogue;
  readonly cap?: LoadCap;
}

/**
 * The load of a slot to begin with, one for all its sets.
 *
 * A load that the coach wrote wins where it exists here; else the easier neighbour is taken and both are said. Otherwise
 * the person's latest record of this exercise (10 repetitions at most, not over 12 weeks old) gives a 1RM, of which the
 * low end is used; the book's table, or the coach's own per cent, gives the share at which the most repetitions asked,
 * with those in reserve, are possible; and the result is rounded down to what exists. A cap is never passed, and work
 * that a cap makes light is not called too light.
 *
 * @returns see StartingLoad; reasons are data, their codes in LOAD_CODES
 * @source nscaEssentialsTable, oconner1989, brzycki1993, ours
 * @example
 * startingLoad({ exercise: gobletSquat, dose, person, place, on }) //=> { kind: "load", load: 12 kg, evidence }
 */
export function startingLoad(context: StartingLoadContext): StartingLoad {
  const { exercise, dose, place, cap = {} } = context;
  if (["body only", "height", "none"].includes(exercise.loadMeaning)) return { kind: "body" };
  const listed = loadsFor(exercise, place);
  if (listed.kind === "bands") {
    const capped = underCap(exercise, listed, cap);
    return "because" in capped
      ? { kind: "none under the cap", because: capped.because }
      : { kind: "find", because: reason("loads/bands", { labels: listed.labels }) };
  }
  const written = dose.sets.find((each) => each.load !== undefined)?.load;
  const here: LoadSet = listed.kind === "none" && written ? { kind: "masses", loads: [written] } : listed;
  const most = mostByShare(context);
  const capped = underCap(exercise, here, cap, most);
  if ("because" in capped) return { kind: "none under the cap", because: capped.because };
  if (written !== undefined) {
    if (cap.percent !== undefined && most === undefined) return find(context.person, capped.set, "loads/share-unknown");
    return writtenLoad(written, listed, capped.set);
  }
  return tooLight(context) ?? fromRecords(context, capped.set);
}

/** The hardest load that the share in a cap lets through; undefined without one, or when today's 1RM is not known. */
export function mostByShare({
  exercise,
  person,
  on,
  cap,
}: Pick<StartingLoadContext, "exercise" | "person" | "on" | "cap">): Mass | undefined {
  const strength = cap?.percent === undefined ? undefined : ownStrength(exercise, person, on);
  if (cap?.percent === undefined || strength === undefined || strength.old) return undefined;
  return offScale(exercise, person, Math.floor((strength.low * cap.percent) / 100) as Mass);
}

function tooLight(context: StartingLoadContext): StartingLoad | undefined {
  const { reps } = askedOf(context.dose);
  const capped = Object.values(context.cap ?? {}).some((limit) => limit !== undefined);
  const effort = capped ? undefined : effortAtHeaviest(context);
  if (reps === undefined || effort?.heaviest === undefined || !(effort.least >= reps + TOO_MANY)) return undefined;
  const because = reason(`loads/too-light-by-${effort.by}`, {
    heaviest: plain(effort.heaviest),
    record: plainRecord(effort.lift),
    least: effort.least,
    asked: reps,
    ...(effort.percent === undefined ? {} : { percent: effort.percent }),
  });
  return { kind: "too light", heaviest: effort.heaviest, because };
}

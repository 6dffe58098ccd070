import type { Lift } from "../model/index.ts";
import { REPS_AT_PERCENT_BOOK } from "../tables/index.ts";
import { asLoad, type Load, type Mass, massOf } from "../units.ts";
import { askedOf, leastAsked } from "./asked.ts";
import { find } from "./find.ts";
import { easiestFirst, type LoadSet } from "./load-set.ts";
import { nearest } from "./nearest.ts";
import { offScale, ownStrength, recordsOf } from "./own-strength.ts";
import { plain, reason } from "./reasons.ts";
import { isOld, plainRecord, repsPossible, type Strength } from "./record.ts";
import type { StartingLoad, StartingLoadContext } from "./starting-load.ts";

/** Share of a doubtful figure to begin at: an old record, or repetitions beyond the table. Ours, no source. */
const DOUBTFUL = 0.5;
/** A record of as many repetitions as are asked, with those in reserve, or so many more, sets the load. Ours, no source. */
const NEARLY = 4;

/**
 * The starting load by a person's own records: a load where they give a 1RM of today, else one to be found.
 *
 * @param set what exists here and limits leave
 * @source nscaEssentialsTable, ours
 */
export function fromRecords(context: StartingLoadContext, set: LoadSet): StartingLoad {
  const { exercise, dose, person, place, on, cap } = context;
  const [latest] = recordsOf(exercise, person);
  if (set.kind === "none") return find(person, set, "loads/not-listed");
  if (latest === undefined) return find(person, set, "loads/nothing-known");
  if (set.kind === "stack" && place.id !== person.place) return find(person, set, "loads/other-machine");
  if (offScale(exercise, person, 0 as Mass) === undefined) return find(person, set, "loads/body-mass-unknown");
  const strength = ownStrength(exercise, person, on);
  if (strength === undefined) return withoutFigure(context, set, latest);
  const asked = askedOf(dose);
  const percent = Math.min(asked.percent ?? 100, cap?.percent ?? 100);
  const aim = offScale(exercise, person, Math.floor((strength.low * percent) / 100) as Mass)!;
  const halfway = offScale(exercise, person, Math.floor((strength.low * percent * DOUBTFUL) / 100) as Mass)!;
  const from = nearest(halfway, set, "down").chosen ?? easiestFirst(set)[0];
  if (strength.old) return find(person, set, "loads/record-old", aged(strength.lift, context), from);
  if (asked.percent !== undefined) return rounded(context, set, strength, percent, aim);
  if (asked.reps === undefined) return find(person, set, "loads/not-in-reps", {}, from);
  return find(person, set, "loads/reps-beyond-table", { reps: asked.reps }, from);
}

function rounded(
  { exercise, person }: StartingLoadContext,
  set: LoadSet,
  strength: Strength,
  percent: number,
  aim: Mass,
): StartingLoad {
  const unit = strength.lift.load?.unit ?? person.units;
  const { chosen, up } = nearest(aim, set, "down");
  if (chosen === undefined) {
    const lightest = easiestFirst(set)[0]!;
    const data = { lightest: plain(lightest), aim: plain(asLoad(aim, unit)) };
    return { kind: "too heavy", lightest, because: reason("loads/lightest-too-heavy", data) };
  }
  const moved = exercise.loadMeaning === "assist" || exercise.loadMeaning === "added to body";
  const said = (mass: Mass) => plain(asLoad(moved ? mass : offScale(exercise, person, mass)!, unit));
  const evidence = reason("loads/from-record", {
    record: plainRecord(strength.lift),
    low: said(strength.low),
    high: said(strength.high),
    moved,
    percent,
    up: plain(up === chosen ? undefined : up),
  });
  return { kind: "load", load: chosen, evidence };
}

/** A record that no equation takes still shows a load that was lifted, if it was lifted as often as is asked now. */
function withoutFigure(context: StartingLoadContext, set: LoadSet, latest: Lift): StartingLoad {
  const { person, dose, on, cap } = context;
  if (isOld(latest, on)) return find(person, set, "loads/record-old", aged(latest, context));
  const { reps } = askedOf(dose);
  const leastReps = leastAsked(dose);
  const doneAsOften = leastReps === undefined || (repsPossible(latest) ?? 0) >= leastReps;
  const under = cap?.percent === undefined || shareAtMost(repsPossible(latest) ?? 0) <= cap.percent;
  const from = doneAsOften && under ? lastUsed(latest.load, set) : undefined;
  if (from !== undefined && reps !== undefined && (repsPossible(latest) ?? 0) <= reps + NEARLY) {
    return {
      kind: "load",
      load: from,
      evidence: reason("loads/as-on-record", { record: plainRecord(latest), asked: reps }),
    };
  }
  if (reps === undefined) return find(person, set, "loads/not-in-reps", {}, from);
  return find(person, set, "loads/record-over-ten-reps", { record: plainRecord(latest) }, from);
}

/** The largest share of the 1RM at which so many repetitions are possible, by the book's table; 100 where it says nothing. */
export function shareAtMost(reps: number): number {
  const rows = REPS_AT_PERCENT_BOOK.rows.filter((row) => row.reps <= reps);
  return Math.min(100, ...rows.map((row) => row.percent));
}

function lastUsed(load: Load | undefined, set: LoadSet): Load | undefined {
  return load === undefined ? undefined : nearest(massOf(load), set, "down").chosen;
}

function aged(lift: Lift, { on }: StartingLoadContext) {
  return { record: plainRecord(lift), weeks: Math.floor((on - lift.on) / 7) };
}

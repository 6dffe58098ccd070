import { type Dose, type Lane, laneOf, type Pattern, printDose, type SetDose, type Span } from "../model/index.ts";
import { type LoadBand, loadBandsFor } from "../tables/index.ts";
import type { Check, Cure, Facts, Found } from "./run/check.ts";
import type { Look } from "./run/look.ts";
import { aboutDose, type DosePlace, pathOfDose } from "./run/walk.ts";

type Data = Facts & { readonly goal: string; readonly dose: string };

/** Repetitions near the limit that build muscle. Source: schoenfeld2017load; the lower end is practice. */
const FOR_SIZE: Span = { from: 5, to: 30 };
/** Patterns that are not counted in sets near the limit. */
const NOT_FOR_SIZE: readonly Pattern[] = ["jump", "throw", "power lift", "mobility", "balance", "locomotion", "carry"];
/** Lanes whose heaviest work a goal of strength or endurance is about. Ours, no source. */
const MAIN_LANES: readonly Lane[] = ["squat", "hinge", "push", "pull"];

function repsOf(set: SetDose): Span | undefined {
  return set.amount.kind === "reps" ? set.amount.span : undefined;
}

function isIn(set: SetDose, { reps, percent }: LoadBand): boolean {
  const asked = repsOf(set);
  const loaded = set.percent === undefined || (set.percent >= percent.from && set.percent <= percent.to);
  return asked === undefined || (loaded && asked.to >= reps.from && asked.from <= reps.to);
}

function into(value: number, { from, to }: Span): number {
  return Math.min(to, Math.max(from, value));
}

function withReps(set: SetDose, band: Span): SetDose {
  const asked = repsOf(set);
  if (asked === undefined) return set;
  return { ...set, amount: { kind: "reps", span: { from: into(asked.from, band), to: into(asked.to, band) } } };
}

function cureOf(place: DosePlace, change: (set: SetDose) => SetDose): Cure {
  const after: Dose = { ...place.dose, sets: place.dose.sets.map(change) };
  return {
    id: "into-table",
    group: "into-table",
    data: { from: printDose(place.dose), to: printDose(after) },
    changes: [{ op: "set", at: pathOfDose(place), value: after }],
  };
}

/** For size only the repetitions are judged, dose by dose: heavy and light loads build as much near the limit. */
function outsideForSize({ doses, catalogue }: Look): readonly Found<Data>[] {
  return doses.flatMap((place): readonly Found<Data>[] => {
    const exercise = catalogue.exercises.get(place.exercise);
    if (exercise === undefined || NOT_FOR_SIZE.includes(exercise.pattern)) return [];
    const far = place.dose.sets.some((set) => {
      const asked = repsOf(set);
      return asked !== undefined && !(asked.to >= FOR_SIZE.from && asked.from <= FOR_SIZE.to);
    });
    if (!far) return [];
    const { id, name } = exercise;
    const data = { ...aboutDose(place), exercise: id, name, goal: "size", dose: printDose(place.dose) };
    const cures = () => [cureOf(place, (set) => withReps(set, FOR_SIZE))];
    return [{ at: pathOfDose(place), data: { ...data, reps: { from: FOR_SIZE.from, to: FOR_SIZE.to } }, cures }];
  });
}

/** The main lifts of a lane in a phase, with every dose of theirs. */
function liftsOf({ doses, catalogue }: Look, phaseAt: number, lane: Lane): readonly DosePlace[] {
  return doses.filter((place) => {
    const exercise = catalogue.exercises.get(place.exercise);
    const loaded = exercise !== undefined && !["body only", "height", "none", "band"].includes(exercise.loadMeaning);
    return loaded && place.of.phaseAt === phaseAt && laneOf(exercise.pattern) === lane;
  });
}

/** For strength and endurance at least one lift of a main lane should reach the table in some week of a phase. */
function outsideByLane(look: Look, bands: readonly LoadBand[]): readonly Found<Data>[] {
  const { programme, person, catalogue } = look;
  return programme.phases.flatMap((phase, phaseAt) =>
    MAIN_LANES.flatMap((lane): readonly Found<Data>[] => {
      const lifts = liftsOf(look, phaseAt, lane);
      const [first] = lifts;
      if (
        first === undefined ||
        lifts.some(({ dose }) => dose.sets.some((set) => bands.some((band) => isIn(set, band))))
      )
        return [];
      const status = person?.status ?? programme.status;
      const { exercise, dose } = first;
      const name = catalogue.exercises.get(exercise)?.name ?? exercise;
      return [
        {
          at: pathOfDose(first),
          severity: "note",
          data: {
            phase: phase.key,
            title: phase.title,
            lane,
            slotName: name,
            goal: programme.goal,
            status,
            dose: printDose(dose),
            bands: bands.map(({ percent, reps }) => ({
              percent: { from: percent.from, to: percent.to },
              reps: { from: reps.from, to: reps.to },
            })),
          },
          cures: () => bands.map((band) => cureOf(first, (set) => intoBand(set, band))),
        },
      ];
    }),
  );
}

function intoBand(set: SetDose, band: LoadBand): SetDose {
  const asked = withReps(set, band.reps);
  return asked.percent === undefined ? asked : { ...asked, percent: into(asked.percent, band.percent) };
}

/**
 * A dose that serves another goal than the programme's, by the tables of loads and repetitions for the goal and the
 * training status. For size 5–30 repetitions near the limit are fine at any load; a goal of strength or endurance is
 * judged lane by lane, since lighter work beside a heavy lift is no fault, and only noted, since the tables disagree.
 * No table was read for general and for power.
 *
 * The remedy moves repetitions and share into the table.
 */
export const outsideTable: Check<"dose/outside-table", Data> = {
  id: "dose/outside-table",
  severity: "warn",
  sources: ["schoenfeld2017load", "haffTriplett2016", "acsm2009", "ours"],
  run(look) {
    const { goal, status } = look.programme;
    if (goal === "size") return outsideForSize(look);
    if (goal !== "strength" && goal !== "endurance") return [];
    return outsideByLane(look, loadBandsFor(goal, look.person?.status ?? status));
  },
};

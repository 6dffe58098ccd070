import { type LaneWork, lanesTrained } from "../measures/index.ts";
import { type Exercise, LANES, type Lane, laneOf, type Severity, type Status } from "../model/index.ts";
import { canBeDoneAt, newSlotCures } from "./cures/new-slot.ts";
import type { Check, CheckInput, Facts, Found } from "./run/check.ts";
import { phasePath } from "./run/walk.ts";

type Data = Facts & { readonly phase: string; readonly title: string; readonly lane: string; readonly status: string };

/** At most so many forms are tried as a remedy. */
const FORMS_TRIED = 2;

/**
 * How much it matters that a lane is empty. A squat may be missing while single-leg work bends the same joints; trunk
 * work is asked of beginners; single-leg work, carries and conditioning are worth a word.
 */
function severityOf(lane: Lane, trained: Readonly<Record<Lane, LaneWork>>, status: Status): Severity {
  switch (lane) {
    case "squat":
      return trained["single leg"].sets > 0 ? "note" : "warn";
    case "hinge":
    case "push":
    case "pull":
      return "warn";
    case "trunk":
      return status === "novice" ? "warn" : "note";
    case "single leg":
    case "carry or conditioning":
      return "note";
  }
}

/** The forms on which somebody who was never assessed starts in a lane, those that can be done here. */
function startForms({ catalogue, place }: CheckInput, lane: Lane): readonly Exercise[] {
  const starts = catalogue.ladders.flatMap((ladder) => catalogue.exercises.get(ladder.start) ?? []);
  const suits = (exercise: Exercise) =>
    laneOf(exercise.pattern) === lane && !exercise.coachOnly && canBeDoneAt(exercise, place);
  return starts.filter(suits).slice(0, FORMS_TRIED);
}

/**
 * A lane that no session of a phase trains: a beginner needs a squat, a hinge, a push, a pull and trunk work.
 *
 * The remedy puts the first form of that lane's ladder into the session with most time to spare.
 */
export const patternNeverTrained: Check<"week/pattern-never-trained", Data> = {
  id: "week/pattern-never-trained",
  severity: "warn",
  sources: ["practice"],
  run(look) {
    const { programme, catalogue } = look;
    return programme.phases.flatMap((phase, index): Found<Data>[] => {
      const trained = lanesTrained(look.weeks[index]![0]!.sessions, catalogue);
      return LANES.filter((lane) => !(trained[lane].sets > 0)).map((lane) => ({
        at: phasePath(index),
        severity: severityOf(lane, trained, programme.status),
        data: { phase: phase.key, title: phase.title, lane, status: programme.status },
        cures: () => newSlotCures(look, index, startForms(look, lane)),
      }));
    });
  },
};

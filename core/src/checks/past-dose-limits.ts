import { type Dose, type Exercise, printDose } from "../model/index.ts";
import type { Check, Facts, Found } from "./run/check.ts";
import type { Health } from "./run/look.ts";
import { type DosePlace, phasePath } from "./run/walk.ts";

type Data = Facts & { readonly phase: string; readonly title: string };

/** A dose that is cut by its share, its seconds of a hold, or its repetitions left where the coach wrote some. */
function isPast(exercise: Exercise, dose: Dose, { cut }: Health): boolean {
  return cut(exercise, dose).notes.some(({ code, data }) => {
    const raised = code === "offer/reserve-raised" && data["asked"] !== null;
    return raised || code === "offer/percent-cut" || code === "offer/hold-cut";
  });
}

/**
 * Doses past what a person's stated conditions allow: share of the 1RM, repetitions left, seconds of a hold. The plan
 * cuts them, so it is a note, one for each phase. Judged only where a person and a day are given.
 */
export const pastDoseLimits: Check<"person/past-dose-limits", Data> = {
  id: "person/past-dose-limits",
  severity: "note",
  sources: ["ours"],
  run({ doses, catalogue, health, programme }) {
    if (health === undefined) return [];
    const { percent, reserve, holdS } = health.clearance;
    if (percent === undefined && reserve === undefined && holdS === undefined) return [];
    const past = (place: DosePlace) => {
      const exercise = catalogue.exercises.get(place.exercise);
      return exercise !== undefined && isPast(exercise, place.dose, health) ? [{ place, name: exercise.name }] : [];
    };
    return programme.phases.flatMap((phase, phaseAt): readonly Found<Data>[] => {
      const found = doses.filter(({ of }) => of.phaseAt === phaseAt).flatMap(past);
      if (found.length === 0) return [];
      const limits = {
        ...(percent === undefined ? {} : { percent: percent.value }),
        ...(reserve === undefined ? {} : { reserve: reserve.value }),
        ...(holdS === undefined ? {} : { holdS: holdS.value }),
      };
      const named = found.map(({ place, name }) => ({ name, dose: printDose(place.dose) }));
      const distinct = [...new Map(named.map((each) => [JSON.stringify(each), each])).values()];
      return [{ at: phasePath(phaseAt), data: { phase: phase.key, title: phase.title, doses: distinct, ...limits } }];
    });
  },
};

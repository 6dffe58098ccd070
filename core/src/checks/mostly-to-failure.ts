import { askedReserve, isDirectSet } from "../measures/index.ts";
import type { SetDose } from "../model/index.ts";
import type { Change } from "./run/change.ts";
import type { Check, Cure, Facts, Found } from "./run/check.ts";
import type { Look } from "./run/look.ts";
import { type DosePlace, pathOfDose, phasePath } from "./run/walk.ts";

type Data = Facts & { readonly phase: string; readonly title: string; readonly failing: number; readonly sets: number };

/** Repetitions left by the remedy. Practice, no source. */
const LEFT = 2;

function toFailure(set: SetDose): boolean {
  return askedReserve(set) === 0 || (set.amount.kind === "most" && set.reserve === undefined);
}

/** Sets that are counted in repetitions and near the limit. */
function isJudged(look: Look, { exercise }: DosePlace, set: SetDose): boolean {
  const known = look.catalogue.exercises.get(exercise);
  return known !== undefined && set.amount.kind !== "hold" && isDirectSet(known, set);
}

/** Two left in every set that says none; as many as possible is what it is. */
function leaveSome(places: readonly DosePlace[]): readonly Cure[] {
  const changes = places.flatMap((place): readonly Change[] => {
    const sets = place.dose.sets.map((set): SetDose => {
      return askedReserve(set) === 0 ? { ...set, reserve: { from: LEFT, to: LEFT } } : set;
    });
    const same = sets.every((set, index) => set === place.dose.sets[index]);
    return same ? [] : [{ op: "set", at: pathOfDose(place), value: { ...place.dose, sets } }];
  });
  return changes.length === 0
    ? []
    : [{ id: "more-in-reserve", data: { reserve: LEFT, slots: changes.length }, changes }];
}

/**
 * More than half of a phase's sets end when nothing is left. No gain from that was found, and it delays recovery by up to
 * two days; it warns for novices and is a note for others.
 *
 * The remedy leaves two repetitions.
 */
export const mostlyToFailure: Check<"phase/mostly-to-failure", Data> = {
  id: "phase/mostly-to-failure",
  severity: "warn",
  sources: ["acsm2026", "moranNavarro2017", "ours"],
  run(look) {
    const status = look.person?.status ?? look.programme.status;
    return look.programme.phases.flatMap((phase, phaseAt): readonly Found<Data>[] => {
      const places = look.doses.filter(({ of }) => of.phaseAt === phaseAt);
      const judged = places.flatMap((place) => place.dose.sets.filter((set) => isJudged(look, place, set)));
      const failing = judged.filter(toFailure).length;
      if (!(failing > judged.length / 2)) return [];
      return [
        {
          at: phasePath(phaseAt),
          ...(status === "novice" ? {} : { severity: "note" }),
          data: { phase: phase.key, title: phase.title, failing, sets: judged.length },
          cures: () => leaveSome(places),
        },
      ];
    });
  },
};

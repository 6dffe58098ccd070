import { ageOn } from "../day.ts";
import type { Check, Facts, Found } from "./run/check.ts";
import type { Look } from "./run/look.ts";
import { phasePath } from "./run/walk.ts";

type Data = Facts & { readonly phase: string; readonly title: string };

/** From this age on speed is advised beside strength. Source: acsm2009, older adults. */
const OLDER = 65;

/** Seconds of lifting that are as fast as one can; "0" in a tempo. */
const LIFTING = 2;

/** Throws, jumps and swings, or a tempo that lifts as fast as it goes. */
function isFast(look: Look, phaseAt: number): boolean {
  return look.doses.some(({ of, exercise, dose }) => {
    if (of.phaseAt !== phaseAt) return false;
    return look.catalogue.exercises.get(exercise)?.mode === "ballistic" || dose.tempo?.[LIFTING] === 0;
  });
}

/**
 * A phase without any fast work for a person of 65 or more: speed goes before strength does, and getting up and catching
 * oneself need it. Six to ten repetitions at 40 to 60 % of the 1RM, lifted fast, are advised. Judged only where a person
 * and a day are given.
 */
export const powerForOlder: Check<"person/power-for-older", Data> = {
  id: "person/power-for-older",
  severity: "note",
  sources: ["acsm2009"],
  run(look) {
    const { programme, person, on } = look;
    if (person === undefined || on === undefined) return [];
    const age = ageOn(person.born, on);
    if (!(age >= OLDER)) return [];
    return programme.phases.flatMap((phase, phaseAt): readonly Found<Data>[] => {
      if (phase.sessions.every(({ work }) => work.length === 0) || isFast(look, phaseAt)) return [];
      return [{ at: phasePath(phaseAt), data: { phase: phase.key, title: phase.title, age } }];
    });
  },
};

import { ageOn } from "../day.ts";
import type { Check, Facts, Found } from "./run/check.ts";
import { phasePath } from "./run/walk.ts";
import { sessionsAWeek } from "./training-days.ts";

type Data = Facts & { readonly phase: string; readonly title: string; readonly days: number };

/** Days a week on which adults are advised to train the great muscles, and from which age it weighs more. Source: who2020. */
const LEAST_DAYS = 2;
const OLDER = 65;

/**
 * Fewer than two sessions of work a week for a person, by the phase and by the days they have. It warns from 65 on.
 * Judged only where a person and a day are given.
 */
export const strengthOnce: Check<"person/strength-once", Data> = {
  id: "person/strength-once",
  severity: "note",
  sources: ["who2020"],
  run({ programme, person, on }) {
    if (person === undefined || on === undefined) return [];
    const age = ageOn(person.born, on);
    return programme.phases.flatMap((phase, phaseAt): readonly Found<Data>[] => {
      const days = Math.min(sessionsAWeek(person), phase.sessions.filter(({ work }) => work.length > 0).length);
      if (days >= LEAST_DAYS) return [];
      return [
        {
          at: phasePath(phaseAt),
          ...(age >= OLDER ? { severity: "warn" } : {}),
          data: { phase: phase.key, title: phase.title, days, least: LEAST_DAYS, age },
        },
      ];
    });
  },
};

import { ageOn } from "../day.ts";
import type { Check, Facts, Found } from "./run/check.ts";
import { phasePath } from "./run/walk.ts";
import { sessionsAWeek } from "./training-days.ts";

type Data = Facts & { readonly phase: string; readonly title: string; readonly days: number };

/** Years of age from which the rules of adults hold. */
const ADULT = 18;
/** Days a week, none next to another, on which young people train with loads. Source: lloyd2014. */
const MOST_DAYS = 3;

/**
 * More than three sessions of work a week for a person under 18: two or three, with a day between them, are advised.
 * Judged only where a person and a day are given.
 */
export const tooOftenWhenYoung: Check<"person/too-often-when-young", Data> = {
  id: "person/too-often-when-young",
  severity: "warn",
  sources: ["lloyd2014"],
  run({ programme, person, on }) {
    if (person === undefined || on === undefined) return [];
    const age = ageOn(person.born, on);
    if (age >= ADULT) return [];
    return programme.phases.flatMap((phase, phaseAt): readonly Found<Data>[] => {
      const days = Math.min(sessionsAWeek(person), phase.sessions.filter(({ work }) => work.length > 0).length);
      if (days <= MOST_DAYS) return [];
      return [{ at: phasePath(phaseAt), data: { phase: phase.key, title: phase.title, days, most: MOST_DAYS, age } }];
    });
  },
};

import { ageOn } from "../day.ts";
import type { Exercise, Session } from "../model/index.ts";
import { slotsOf } from "../model/index.ts";
import type { Check, Facts, Found } from "./run/check.ts";
import type { Look } from "./run/look.ts";
import { phasePath } from "./run/walk.ts";
import { sessionsAWeek } from "./training-days.ts";

type Data = Facts & { readonly phase: string; readonly title: string; readonly days: number };

/** From this age on so many days a week of work that also asks for balance are advised. Source: who2020. */
const OLDER = 65;
const LEAST_DAYS = 3;

/** Work on one leg or on the move, or the challenge of staying up itself. Ours, no source. */
function asksForBalance({ pattern, stress }: Exercise): boolean {
  return pattern === "balance" || (stress.balance ?? 0) > 0;
}

function hasBalance({ catalogue }: Look, { warmup = [], work, conditioning = [] }: Session): boolean {
  const named = [
    ...[...warmup, ...conditioning].flatMap((item) => ("do" in item ? [item.do] : [])),
    ...work.flatMap(slotsOf).map(({ first }) => first),
  ];
  return named.some((id) => {
    const exercise = catalogue.exercises.get(id);
    return exercise !== undefined && asksForBalance(exercise);
  });
}

/**
 * Fewer than three days a week with work that asks for balance, for a person of 65 or more: without any it warns, with
 * one or two it is a note. Judged only where a person and a day are given.
 */
export const balanceForOlder: Check<"person/balance-for-older", Data> = {
  id: "person/balance-for-older",
  severity: "warn",
  sources: ["who2020", "ours"],
  run(look) {
    const { programme, person, on } = look;
    if (person === undefined || on === undefined) return [];
    const age = ageOn(person.born, on);
    if (!(age >= OLDER)) return [];
    return programme.phases.flatMap((phase, phaseAt): readonly Found<Data>[] => {
      const days = Math.min(
        sessionsAWeek(person),
        phase.sessions.filter((session) => hasBalance(look, session)).length,
      );
      if (days >= LEAST_DAYS) return [];
      return [
        {
          at: phasePath(phaseAt),
          ...(days === 0 ? {} : { severity: "note" }),
          data: { phase: phase.key, title: phase.title, days, least: LEAST_DAYS, age },
        },
      ];
    });
  },
};

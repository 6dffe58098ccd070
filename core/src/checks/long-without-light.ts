import { isLight } from "../measures/index.ts";
import type { Phase, Programme } from "../model/index.ts";
import type { Change } from "./run/change.ts";
import type { Check, Cure, Facts, Found } from "./run/check.ts";
import { phasePath } from "./run/walk.ts";

type Data = Facts & { readonly phase: string; readonly title: string; readonly weeks: number };

/**
 * Full weeks in a row: 246 lifters took a lighter one every 5.6 ± 2.3 weeks, so over 7.9 few go. A light week is put
 * after the fifth, so that every sixth is light. Source: rogerson2024.
 */
const MOST_FULL = 8;
const FULL_BEFORE_LIGHT = 5;

interface WeekAt {
  readonly phaseAt: number;
  /** Week of its phase, 1 = first. */
  readonly week: number;
}

function weeksOf(phase: Phase): readonly number[] {
  return Array.from({ length: phase.weeks }, (_, index) => index + 1);
}

/** Full weeks that follow one another, through all phases, in runs. */
function fullRuns({ phases }: Programme): readonly (readonly WeekAt[])[] {
  const runs: WeekAt[][] = [[]];
  for (const [phaseAt, phase] of phases.entries()) {
    for (const week of weeksOf(phase)) {
      if (isLight(phase, week)) runs.push([]);
      else runs.at(-1)!.push({ phaseAt, week });
    }
  }
  return runs;
}

/** Every sixth week of the run light; a run is never ended by a light week of its own. */
function lightWeeks(programme: Programme, run: readonly WeekAt[]): Cure {
  const every = FULL_BEFORE_LIGHT + 1;
  const chosen = run.filter((_, index) => index % every === FULL_BEFORE_LIGHT && index < run.length - 1);
  const changes = programme.phases.flatMap((phase, phaseAt): readonly Change[] => {
    const added = chosen.filter((each) => each.phaseAt === phaseAt).map(({ week }) => week);
    if (added.length === 0) return [];
    const light = [...(phase.light ?? []), ...added].sort((a, b) => a - b);
    return [{ op: "set", at: [...phasePath(phaseAt), "light"], value: light }];
  });
  const weeks = chosen.map(({ phaseAt, week }) => ({ title: programme.phases[phaseAt]!.title, week }));
  return { id: "light-weeks", data: { weeks }, changes };
}

/**
 * More than eight full weeks in a row, over all phases, without a light one. Sessions of nothing but conditioning count
 * for nothing here.
 *
 * The remedy makes every sixth week light.
 */
export const longWithoutLight: Check<"phase/long-without-light", Data> = {
  id: "phase/long-without-light",
  severity: "note",
  sources: ["rogerson2024"],
  run({ programme }) {
    if (programme.phases.every(({ sessions }) => sessions.every(({ work }) => work.length === 0))) return [];
    return fullRuns(programme).flatMap((run): readonly Found<Data>[] => {
      const first = run[0];
      if (first === undefined || run.length <= MOST_FULL) return [];
      const phase = programme.phases[first.phaseAt]!;
      return [
        {
          at: phasePath(first.phaseAt),
          data: { phase: phase.key, title: phase.title, fromWeek: first.week, weeks: run.length, most: MOST_FULL },
          cures: () => [lightWeeks(programme, run)],
        },
      ];
    });
  },
};

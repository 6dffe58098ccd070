import { MUSCLES, type Muscle } from "../model/index.ts";
import { inSets, type Quarters, quarters } from "../units.ts";
import { setsCures } from "./cures/sets-cures.ts";
import type { Check, Facts, Found } from "./run/check.ts";
import type { AskedWeek, Look } from "./run/look.ts";
import { sessionPath } from "./run/walk.ts";

type Data = Facts & { readonly phase: string; readonly session: string; readonly muscle: Muscle };

/** Most sets of a muscle that one session is called good for. Source: iusca2021. */
const MOST_SETS = 10;

/** The week in which the session asks most of the muscle, the first of equals. */
function most(weeks: readonly AskedWeek[], sessionAt: number, muscle: Muscle): { week: number; size: Quarters } {
  const sizes = weeks.map(({ week, bySession }) => ({ week, size: bySession()[sessionAt]?.[muscle] ?? quarters(0) }));
  return sizes.reduce((best, one) => (one.size > best.size ? one : best));
}

const MOST = quarters(MOST_SETS);

function judge(look: Look, phaseAt: number, sessionAt: number, muscles: readonly Muscle[]): readonly Found<Data>[] {
  const phase = look.programme.phases[phaseAt]!;
  const session = phase.sessions[sessionAt]!;
  return muscles.flatMap((muscle): readonly Found<Data>[] => {
    const { week, size } = most(look.weeks[phaseAt]!, sessionAt, muscle);
    if (size <= MOST) return [];
    const about = { phase: phase.key, session: session.key, title: session.title, muscle };
    return [
      {
        at: sessionPath(phaseAt, sessionAt),
        data: { ...about, sets: inSets(size), most: MOST_SETS, week },
        cures: () => setsCures(look, phaseAt, muscle, "over", (size - MOST) as Quarters, sessionAt),
      },
    ];
  });
}

/** Muscles of which a whole week asks so much: no session asks more than its week. */
function muchInAWeek(weeks: readonly AskedWeek[]): readonly Muscle[] {
  return MUSCLES.filter((muscle) => weeks.some(({ sets }) => (sets.quarters[muscle] ?? 0) > MOST));
}

/**
 * More than ten fractional sets of a muscle in one session: a stand calls ten the most that one session is good for.
 *
 * The remedy takes sets away in that session.
 */
export const manySetsAtOnce: Check<"session/many-sets-at-once", Data> = {
  id: "session/many-sets-at-once",
  severity: "warn",
  sources: ["iusca2021", "pelland2024"],
  run(look) {
    return look.programme.phases.flatMap((phase, phaseAt) => {
      const muscles = muchInAWeek(look.weeks[phaseAt]!);
      return phase.sessions.flatMap((_, sessionAt) => judge(look, phaseAt, sessionAt, muscles));
    });
  },
};

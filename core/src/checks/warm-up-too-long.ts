import { askedAmount } from "../measures/index.ts";
import type { Dose } from "../model/index.ts";
import type { Check, Cure, Facts, Found } from "./run/check.ts";
import type { Look } from "./run/look.ts";
import { type ItemPlace, pathOf, sessionPath } from "./run/walk.ts";

type Data = Facts & { readonly phase: string; readonly session: string; readonly minutes: number };

/** Easy minutes before the work that nobody misses afterwards, and what is enough. Common practice, no source. */
const MOST_S = 15 * 60;
const ENOUGH_S = 10 * 60;

function secondsOf({ sets }: Dose): number {
  return sets.reduce((sum, { amount }) => sum + (amount.kind === "time" ? askedAmount(amount).count : 0), 0);
}

/** The longest of the items ten minutes long, where that is shorter. */
function shorter(look: Look, items: readonly ItemPlace[]): readonly Cure[] {
  const longest = items.reduce((best, one) => (secondsOf(one.dose) > secondsOf(best.dose) ? one : best));
  const name = look.catalogue.exercises.get(longest.exercise)?.name ?? longest.exercise;
  const span = { from: ENOUGH_S, to: ENOUGH_S };
  const value: Dose = { sets: [{ amount: { kind: "time", span }, eachSide: false }] };
  if (secondsOf(longest.dose) <= ENOUGH_S) return [];
  const at = [...pathOf(longest), "dose"];
  return [{ id: "shorter-warm-up", data: { name, seconds: ENOUGH_S }, changes: [{ op: "set", at, value }] }];
}

/**
 * More than a quarter of an hour of cycling, walking or rowing before the work, when endurance is not the goal: ten easy
 * minutes warm, and what is longer is better done afterwards or on another day.
 *
 * The remedy makes the longest of it ten minutes.
 */
export const warmUpTooLong: Check<"session/warm-up-too-long", Data> = {
  id: "session/warm-up-too-long",
  severity: "note",
  sources: ["practice"],
  run(look) {
    if (look.programme.goal === "endurance") return [];
    return look.programme.phases.flatMap((phase, phaseAt) =>
      phase.sessions.flatMap((session, sessionAt): readonly Found<Data>[] => {
        const items = look.items.filter((item) => {
          const here = item.phaseAt === phaseAt && item.sessionAt === sessionAt && item.list === "warmup";
          return here && look.catalogue.exercises.get(item.exercise)?.mode === "cyclic";
        });
        const seconds = items.reduce((sum, { dose }) => sum + secondsOf(dose), 0);
        if (session.work.length === 0 || !(seconds > MOST_S)) return [];
        const about = { phase: phase.key, session: session.key, title: session.title };
        const data = { ...about, minutes: Math.round(seconds / 60), most: MOST_S / 60 };
        return [{ at: sessionPath(phaseAt, sessionAt), data, cures: () => shorter(look, items) }];
      }),
    );
  },
};

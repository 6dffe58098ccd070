import type { Exercise, WarmUp } from "../model/index.ts";
import { canBeDoneAt } from "./cures/new-slot.ts";
import type { Check, CheckInput, Cure, Facts, Found } from "./run/check.ts";
import { sessionPath } from "./run/walk.ts";

type Data = Facts & { readonly phase: string; readonly session: string; readonly title: string };

/** Minutes of something easy before the work. Practice, no source. */
const WARM_UP_S = 300;

/** Something easy to keep up that needs least and stresses least, where it can be done. */
function easiest({ catalogue, place }: CheckInput): Exercise | undefined {
  const stressOf = ({ stress }: Exercise) => Object.values(stress).reduce<number>((sum, grade) => sum + grade, 0);
  const easy = [...catalogue.exercises.values()].filter(
    (exercise) =>
      exercise.pattern === "locomotion" &&
      exercise.amounts === "time" &&
      !exercise.coachOnly &&
      !exercise.seated &&
      canBeDoneAt(exercise, place),
  );
  return easy.toSorted(
    (a, b) => a.needs.length - b.needs.length || stressOf(a) - stressOf(b) || (a.id < b.id ? -1 : 1),
  )[0];
}

/**
 * A session of work without a warm-up, neither something easy nor lighter sets before a slot.
 *
 * The remedy puts five easy minutes before the work.
 */
export const noWarmUp: Check<"session/no-warm-up", Data> = {
  id: "session/no-warm-up",
  severity: "warn",
  sources: ["fradkin2010", "practice"],
  run(look) {
    return look.programme.phases.flatMap((phase, phaseAt) =>
      phase.sessions.flatMap((session, sessionAt): readonly Found<Data>[] => {
        if (session.work.length === 0 || (session.warmup ?? []).length > 0) return [];
        const at = sessionPath(phaseAt, sessionAt);
        const cures = (): readonly Cure[] => {
          const exercise = easiest(look);
          if (exercise === undefined) return [];
          const span = { from: WARM_UP_S, to: WARM_UP_S };
          const dose = { sets: [{ amount: { kind: "time", span } as const, eachSide: false }] };
          const items: readonly WarmUp[] = [{ do: exercise.id, dose }];
          const data = { exercise: exercise.id, name: exercise.name, seconds: WARM_UP_S };
          return [{ id: "add-warm-up", data, changes: [{ op: "set", at: [...at, "warmup"], value: items }] }];
        };
        return [{ at, data: { phase: phase.key, session: session.key, title: session.title }, cures }];
      }),
    );
  },
};

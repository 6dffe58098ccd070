import { activityMinutes } from "../measures/index.ts";
import type { Check, Facts, Found } from "./run/check.ts";
import { phasePath } from "./run/walk.ts";

type Data = Facts & {
  readonly phase: string;
  readonly title: string;
  readonly minutes: number;
  readonly before: number;
};

/** More than so many times, and so many minutes more, than the phase before is a jump. Ours, no source. */
const MOST_TIMES = 1.5;
const LEAST_MORE = 30;

/**
 * A phase that asks for over half as many minutes of conditioning a week again as the phase before, and at least thirty
 * minutes more; hard minutes count twice. What somebody did before the programme is not in it.
 */
export const jumpInConditioning: Check<"phase/jump-in-conditioning", Data> = {
  id: "phase/jump-in-conditioning",
  severity: "note",
  sources: ["ours"],
  run({ programme }) {
    const minutes = programme.phases.map(({ sessions }) => activityMinutes(sessions).equivalent);
    return programme.phases.flatMap((phase, phaseAt): readonly Found<Data>[] => {
      const [before, now] = [minutes[phaseAt - 1], minutes[phaseAt]!];
      if (before === undefined || now <= MOST_TIMES * before || now - before < LEAST_MORE) return [];
      return [{ at: phasePath(phaseAt), data: { phase: phase.key, title: phase.title, minutes: now, before } }];
    });
  },
};

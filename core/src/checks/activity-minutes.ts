import { activityMinutes as minutesOf } from "../measures/index.ts";
import type { Check, Facts, Found } from "./run/check.ts";
import { phasePath } from "./run/walk.ts";

type Data = Facts & { readonly phase: string; readonly title: string; readonly side: "under" | "cannot judge" };

/** Minutes of moderate activity a week that adults are advised at least; hard ones count twice. Source: who2020. */
const LEAST = 150;
const MOST_NAMED = 300;

/**
 * A phase that gives conditioning sessions of their own and stays under the advised 150 minutes a week, hard minutes
 * counted twice. Where conditioning only rounds off other sessions, what people do besides is not in the programme and
 * nothing is said. Conditioning that is not asked in time cannot be judged, and a note says so.
 */
export const activityMinutes: Check<"week/activity-minutes", Data> = {
  id: "week/activity-minutes",
  severity: "note",
  sources: ["who2020", "ours"],
  run(look) {
    return look.programme.phases.flatMap((phase, phaseAt): readonly Found<Data>[] => {
      if (!phase.sessions.some(({ work, conditioning = [] }) => work.length === 0 && conditioning.length > 0))
        return [];
      const { moderate, vigorous, equivalent, unknown } = minutesOf(phase.sessions);
      if (equivalent >= LEAST) return [];
      const about = { phase: phase.key, title: phase.title, least: LEAST, to: MOST_NAMED };
      const side = unknown > 0 ? "cannot judge" : "under";
      return [{ at: phasePath(phaseAt), data: { ...about, side, moderate, vigorous, equivalent } }];
    });
  },
};

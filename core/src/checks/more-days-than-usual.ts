import { TRAINING_FREQUENCY } from "../tables/index.ts";
import type { Check, Facts, Found } from "./run/check.ts";
import { phasePath } from "./run/walk.ts";
import { sessionsAWeek } from "./training-days.ts";

type Data = Facts & { readonly phase: string; readonly title: string; readonly days: number };

/**
 * More sessions of work a week than either table gives for the training status. Conditioning alone is no session of
 * work. The tables disagree on advanced people, and the greater number is taken.
 */
export const moreDaysThanUsual: Check<"week/more-days-than-usual", Data> = {
  id: "week/more-days-than-usual",
  severity: "note",
  sources: ["acsm2009", "haffTriplett2016"],
  run({ programme, person }) {
    const status = person?.status ?? programme.status;
    const most = Math.max(...TRAINING_FREQUENCY.map(({ days }) => days[status].to));
    return programme.phases.flatMap((phase, phaseAt): readonly Found<Data>[] => {
      const days = Math.min(sessionsAWeek(person), phase.sessions.filter(({ work }) => work.length > 0).length);
      if (!(days > most)) return [];
      return [{ at: phasePath(phaseAt), data: { phase: phase.key, title: phase.title, days, most, status } }];
    });
  },
};

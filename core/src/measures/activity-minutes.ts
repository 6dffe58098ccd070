import type { Session } from "../model/index.ts";
import { askedAmount } from "./asked-amount.ts";
import { conditioningDose } from "./conditioning-dose.ts";

/** A minute of hard work counts as so many of moderate work. Source: who2020, from 75 and 150 minutes. */
export const HARD_MINUTE_COUNTS = 2;

export interface ActivityMinutes {
  /** Easy and steady minutes: whole sentences can be spoken. */
  readonly moderate: number;
  /** Hard minutes: only short phrases can be spoken. */
  readonly vigorous: number;
  /** Moderate minutes, with every hard one counted twice. */
  readonly equivalent: number;
  /** Conditioning that is asked in something else than time, so that its minutes are not known. */
  readonly unknown: number;
}

/**
 * Minutes of conditioning that the sessions of a week ask for. Warm-up and work are left out. Rests between bouts do not
 * count; the walks between bouts of running do, as moderate.
 *
 * @source who2020
 * @example
 * activityMinutes([tenEasyMinutesTwice]).equivalent //=> 20
 */
export function activityMinutes(sessions: readonly Session[]): ActivityMinutes {
  let [moderate, vigorous, unknown] = [0, 0, 0];
  for (const item of sessions.flatMap((session) => session.conditioning ?? [])) {
    const { effort } = item;
    const { sets, restS = 0 } = conditioningDose(item);
    if ("runWalk" in item) moderate += ((sets.length - 1) * restS) / 60;
    for (const { amount } of sets) {
      if (amount.kind !== "time") {
        unknown++;
        continue;
      }
      const minutes = askedAmount(amount).count / 60;
      if (effort === "hard") vigorous += minutes;
      else moderate += minutes;
    }
  }
  return { moderate, vigorous, equivalent: moderate + HARD_MINUTE_COUNTS * vigorous, unknown };
}

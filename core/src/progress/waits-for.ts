import { LOAD_STEP } from "../equations/index.ts";
import type { Reason, WayUp } from "../model/index.ts";
import { massOf } from "../units.ts";
import type { DoseState } from "./dose-state.ts";
import { plain, reason } from "./reasons.ts";
import { rangeOf } from "./titles.ts";
import { running, trained } from "./trained.ts";

/**
 * What a slot waits for that stays as it is, where nothing else was said of it: sessions that follow one another, the
 * load that is asked, or what its way up counts.
 *
 * @returns undefined where nothing is to be counted
 * @source haffTriplett2016, acsm2009, ours
 */
export function waitsFor(way: WayUp, state: DoseState): Reason | undefined {
  if (way === "stay") return undefined;
  const { slot } = state;
  const last = running(state, LOAD_STEP.sessions);
  const sessions = trained(state).length;
  if (last === undefined) return reason("progress/waits-sessions", { sessions, needed: LOAD_STEP.sessions });
  const done = last.at(-1)?.sets.at(-1)?.lifted;
  if (slot.load !== undefined && done !== undefined && massOf(done) !== massOf(slot.load))
    return reason("progress/waits-load", { asked: plain(slot.load), done: plain(done) });
  if (way === "ladder" && state.harder.length === 0) return reason("progress/waits-no-harder");
  const range = rangeOf(slot.dose);
  if (way === "reps then load" && range !== undefined)
    return reason("progress/waits-repetitions", { goal: range.to + LOAD_STEP.over.to, needed: LOAD_STEP.sessions });
  if (way === "load" && range !== undefined)
    return reason("progress/waits-all-sets", { goal: range.to, needed: LOAD_STEP.sessions });
  return reason("progress/waits-way", { way });
}

import type { Reason, WayUp } from "../model/index.ts";
import { backAgain, comeBack } from "./come-back.ts";
import { type DoseState, type NextDose, stay } from "./dose-state.ts";
import { fallBack } from "./fall-back.ts";
import { fastRise } from "./fast-rise.ts";
import { firstExposure } from "./first-exposure.ts";
import { fullAgain } from "./full-again.ts";
import { loadStep } from "./load-step.ts";
import { longerHold } from "./longer-hold.ts";
import { moreContacts } from "./more-contacts.ts";
import { repsThenLoad } from "./reps-then-load.ts";
import { reserveGuided } from "./reserve-guided.ts";
import { techniqueAgainst, toCleanLoad } from "./technique.ts";
import { upTheLadder } from "./up-the-ladder.ts";
import { waitsFor } from "./waits-for.ts";

const WAYS: Readonly<Record<WayUp, (state: DoseState) => NextDose>> = {
  "reps then load": repsThenLoad,
  load: loadStep,
  reserve: reserveGuided,
  "hold time": longerHold,
  ladder: upTheLadder,
  contacts: moreContacts,
  stay: () => stay(),
};

/**
 * The next dose of one slot by the coach's way up, with what speaks for it, how sure it is and what was refused.
 *
 * First comes what goes back: after a break, where a muscle is new or back, where technique was lost twice, where less was done than was asked. Then
 * what the way up earns, unless something speaks against more: a lost technique, one that nobody saw under 18, a load
 * that rises faster than strength does. Pain is judged outside, since it may bear on many forms at once.
 *
 * @source haffTriplett2016, acsm2009, ours
 */
export function nextDose(way: WayUp, state: DoseState): NextDose {
  const back = comeBack(state) ?? firstExposure(state) ?? toCleanLoad(state) ?? fallBack(state);
  if (back !== undefined) return back;
  const said = backAgain(state) ?? fullAgain(state) ?? WAYS[way](state);
  if (said.kind === "stay" && said.evidence.length + said.refused.length === 0) {
    const waits = waitsFor(way, state);
    return waits === undefined ? said : { ...said, evidence: [waits] };
  }
  if (said.kind !== "up") return said;
  const against: readonly Reason[] = [techniqueAgainst(state), fastRise(state)].flatMap((each) => each ?? []);
  return against.length === 0 ? said : stay([...said.refused, ...against]);
}

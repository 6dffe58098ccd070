import type { Decided, HurtRecord } from "../measures/index.ts";
import type { Exercise, SlotKey } from "../model/index.ts";
import { type PainOn, painOn, stopSign } from "./pain.ts";
import type { ProgressInput } from "./progress-input.ts";

const ABOUT_GOING_ON: ReadonlySet<string> = new Set(["pause", "resume", "exercise"]);

/**
 * Whether a coach's word is about going on, and was said when the pain was known.
 *
 * @param slot the slot it must be said of; undefined for any
 */
export function isAbout({ patch, proposal, cut }: Decided, slot: SlotKey | undefined, hurt: HurtRecord): boolean {
  const words = [patch, proposal?.patch].filter((each) => each !== undefined);
  const about = words.some((each) => (slot === undefined || each.slot === slot) && ABOUT_GOING_ON.has(each.change));
  return about && (cut[hurt.device] ?? -1) >= hurt.n;
}

/** Whether the word lets the slot go on: a pause was refused, another form was chosen, or it was taken up again. */
function goesOn({ patch }: Decided): boolean {
  return patch?.change !== "pause";
}

/**
 * The pains that bear on a form in a slot and that no coach has answered yet. Pain is answered for each slot by itself,
 * by a pause as well as by going on. After a sign to stop only a word that goes on answers; said of the slot in which
 * the sign came, it is for everything.
 */
export function unansweredPains(input: ProgressInput, slot: SlotKey, exercise: Exercise): readonly PainOn[] {
  const { decisions } = input.record;
  return painOn(input, slot, exercise).filter(({ hurt, everything }) => {
    if (!everything) return !decisions.some((one) => isAbout(one, slot, hurt));
    const slots = hurt.slot === undefined ? [slot] : [slot, hurt.slot];
    return !decisions.some((one) => goesOn(one) && slots.some((each) => isAbout(one, each, hurt)));
  });
}

/** The sign to stop after which no coach has let anything go on: until then not even a warm-up is done. */
export function unansweredStop(input: ProgressInput): PainOn | undefined {
  const { hurts, decisions } = input.record;
  const open = hurts.find(
    (hurt) =>
      stopSign(input, hurt) !== undefined && !decisions.some((one) => goesOn(one) && isAbout(one, undefined, hurt)),
  );
  return open === undefined ? undefined : stopSign(input, open);
}

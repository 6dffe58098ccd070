import type { Decided, HurtRecord } from "../measures/index.ts";
import type { Exercise, SlotKey } from "../model/index.ts";
import { type PainOn, painOn } from "./pain.ts";
import type { ProgressInput } from "./progress-input.ts";

const ANSWERS: ReadonlySet<string> = new Set(["pause", "resume", "exercise"]);

/** Whether a coach's word is an answer to a pain in a slot: about going on with it, and said when the pain was known. */
function answers({ patch, proposal, cut }: Decided, slot: SlotKey, hurt: HurtRecord): boolean {
  const words = [patch, proposal?.patch].filter((each) => each !== undefined);
  const about = words.some((each) => each.slot === slot && ANSWERS.has(each.change));
  return about && (cut[hurt.device] ?? -1) >= hurt.n;
}

/** @returns the pains that bear on a form in a slot and that no coach has answered yet */
export function unansweredPains(input: ProgressInput, slot: SlotKey, exercise: Exercise): readonly PainOn[] {
  return painOn(input, slot, exercise).filter(
    ({ hurt }) => !input.record.decisions.some((decision) => answers(decision, slot, hurt)),
  );
}

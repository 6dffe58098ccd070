import type { MorningItem } from "@stave/core/api";

/**
 * What a coach has answered, as it waits now. A decision on one slot can change what a proposal on another is made from,
 * the number of its sets for example, while it says the same in every word. Then the same answer is meant.
 *
 * @param waiting what waits for this person now
 * @returns undefined when nothing of the same slot says the same
 */
export function asProposedNow(item: MorningItem, waiting: readonly MorningItem[]): MorningItem | undefined {
  const says = ({ slot, exercise, title, stop }: MorningItem) => JSON.stringify([slot, exercise.id, title, stop]);
  return waiting.find((now) => says(now) === says(item));
}

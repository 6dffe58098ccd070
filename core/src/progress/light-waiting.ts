import type { LightWeekInput, LightWeekSaid } from "./light-week.ts";
import { propose, type Waiting } from "./proposals-for.ts";
import { titleOf } from "./titles.ts";

/** What is said of light weeks as a proposal that waits for the coach; undefined where nothing is proposed, or it is decided. */
export function lightWaiting(
  input: LightWeekInput,
  { patch, slot, evidence, refused, others }: LightWeekSaid,
): Waiting | undefined {
  const exercise = slot && input.catalogue.exercises.get(slot.exercise);
  if (patch === undefined || slot === undefined || exercise === undefined) return undefined;
  const proposal = propose(input, patch, evidence);
  if (input.record.decisions.some((one) => one.proposal?.proposal === proposal.proposal)) return undefined;
  const title = titleOf(patch, slot, exercise, input.person);
  return { proposal, slot, exercise, title, stop: false, others, refused };
}

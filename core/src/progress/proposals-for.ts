import {
  canonicalJson,
  type Exercise,
  type Patch,
  type PlanSlot,
  type Proposal,
  type Reason,
  type Slot,
  type SlotKey,
  slotsOf,
} from "../model/index.ts";
import { slotsAhead } from "./ahead.ts";
import type { PainOn } from "./pain.ts";
import type { ProgressInput } from "./progress-input.ts";
import { reason } from "./reasons.ts";
import { stepFor } from "./step-for.ts";
import { titleOf } from "./titles.ts";
import { isAbout, unansweredPains } from "./waiting-pains.ts";

/** A proposal that waits for the coach, with the slot as it is asked next. */
export interface Waiting {
  readonly proposal: Proposal;
  readonly slot: PlanSlot;
  readonly exercise: Exercise;
  /** What is proposed, as a reason. */
  readonly title: Reason;
  /** True for pain and stops. */
  readonly stop: boolean;
  /** Other answers than the proposed one. */
  readonly others: readonly Patch[];
}

/** Most other forms that are put beside a pause. */
const MOST_FORMS = 3;

/**
 * What the record asks a coach to decide, for each slot of the phase that runs: a pause where it hurts, else the step
 * that was earned. The same evidence gives the same proposal; what was decided on it does not come again.
 *
 * @returns pauses first, then in the order in which the slots come
 */
export function proposalsFor(input: ProgressInput): readonly Waiting[] {
  const { plan, record, catalogue } = input;
  const slots = slotsByKey(input);
  const decided = new Set(record.decisions.map(({ proposal }) => proposal?.proposal));
  const ahead = slotsAhead(input);
  const first = ahead.find(({ phase }) => phase === plan.firmTo.phase)?.slot.key;
  // One slot speaks for everything: the one in which the sign came, else the next.
  const speaksFor = ({ hurt }: PainOn, key: SlotKey) =>
    !record.decisions.some((one) => isAbout(one, undefined, hurt)) &&
    key === (ahead.some(({ slot }) => slot.key === hurt.slot) ? hurt.slot : first);
  const waiting = ahead.flatMap(({ phase, slot }): Waiting[] => {
    const exercise = catalogue.exercises.get(slot.exercise);
    const from = slots.get(slot.key);
    if (phase !== plan.firmTo.phase || exercise === undefined || from === undefined) return [];
    const pains = unansweredPains(input, slot.key, exercise);
    const waits = pains.filter((pain) => pain.waits && (!pain.everything || speaksFor(pain, slot.key)));
    if (waits.length > 0) return [pauseFor(input, slot, exercise, waits)];
    if (pains.some((pain) => pain.waits)) return [];
    const step = stepFor(input, slot, from, exercise);
    if (step === undefined || pains.some(({ hurt }) => hurt.n >= step.since)) return [];
    const proposal = propose(input, step.patch, step.evidence);
    const title = titleOf(step.patch, slot, exercise, input.person);
    return [{ proposal, slot, exercise, title, stop: false, others: step.other === undefined ? [] : [step.other] }];
  });
  const open = waiting.filter(({ proposal }) => !decided.has(proposal.proposal));
  return [...open.filter(({ stop }) => stop), ...open.filter(({ stop }) => !stop)];
}

function slotsByKey({ programme }: ProgressInput): ReadonlyMap<SlotKey, Slot> {
  const blocks = programme.phases.flatMap(({ sessions }) => sessions.flatMap(({ work }) => work));
  return new Map(blocks.flatMap(slotsOf).map((slot) => [slot.slot, slot]));
}

function propose({ hash, record, engine }: ProgressInput, patch: Patch, evidence: readonly Reason[]): Proposal {
  const name = hash(canonicalJson({ patch, evidence })).slice(0, 32);
  return { proposal: `proposal-${name}`, patch, evidence, cut: record.cut, engine };
}

function pauseFor(input: ProgressInput, slot: PlanSlot, exercise: Exercise, pains: readonly PainOn[]): Waiting {
  const patch: Patch = { slot: slot.key, change: "pause" };
  const proposal = propose(
    input,
    patch,
    pains.flatMap(({ evidence }) => evidence),
  );
  const all = pains.find(({ everything }) => everything);
  return all === undefined
    ? {
        proposal,
        slot,
        exercise,
        title: titleOf(patch, slot, exercise, input.person),
        stop: true,
        others: otherForms(input, slot),
      }
    : {
        proposal,
        slot,
        exercise,
        title: reason("progress/pause-all", { where: all.hurt.where }),
        stop: true,
        others: [],
      };
}

/** Forms of the slot's own offer on which no pain that waits bears. */
function otherForms(input: ProgressInput, slot: PlanSlot): readonly Patch[] {
  const { exercises } = input.catalogue;
  const spared = slot.offer.filter((id) => {
    const form = exercises.get(id);
    return form !== undefined && !unansweredPains(input, slot.key, form).some(({ waits }) => waits);
  });
  return spared.slice(0, MOST_FORMS).map((exercise) => ({ slot: slot.key, change: "exercise", exercise }));
}

import {
  canonicalJson,
  type Exercise,
  type Patch,
  type Proposal,
  type Reason,
  type Slot,
  type SlotKey,
  slotsOf,
} from "../model/index.ts";
import { type SlotAhead, slotsAhead } from "./ahead.ts";
import type { ProgressInput } from "./progress-input.ts";
import { type Step, stepFor } from "./step-for.ts";
import { unansweredPains } from "./waiting-pains.ts";

/** A proposal that waits for the coach, with the slot as it is asked next. */
export interface Waiting {
  readonly proposal: Proposal;
  readonly slot: SlotAhead["slot"];
  readonly exercise: Exercise;
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
  const waiting = slotsAhead(input).flatMap(({ phase, slot }): Waiting[] => {
    const exercise = catalogue.exercises.get(slot.exercise);
    const from = slots.get(slot.key);
    if (phase !== plan.firmTo.phase || exercise === undefined || from === undefined) return [];
    const pains = unansweredPains(input, slot.key, exercise);
    const waits = pains.filter((pain) => pain.waits);
    if (waits.length > 0) {
      const patch: Patch = { slot: slot.key, change: "pause" };
      const proposal = propose(
        input,
        patch,
        waits.flatMap(({ evidence }) => evidence),
      );
      return [{ proposal, slot, exercise, stop: true, others: otherForms(input, slot) }];
    }
    const step = stepFor(input, slot, from, exercise);
    if (step === undefined || pains.some(({ hurt }) => hurt.n >= step.since)) return [];
    const proposal = propose(input, step.patch, step.evidence);
    return [{ proposal, slot, exercise, stop: false, others: othersOf(step) }];
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

function othersOf({ other }: Step): readonly Patch[] {
  return other === undefined ? [] : [other];
}

/** Forms of the slot's own offer on which no pain that waits bears. */
function otherForms(input: ProgressInput, slot: SlotAhead["slot"]): readonly Patch[] {
  const { exercises } = input.catalogue;
  const spared = slot.offer.filter((id) => {
    const form = exercises.get(id);
    return form !== undefined && !unansweredPains(input, slot.key, form).some(({ waits }) => waits);
  });
  return spared.slice(0, MOST_FORMS).map((exercise) => ({ slot: slot.key, change: "exercise", exercise }));
}

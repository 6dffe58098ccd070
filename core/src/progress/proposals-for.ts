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
  type WayUp,
} from "../model/index.ts";
import { mayPrint } from "../offer/index.ts";
import { type SlotAhead, slotsAhead } from "./ahead.ts";
import { type Certainty, type DoseState, type NextDose, stay } from "./dose-state.ts";
import { easier } from "./fall-back.ts";
import { morningAfter } from "./mornings.ts";
import { nextDose } from "./next-dose.ts";
import { runsNext } from "./next-run.ts";
import type { PainOn } from "./pain.ts";
import type { ProgressInput } from "./progress-input.ts";
import { reason } from "./reasons.ts";
import { type SlotNow, statesOf } from "./state-of.ts";
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
  /** How sure it is that what is proposed will be done; undefined where nobody can tell. */
  readonly certainty?: Certainty;
  /** What would have been proposed, and why it is not. */
  readonly refused: readonly Reason[];
}

/** Most other forms that are put beside a pause. */
const MOST_FORMS = 3;

/**
 * What the record asks a coach to decide, for each slot of the phase that runs: a pause where it hurts, else the
 * next dose by the coach's way up. The same evidence gives the same proposal; what was decided on it does not come again.
 *
 * @returns pauses first, then in the order in which the slots come
 */
export function proposalsFor(input: ProgressInput): readonly Waiting[] {
  const { plan, record } = input;
  const decided = new Set(record.decisions.map(({ proposal }) => proposal?.proposal));
  const ahead = slotsAhead(input);
  const first = ahead.find(({ phase }) => phase === plan.firmTo.phase)?.slot.key;
  // One slot speaks for everything: the one in which the sign came, else the next.
  const speaksFor = ({ hurt }: PainOn, key: SlotKey) =>
    !record.decisions.some((one) => isAbout(one, undefined, hurt)) &&
    key === (ahead.some(({ slot }) => slot.key === hurt.slot) ? hurt.slot : first);
  const stateAt = statesOf(input);
  const waiting = slotsNow(input, ahead).flatMap((now): Waiting[] => {
    const { slot, from, exercise } = now;
    const pains = unansweredPains(input, slot.key, exercise);
    const waits = pains.filter((pain) => pain.waits && (!pain.everything || speaksFor(pain, slot.key)));
    if (waits.length > 0) return [pauseFor(input, slot, exercise, waits)];
    const next = doseUnder(input, from.way, stateAt(now), pains);
    if (next.patch === undefined) return [];
    const { patch, evidence, others, refused, certainty } = next;
    const proposal = propose(input, patch, evidence);
    const title = titleOf(patch, slot, exercise, input.person);
    const sure = certainty === undefined ? {} : { certainty };
    return [{ proposal, slot, exercise, title, stop: false, others, refused, ...sure }];
  });
  waiting.push(...runsWaiting(input));
  const open = waiting.filter(({ proposal }) => !decided.has(proposal.proposal));
  return [...open.filter(({ stop }) => stop), ...open.filter(({ stop }) => !stop)];
}

/** Runs whose level waits for a word, or that wait themselves because of what hurts. */
function runsWaiting(input: ProgressInput): readonly Waiting[] {
  return runsNext(input).flatMap(({ slot, exercise, next, stop }): Waiting[] => {
    const waits = unansweredPains(input, slot.key, exercise).filter((pain) => pain.waits && !pain.everything);
    if (waits.length > 0) return [pauseFor(input, slot, exercise, waits)];
    const { patch, evidence, others, refused } = next;
    if (patch === undefined) return [];
    const proposal = propose(input, patch, evidence);
    const title = titleOf(patch, slot, exercise, input.person);
    return [{ proposal, slot, exercise, title, stop, others, refused }];
  });
}

/** The slots of the phase that runs. */
function slotsNow(input: ProgressInput, ahead: readonly SlotAhead[]): readonly SlotNow[] {
  const slots = slotsByKey(input);
  return ahead.flatMap(({ phase, slot }): SlotNow[] => {
    const exercise = input.catalogue.exercises.get(slot.exercise);
    const from = slots.get(slot.key);
    if (phase !== input.plan.firmTo.phase || exercise === undefined || from === undefined) return [];
    return [{ slot, from, exercise }];
  });
}

/** The next dose of one slot, whether anything waits for the coach or not. */
export interface SlotDose {
  readonly slot: PlanSlot;
  readonly exercise: Exercise;
  readonly way: WayUp;
  readonly next: NextDose;
  /** What it depends on. */
  readonly state: DoseState;
}

/** @returns what the way up of every slot of the phase that runs says now, in the order in which the slots come */
export function dosesFor(input: ProgressInput): readonly SlotDose[] {
  const stateAt = statesOf(input);
  return slotsNow(input, slotsAhead(input)).flatMap((now) => {
    const { slot, from, exercise } = now;
    const state = stateAt(now);
    const pains = unansweredPains(input, slot.key, exercise);
    return [{ slot, exercise, way: from.way, next: doseUnder(input, from.way, state, pains), state }];
  });
}

/**
 * The next dose of a slot under what hurts: nothing while the form itself waits; nothing rises for a person to whom
 * nothing may be handed, nor on a pain since then whose next morning is not known to be normal, and a morning above the
 * usual takes the dose down.
 */
function doseUnder(input: ProgressInput, way: WayUp, state: DoseState, pains: readonly PainOn[]): NextDose {
  const waits = pains.filter((pain) => pain.waits);
  if (waits.length > 0) return stay(waits.flatMap(({ evidence }) => evidence));
  const next = nextDose(way, state);
  const handed = mayPrint(input.person, input.today);
  if (next.kind === "up" && !handed.ok) return stay([...next.refused, handed.reason]);
  if (next.kind === "up" && !state.admitted) return stay();
  const judged = pains.map((pain) => ({ pain, morning: morningAfter(input, pain.hurt) }));
  const [above] = judged.filter(({ morning }) => morning.says === "above");
  if (above !== undefined && next.kind !== "down") {
    const { pain, morning } = above;
    const patch = easier(state);
    const evidence = [...pain.evidence, ...morning.because];
    const refused = next.kind === "up" ? [...next.refused, ...next.evidence] : next.refused;
    if (patch === undefined) return stay([...refused, ...evidence]);
    return { kind: "down", patch, evidence, refused, others: [], since: pain.hurt.n };
  }
  if (next.kind !== "up") return next;
  const open = judged.filter(({ pain, morning }) => pain.hurt.n >= (next.since ?? 0) && morning.says === "unknown");
  if (open.length === 0) return next;
  const because = open.flatMap(({ pain, morning }) => [...pain.evidence, ...morning.because]);
  return stay([...next.refused, ...because]);
}

function slotsByKey({ programme }: ProgressInput): ReadonlyMap<SlotKey, Slot> {
  const blocks = programme.phases.flatMap(({ sessions }) => sessions.flatMap(({ work }) => work));
  return new Map(blocks.flatMap(slotsOf).map((slot) => [slot.slot, slot]));
}

/** A proposal named by what it is about, so that the same evidence gives the same one. */
export function propose(
  { person, hash, record, engine }: ProgressInput,
  patch: Patch,
  evidence: readonly Reason[],
): Proposal {
  // Days that go by are no new evidence: what was refused does not come again every morning.
  const about = evidence.map(({ code, data: { days: _, ...data } }) => ({ code, data }));
  const name = hash(canonicalJson({ person: person.id, patch, evidence: about })).slice(0, 32);
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
        refused: [],
      }
    : {
        proposal,
        slot,
        exercise,
        title: reason("progress/pause-all", { where: all.hurt.where }),
        stop: true,
        others: [],
        refused: [],
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

import {
  type Bundle,
  type BundleExercise,
  type EventData,
  type ExerciseId,
  type OfferedForm,
  type PlanSession,
  type PlanSlot,
  type Reason,
  type SlotKey,
  type StressTag,
  stressesOf,
  USUAL,
} from "../model/index.ts";
import { PAIN_RULES } from "../screen/index.ts";
import type { Load } from "../units.ts";
import { reason } from "./reasons.ts";
import { withoutSlots } from "./without-slots.ts";

export type SwapReason = EventData["swapped"]["because"];

/** How far a session has come. */
export interface SessionSoFar {
  /** The occurrence, `id` of a session of the bundle. */
  readonly session: string;
  /** The session as it stands, where it was changed already. */
  readonly now?: PlanSession;
  /** Sets done or left out of each slot; a slot that is absent was not begun. */
  readonly sets: Readonly<Record<SlotKey, number>>;
  /** Pain that was noted in this session, this one included; `exercise` is what was being done. */
  readonly hurts: readonly { readonly where: string; readonly howMuch: number; readonly exercise?: ExerciseId }[];
}

/** The rest of a session, solved anew. */
export interface Again {
  /** The whole session as it is from now on. */
  readonly session: PlanSession;
  /** One `swapped` event for each. */
  readonly swaps: readonly {
    readonly slot: SlotKey;
    readonly from: ExerciseId;
    readonly to: ExerciseId;
    readonly load?: Load;
  }[];
  /** Slots that wait, with the reason: nothing that is offered will do. */
  readonly paused: readonly { readonly slot: SlotKey; readonly because: Reason }[];
}

/** What one slot becomes: the form that stays, another one, or none with the reason. */
type Answer = "stays" | OfferedForm | Reason;

/** What the answers are worked out from. */
interface Scene {
  readonly bundle: Bundle;
  readonly now: PlanSession;
  readonly forms: ReadonlyMap<ExerciseId, BundleExercise>;
  /** Forms that stand in the session already. */
  readonly taken: Set<ExerciseId>;
}

/**
 * Solves the rest of a session again within what the bundle offers. Runs on a phone with no network.
 *
 * easier     the nearest easier form of the slot; nothing changes where none is offered
 * equipment  the nearest form that does without the equipment of this one, else the slot waits
 * hurt       the nearest form, no harder, that spares the place that hurts, else the slot waits; and the same for every
 *            slot with sets to come that stresses it, once the pain is more than free to go on with. On a sign to stop,
 *            everything waits
 *
 * Asked again of its own answer, it changes nothing.
 *
 * @throws RangeError when the bundle has no such session
 */
export function again(bundle: Bundle, slot: SlotKey, because: SwapReason, done: SessionSoFar): Again {
  const planned = bundle.sessions.find(({ id }) => id === done.session)?.session;
  if (planned === undefined) throw new RangeError(`The bundle has no session ${done.session}`);
  const now = done.now ?? planned;
  const slots = now.blocks.flatMap((block) => block.slots);
  const scene: Scene = {
    bundle,
    now,
    forms: new Map(bundle.exercises.map((form) => [form.id, form])),
    taken: new Set(slots.map(({ exercise }) => exercise)),
  };
  const asked = slots.find(({ key }) => key === slot);
  const answers = new Map<SlotKey, Answer>();
  if (because === "hurt") {
    const begun = planned.blocks.flatMap((block) => block.slots).find(({ key }) => key === slot)?.exercise;
    const hurts = done.hurts.map((hurt) => (begun === undefined ? hurt : { exercise: begun, ...hurt }));
    for (const each of slots) {
      const isOver = (done.sets[each.key] ?? 0) >= each.dose.sets.length;
      if (each.key === slot || !isOver) answers.set(each.key, spare(scene, each, each.key === slot, hurts));
    }
  } else if (asked !== undefined) {
    answers.set(slot, because === "easier" ? easier(scene, asked) : elsewhere(scene, asked));
  }
  return outcome(scene, slots, answers, done);
}

function offered({ bundle, taken, forms }: Scene, { key, exercise }: PlanSlot): readonly OfferedForm[] {
  const all = bundle.offers.find((offer) => offer.slot === key)?.forms ?? [];
  const rung = all.find((form) => form.exercise === exercise)?.rung ?? 0;
  return all
    .filter((form) => form.rung <= rung && forms.has(form.exercise) && !taken.has(form.exercise))
    .toSorted((a, b) => b.rung - a.rung);
}

function rungOf({ bundle }: Scene, { key, exercise }: PlanSlot): number {
  const all = bundle.offers.find((offer) => offer.slot === key)?.forms ?? [];
  return all.find((form) => form.exercise === exercise)?.rung ?? 0;
}

function easier(scene: Scene, slot: PlanSlot): Answer {
  const rung = rungOf(scene, slot);
  return offered(scene, slot).find((form) => form.rung < rung) ?? "stays";
}

/** Other equipment than the usual things of any room. */
function elsewhere(scene: Scene, slot: PlanSlot): Answer {
  const needs = (id: ExerciseId) => (scene.forms.get(id)?.needs ?? []).flat().filter((each) => !USUAL.includes(each));
  const missing = new Set(needs(slot.exercise));
  const free = offered(scene, slot).find(({ exercise }) => needs(exercise).every((each) => !missing.has(each)));
  return free ?? reason("plan/nothing-else-here", { exercise: slot.exercise });
}

function stressedBy(form: BundleExercise | undefined, tags: readonly StressTag[]): readonly StressTag[] {
  return tags.filter((tag) => (form?.stress[tag] ?? 0) > 0);
}

/** Stresses that a pain tells to spare: those that reach the place, and of them the ones of the form that hurt, if any. */
function toSpare({ forms }: Scene, { where, exercise }: SessionSoFar["hurts"][number]): readonly StressTag[] {
  const places = stressesOf(where);
  if (places === "everything") return [];
  const reached = exercise === undefined ? [] : stressedBy(forms.get(exercise), places);
  return reached.length > 0 ? reached : places;
}

/** @param isOwn whether it hurt in this slot; then no number is free to go on with */
function spare(scene: Scene, slot: PlanSlot, isOwn: boolean, hurts: SessionSoFar["hurts"]): Answer {
  const bearing = hurts.filter((hurt) => {
    if (stressesOf(hurt.where) === "everything") return true;
    if (isOwn && slot.exercise === hurt.exercise) return true;
    const bears = stressedBy(scene.forms.get(slot.exercise), toSpare(scene, hurt)).length > 0;
    return bears && (isOwn || hurt.howMuch > PAIN_RULES[0]!.free);
  });
  const [first] = bearing;
  if (first === undefined) return "stays";
  const waits = reason("plan/nothing-spares", { exercise: slot.exercise, where: first.where });
  if (bearing.some(({ where }) => stressesOf(where) === "everything")) return waits;
  const tags = hurts.flatMap((hurt) => toSpare(scene, hurt));
  const hurt = new Set(hurts.map(({ exercise }) => exercise));
  const free = offered(scene, slot).find(
    ({ exercise }) => !hurt.has(exercise) && stressedBy(scene.forms.get(exercise), tags).length === 0,
  );
  if (free !== undefined) scene.taken.add(free.exercise);
  return free ?? waits;
}

function outcome(
  scene: Scene,
  slots: readonly PlanSlot[],
  answers: ReadonlyMap<SlotKey, Answer>,
  { sets }: SessionSoFar,
): Again {
  const swaps: Again["swaps"][number][] = [];
  const out = new Map<SlotKey, Reason>();
  const changed = new Map<SlotKey, PlanSlot>();
  for (const slot of slots) {
    const answer = answers.get(slot.key) ?? "stays";
    if (answer === "stays") continue;
    if ("code" in answer) out.set(slot.key, answer);
    else {
      const { exercise, load } = answer;
      swaps.push({ slot: slot.key, from: slot.exercise, to: exercise, ...(load === undefined ? {} : { load }) });
      changed.set(slot.key, inPlaceOf(slot, answer));
    }
  }
  const { now } = scene;
  const isLead = (key: SlotKey | undefined) => key !== undefined && changed.has(key) && (sets[key] ?? 0) === 0;
  const session: PlanSession = {
    ...now,
    warmup: now.warmup.filter((item) => !isLead(item.for)),
    blocks: now.blocks.map((block) => ({ ...block, slots: block.slots.map((one) => changed.get(one.key) ?? one) })),
  };
  return {
    session: withoutSlots(session, out),
    swaps,
    paused: [...out].map(([slot, because]) => ({ slot, because })),
  };
}

function inPlaceOf(slot: PlanSlot, { exercise, load, dose, side }: OfferedForm): PlanSlot {
  const { load: _load, loads: _loads, find: _find, side: _side, ...kept } = slot;
  return {
    ...kept,
    exercise,
    dose: dose ?? slot.dose,
    ...(side === undefined ? {} : { side }),
    ...(load === undefined ? {} : { load }),
  };
}

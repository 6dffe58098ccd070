import {
  ASIDE_KINDS,
  type Bundle,
  type BundleSession,
  compareEvents,
  type EventData,
  type PlanSession,
  type Reason,
  type StaveEvent,
  standingEvents,
  stressesOf,
} from "@stave/core/model";
import { again, type SessionSoFar } from "@stave/core/revise";
import { type Bounds, boundsOf } from "./bounds.ts";
import { courseOf, placeKey, type Step, slotsOf, stepKey } from "./course.ts";
import type { Draft } from "./draft.ts";
import { asItStands, type Swap } from "./stands.ts";

/** What stands of one set: done, or left out. */
export interface SetSaid {
  readonly event: StaveEvent;
  readonly done?: EventData["set-done"];
}

export interface HurtSaid {
  readonly event: StaveEvent;
  readonly where: string;
  readonly howMuch: number;
  /** What was being done. */
  readonly exercise?: string;
}

/** One session as it stands now, by all that was said of it. */
export interface SessionView {
  readonly of: BundleSession;
  /** After its swaps. */
  readonly now: PlanSession;
  readonly course: readonly Step[];
  readonly begun: boolean;
  readonly ended?: EventData["session-ended"];
  /** By place. */
  readonly sets: ReadonlyMap<string, SetSaid>;
  readonly hurts: readonly HurtSaid[];
  /** After a sign to stop nothing is left to do, not even conditioning. */
  readonly stopped: boolean;
  /** Movements that wait, by slot. */
  readonly waiting: ReadonlyMap<string, Reason | "taken out">;
  /** Limits that a newer bundle sets now. */
  readonly boundsFor: (slot: string, exercise: string) => Bounds;
  /** What `again` needs to know. */
  readonly soFar: SessionSoFar;
}

/** What stands of a session. Of two words on one set, as by two phones, the later one stands. */
function saidOf(events: readonly StaveEvent[], planned: PlanSession) {
  const forms = new Map(slotsOf(planned).map(({ key, exercise }) => [key, exercise]));
  const sets = new Map<string, SetSaid>();
  const hurts: HurtSaid[] = [];
  const swaps: Swap[] = [];
  const doing = (slot: string | undefined) => {
    const exercise = slot === undefined ? undefined : forms.get(slot);
    return exercise === undefined ? {} : { exercise };
  };
  let begun = false;
  let ended: EventData["session-ended"] | undefined;
  const standing = standingEvents(events).map(({ event }) => event);
  for (const event of standing.sort(compareEvents)) {
    const { slot, set } = event.of!;
    const place = slot === undefined || set === undefined ? undefined : placeKey({ slot, set });
    const data: unknown = event.data;
    begun ||= !ASIDE_KINDS.has(event.kind);
    if (event.kind === "set-done" && place) sets.set(place, { event, done: data as EventData["set-done"] });
    else if (event.kind === "set-left-out" && place) sets.set(place, { event });
    else if (event.kind === "hurt") hurts.push({ event, ...(data as EventData["hurt"]), ...doing(slot) });
    else if (event.kind === "swapped" && slot) {
      const swap = { slot, ...(data as EventData["swapped"]) };
      forms.set(slot, swap.to);
      swaps.push(swap);
    } else if (event.kind === "session-ended") ended = data as EventData["session-ended"];
  }
  return { sets, hurts, swaps, begun, ended };
}

/** @returns sets that are behind, by slot */
function counted(sets: ReadonlyMap<string, SetSaid>): Readonly<Record<string, number>> {
  const counts: Record<string, number> = {};
  for (const { event } of sets.values()) counts[event.of!.slot!] = (counts[event.of!.slot!] ?? 0) + 1;
  return counts;
}

/**
 * @param events all that this phone knows of the session, by whichever device
 * @param newer a bundle that waits for the end of the session
 */
export function viewOf(
  of: BundleSession,
  bundle: Bundle,
  events: readonly StaveEvent[],
  draft?: Draft,
  newer?: Bundle,
): SessionView {
  const { sets, hurts, swaps, begun, ended } = saidOf(events, of.session);
  const now = asItStands(of.session, swaps, bundle);
  const soFar: SessionSoFar = {
    session: of.id,
    now,
    sets: counted(sets),
    hurts: hurts.map(({ event: _event, ...hurt }) => hurt),
  };
  const pains = new Set(hurts.map(({ event }) => event.replaces ?? event.id));
  const waiting = new Map<string, Reason | "taken out">(bundle.paused.map(({ slot, because }) => [slot, because]));
  for (const { event } of hurts) {
    if (event.of?.slot === undefined) continue;
    for (const { slot, because } of again(bundle, event.of.slot, "hurt", soFar).paused) waiting.set(slot, because);
  }
  for (const [slot, { waits }] of Object.entries(draft?.bounds ?? {}))
    if (waits !== undefined) waiting.set(slot, waits);
  return {
    of,
    now,
    course: courseOf(now),
    begun,
    ...(ended === undefined ? {} : { ended }),
    sets,
    hurts,
    stopped: hurts.some(({ where, howMuch }) => stressesOf(where) === "everything" && howMuch > 0),
    waiting,
    boundsFor: (slot, exercise) => (newer === undefined ? {} : boundsOf(bundle, newer, { slot, exercise, pains })),
    soFar,
  };
}

/** Whether nothing of a step is left to do. */
export function isBehind(view: SessionView, step: Step, draft: Draft): boolean {
  if (view.stopped || draft.passed.includes(stepKey(step))) return true;
  return step.kind === "set" && (view.sets.has(stepKey(step)) || view.waiting.has(step.slot));
}

/** @returns the next step that is not behind, from the one after `from`, then from the beginning; none at the end */
export function nextStep(view: SessionView, draft: Draft, from?: string): Step | undefined {
  const at = view.course.findIndex((step) => stepKey(step) === from);
  const inTurn = [...view.course.slice(at + 1), ...view.course.slice(0, at + 1)];
  return inTurn.find((step) => !isBehind(view, step, draft));
}

/** @returns the step that fills the screen; none when everything is behind */
export function stepNow(view: SessionView, draft: Draft): Step | undefined {
  const isHere = (step: Step) => stepKey(step) === draft.at && !view.stopped;
  return view.course.find(isHere) ?? nextStep(view, draft);
}

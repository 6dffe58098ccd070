import { printDay } from "../day.ts";
import type { DoneSet } from "../measures/index.ts";
import type { Patch } from "../model/index.ts";
import { massOf } from "../units.ts";
import type { DoseState, NextDose } from "./dose-state.ts";
import { likely, SCARCELY } from "./likely.ts";
import { plain, reason } from "./reasons.ts";
import { amountDone, floorOf, running, trained } from "./trained.ts";

/**
 * The number at which, in the first set, one session is enough to go back: two under the lowest number asked, or 30 %
 * of it under, whichever is less; for seconds and metres 30 %.
 *
 * @returns 0 or more
 * @source ours
 * @example fallBackLimit(12, "reps") //=> 8
 */
export function fallBackLimit(floor: number, kind: "reps" | "hold" | "metres" | "time" | "contacts"): number {
  const share = Math.ceil(0.3 * floor);
  return Math.max(0, floor - (kind === "reps" || kind === "contacts" ? Math.max(2, share) : share));
}

/**
 * One step back: where the first set fell to the limit in the last session, or under the lowest number asked in the last
 * two, unless the record as a whole leaves at least one in twenty that it can be done. Back is the next easier load that is here, or the nearest easier form. A session that ended early counts nothing.
 *
 * @returns undefined when nothing speaks for it
 * @source ours
 */
export function fallBack(state: DoseState): NextDose | undefined {
  const last = running(state, 1)?.[0];
  if (last === undefined || last.endedEarly === true) return undefined;
  const first = last.sets.find(({ set }) => set === 0);
  const floor = first && floorOf(first);
  const done = first && amountDone(first);
  const kind = first?.asked?.amount.kind;
  if (first === undefined || floor === undefined || done === undefined || kind === undefined || kind === "most")
    return undefined;
  const limit = fallBackLimit(floor, kind);
  const before = trained(state).at(-2);
  const two =
    running(state, 2) !== undefined &&
    before?.endedEarly !== true &&
    isUnder(before?.sets.find(({ set }) => set === 0));
  const once = done <= limit;
  if (!once && !(two && done < floor)) return undefined;
  if (isLikely(state, first, floor)) return undefined;
  const patch = easier(state, first.lifted);
  if (patch === undefined) return undefined;
  const { exercise } = state;
  const on = printDay(state.dayOf(last.at));
  const data = {
    exercise: exercise.id,
    floor,
    limit,
    done,
    kind,
    load: plain(first.lifted),
    sessions: once ? 1 : 2,
    on,
  };
  const since = once ? last.n : Math.min(last.n, before!.n);
  return { kind: "down", patch, evidence: [reason("progress/under-floor", data)], refused: [], others: [], since };
}

/** A bad day or two say less than a record that says otherwise. */
function isLikely(state: DoseState, { lifted, asked }: DoneSet, floor: number): boolean {
  if (asked?.amount.kind !== "reps") return false;
  const chance = likely(state, { load: lifted, reps: floor, reserve: asked.reserve?.from ?? 0 });
  return chance?.founded === true && chance.chance >= SCARCELY;
}

function isUnder(set: Parameters<typeof floorOf>[0] | undefined): boolean {
  if (set === undefined) return false;
  const [floor, done] = [floorOf(set), amountDone(set)];
  return floor !== undefined && done !== undefined && done < floor;
}

/** The next easier load than the one lifted, as long as that is still asked; else the nearest easier form. */
export function easier({ slot, exercise, loads, easier: forms }: DoseState, lifted = slot.load): Patch | undefined {
  const helps = exercise.loadMeaning === "assist";
  if (lifted !== undefined && slot.load !== undefined) {
    // What is asked next is easier already.
    if (helps ? massOf(slot.load) > massOf(lifted) : massOf(slot.load) < massOf(lifted)) return undefined;
    const less = loads.filter((each) => (helps ? massOf(each) > massOf(lifted) : massOf(each) < massOf(lifted))).at(-1);
    if (less !== undefined) return { slot: slot.key, change: "load", load: less, exercise: exercise.id };
  }
  const [form] = forms;
  return form === undefined ? undefined : { slot: slot.key, change: "exercise", exercise: form };
}

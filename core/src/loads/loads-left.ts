import type { Day } from "../day.ts";
import type { Exercise, Person, Place } from "../model/index.ts";
import type { Load } from "../units.ts";
import { easiestFirst, type LoadSet } from "./load-set.ts";
import { loadsFor } from "./loads-for.ts";
import { mostByShare } from "./starting-load.ts";
import { type LoadCap, underCap } from "./under-cap.ts";

/** Which loads of a form a person may use here. */
export interface LoadsLeft {
  readonly set: LoadSet;
  /** Easiest first; empty where nothing is loaded, or the place does not list what it has. */
  readonly loads: readonly Load[];
  /** A share of today's best is the limit, and today's best is not known: then no load is known to be under it. */
  readonly shareUnknown: boolean;
}

/**
 * The loads that exist here and that no limit forbids.
 *
 * @param wanted stands for the list of a place that lists no loads for this form
 * @returns nothing when limits leave none, or nobody knows the true load
 * @source ours
 */
export function loadsLeft(
  context: {
    readonly exercise: Exercise;
    readonly person: Person;
    readonly place: Place;
    readonly on: Day;
    readonly cap: LoadCap;
  },
  wanted?: Load,
): LoadsLeft {
  const { exercise, place, cap } = context;
  const most = mostByShare(context);
  const listed = loadsFor(exercise, place);
  const here: LoadSet = listed.kind === "none" && wanted !== undefined ? { kind: "masses", loads: [wanted] } : listed;
  const capped = underCap(exercise, here, cap, most);
  const set: LoadSet = "because" in capped ? { kind: "none" } : capped.set;
  return { set, loads: easiestFirst(set), shareUnknown: cap.percent !== undefined && most === undefined };
}

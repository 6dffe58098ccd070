import type { Equipment, Exercise } from "../model/index.ts";

/** What a movement costs in seconds, apart from the work and the rest. */
export type Times = Pick<Exercise, "secondsPerRep" | "setupS" | "changeS" | "moveS">;

export type TimeKind =
  | "barbell"
  | "barbell hinge"
  | "power lift"
  | "weight in hand"
  | "one side"
  | "machine"
  | "body"
  | "bar or bars"
  | "band"
  | "isolation"
  | "hold"
  | "carry"
  | "jump or throw"
  | "mobility"
  | "cyclic";

/**
 * Ours, no source: no study of set-up or station-change times was found, so these are a coach's guesses, to be learned
 * from logged times. `secondsPerRep` is seconds for one unit of the amount: a repetition, a contact, a metre, and 1 for
 * a second of a hold or of a time. Where time is usual but metres may be asked, entries give their own seconds a metre at
 * a steady effort: common practice, no source.
 */
export const USUAL_TIMES: Readonly<Record<TimeKind, Times>> = {
  barbell: { secondsPerRep: 4, setupS: 120, changeS: 20, moveS: 60 },
  "barbell hinge": { secondsPerRep: 4, setupS: 120, changeS: 25, moveS: 60 },
  "power lift": { secondsPerRep: 5, setupS: 120, changeS: 20, moveS: 60 },
  "weight in hand": { secondsPerRep: 3.5, setupS: 30, changeS: 10, moveS: 40 },
  "one side": { secondsPerRep: 3.5, setupS: 30, changeS: 10, moveS: 40 },
  machine: { secondsPerRep: 3.5, setupS: 30, changeS: 5, moveS: 40 },
  body: { secondsPerRep: 3, setupS: 15, changeS: 0, moveS: 20 },
  "bar or bars": { secondsPerRep: 3.5, setupS: 20, changeS: 5, moveS: 40 },
  band: { secondsPerRep: 3, setupS: 40, changeS: 10, moveS: 20 },
  isolation: { secondsPerRep: 3, setupS: 20, changeS: 5, moveS: 40 },
  hold: { secondsPerRep: 1, setupS: 15, changeS: 0, moveS: 20 },
  carry: { secondsPerRep: 0.9, setupS: 40, changeS: 0, moveS: 40 },
  "jump or throw": { secondsPerRep: 3, setupS: 20, changeS: 0, moveS: 30 },
  mobility: { secondsPerRep: 4, setupS: 10, changeS: 0, moveS: 10 },
  cyclic: { secondsPerRep: 1, setupS: 30, changeS: 0, moveS: 40 },
};

/** Seconds to change sides, once a set. Ours, no source. */
export const SWITCH_S = 5;

const BARS: readonly Equipment[] = ["barbell", "curl bar", "hex bar", "guided-bar rack", "angled bar"];
const IN_HAND: readonly Equipment[] = ["dumbbell", "kettlebell", "weighted ball", "sandbag", "bag", "backpack"];
const HANGING: readonly Equipment[] = ["pull-up bar", "parallel bars", "rings", "assisted pull-up machine"];

/** What decides which row of times a movement takes. */
export type Facts = Pick<Exercise, "pattern" | "mode" | "amounts" | "eachSide" | "loadMeaning" | "needs">;

/**
 * Which row of the usual times a movement takes.
 *
 * The way it is counted decides first, then the pattern, then the first-named equipment of each group it needs.
 *
 * @example timeKindOf({ ...plank, amounts: "hold" }) //=> "hold"
 */
export function timeKindOf({ pattern, mode, amounts, eachSide, loadMeaning, needs }: Facts): TimeKind {
  if (pattern === "mobility") return "mobility";
  if (amounts === "hold") return "hold";
  if (pattern === "carry" && amounts === "metres") return "carry";
  if (pattern === "jump" || pattern === "throw") return "jump or throw";
  if (mode === "cyclic" || amounts === "time" || amounts === "metres") return "cyclic";
  if (pattern === "power lift") return "power lift";
  const uses = (kinds: readonly Equipment[]) => needs.some(([usual]) => usual !== undefined && kinds.includes(usual));
  if (loadMeaning === "total" && uses(BARS)) return pattern === "hinge" ? "barbell hinge" : "barbell";
  if (loadMeaning === "band") return "band";
  if (pattern === "upper isolation" || pattern === "lower isolation") return "isolation";
  if (uses(HANGING)) return "bar or bars";
  if (loadMeaning === "stack") return "machine";
  if (uses(IN_HAND)) return eachSide ? "one side" : "weight in hand";
  return "body";
}

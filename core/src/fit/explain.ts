import type { ExerciseId, Json, Reason, SlotKey } from "../model/index.ts";
import { type Built, build, type FitInput } from "./build.ts";
import type { SlotChoices } from "./candidates.ts";
import type { FittedSlot } from "./fit.ts";
import { reason } from "./reasons.ts";
import { score } from "./score.ts";
import { solve } from "./search.ts";
import { type FitTask, type Line, optionsOf, type Pick } from "./task.ts";

function asJson(reasons: readonly Reason[]): Json {
  return reasons.map(({ code, data }) => ({ code, data }));
}

/** Why a slot was given what it was given, the weightiest first. */
export function whyThis({ choices, chosen, sets, asked }: FittedSlot): readonly Reason[] {
  const { slot, aside, pinned } = choices;
  if (chosen === undefined) return whyOpen(choices);
  const id = chosen.exercise.id;
  const reasons: Reason[] = [];
  const firstAside = aside.find((each) => each.exercise === slot.first);
  const suits = chosen.lines.find((line) => line.id === "fit/suits");
  if (pinned?.kept) reasons.push(reason("fit/pinned", { exercise: id }));
  else if (id === slot.first) reasons.push(reason("fit/first-choice", { exercise: id }));
  else if (firstAside !== undefined) {
    reasons.push(reason("fit/instead", { first: slot.first, exercise: id, why: asJson(firstAside.why) }));
  } else if (suits !== undefined && suits.data["steps"] === suits.data["wanted"]) {
    reasons.push(reason("fit/right-rung", { first: slot.first, exercise: id, steps: suits.data["steps"] ?? 0 }));
  } else reasons.push(reason("fit/more-points", { first: slot.first, exercise: id }));
  if (pinned !== undefined && !pinned.kept) {
    reasons.push(reason("fit/pin-beaten", { exercise: pinned.exercise, why: asJson(pinned.why) }));
  }
  if (chosen.watch.length > 0) reasons.push(reason("fit/watch", { tags: chosen.watch }));
  if (chosen.lines.some((line) => line.id === "fit/liked")) reasons.push(reason("fit/liked"));
  if (chosen.lines.some((line) => line.id === "fit/disliked")) reasons.push(reason("fit/disliked"));
  if (sets !== asked) reasons.push(reason("fit/sets-changed", { asked, sets }));
  return [...reasons, ...chosen.notes];
}

/** Why a slot stays open: nothing may be done here, or there is no room in the session for what may. */
function whyOpen({ candidates, aside, slot }: SlotChoices): readonly Reason[] {
  if (candidates.length > 0) {
    return [reason("fit/no-room", { first: slot.first, could: candidates[0]!.exercise.id })];
  }
  const first = aside.find((each) => each.exercise === slot.first);
  return [
    reason("fit/nothing-fits", { pattern: slot.pattern, tried: aside.length }),
    ...(first === undefined ? [] : [reason("fit/set-aside", { exercise: slot.first, why: asJson(first.why) })]),
  ];
}

/** What forcing a form into a slot does to the whole phase. */
export type WhyNot =
  | { readonly kind: "chosen" }
  | { readonly kind: "set aside"; readonly why: readonly Reason[] }
  | { readonly kind: "pinned"; readonly exercise: ExerciseId }
  | { readonly kind: "not thought of" }
  | { readonly kind: "does not fit" }
  | {
      readonly kind: "costs";
      /** Must points more, and want points fewer, than the best plan. */
      readonly must: number;
      readonly want: number;
      /** Both plans are proven best, so that the loss is exact. */
      readonly proven: boolean;
      /** Constraints whose points differ between the two plans; the differences of a level sum up to its loss. */
      readonly lines: readonly Difference[];
    };

/** Points of one constraint at one level: in the best plan, and in the best plan with the forced form. */
export interface Difference {
  readonly id: string;
  readonly level: "must" | "want";
  readonly best: number;
  readonly forced: number;
}

/** The task in which one slot has this form and no other. */
function forced(task: FitTask, slot: SlotKey, exercise: ExerciseId): FitTask {
  const blocks = task.blocks.map((block) => {
    const at = block.slots.indexOf(slot);
    if (at < 0) return block;
    const ways = block.ways.flatMap((way) => {
      const only = way.steps[at]!.filter((option) => option.exercise === exercise);
      return only.length === 0 ? [] : [{ ...way, steps: way.steps.with(at, only) }];
    });
    return { ...block, ways };
  });
  return { ...task, blocks };
}

function differences(best: readonly Line[], forced: readonly Line[]): readonly Difference[] {
  const sum = (lines: readonly Line[], id: string, level: Line["level"]) =>
    lines.reduce((total, line) => (line.id === id && line.level === level ? total + line.points : total), 0);
  const ids = [...new Set([...best, ...forced].map(({ id }) => id))].sort();
  return ids
    .flatMap((id) => (["must", "want"] as const).map((level) => ({ id, level })))
    .map(({ id, level }) => ({ id, level, best: sum(best, id, level), forced: sum(forced, id, level) }))
    .filter((line) => line.best !== line.forced);
}

/**
 * Why not another form in this slot: it is set aside, with every reason; or it is forced, the whole phase is solved
 * again, and the loss is the difference of the two plans, constraint by constraint.
 *
 * @returns undefined when the phase has no such slot
 */
export function whyNot(input: FitInput, slot: SlotKey, exercise: ExerciseId): WhyNot | undefined {
  const built = build(input);
  const choices = findSlot(built, slot);
  if (choices === undefined) return undefined;
  const aside = choices.aside.find((each) => each.exercise === exercise);
  if (aside !== undefined) return { kind: "set aside", why: aside.why };
  const { pinned } = choices;
  if (pinned?.kept && pinned.exercise !== exercise) return { kind: "pinned", exercise: pinned.exercise };
  if (!choices.candidates.some((candidate) => candidate.exercise.id === exercise)) return { kind: "not thought of" };
  const best = solve(built.task);
  const other = forced(built.task, slot, exercise);
  const found = solve(other);
  if (best === undefined || found === undefined) return { kind: "does not fit" };
  const [a, b] = [score(built.task, best.choice), score(other, found.choice)];
  if (a.must === b.must && a.want === b.want && chosenIn(built.task, best.choice, slot) === exercise)
    return { kind: "chosen" };
  const proven = best.proven && found.proven;
  return { kind: "costs", must: b.must - a.must, want: a.want - b.want, proven, lines: differences(a.lines, b.lines) };
}

function findSlot(built: Built, slot: SlotKey): SlotChoices | undefined {
  return built.sessions
    .flatMap((session) => session.blocks.flatMap((block) => block.slots))
    .find((choices) => choices.slot.slot === slot);
}

function chosenIn(task: FitTask, choice: readonly Pick[], slot: SlotKey): ExerciseId | undefined {
  const index = task.blocks.findIndex((block) => block.slots.includes(slot));
  const block = task.blocks[index]!;
  return optionsOf(block, choice[index]!)[block.slots.indexOf(slot)]!.exercise;
}

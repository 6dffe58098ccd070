import {
  type Dose,
  doseInWeek,
  type Exercise,
  type ExerciseId,
  type Reason,
  type Session,
  type SlotKey,
} from "../model/index.ts";
import { type Built, build, type FitInput, solveBuilt } from "./build.ts";
import type { Candidate, SlotChoices } from "./candidates.ts";
import { conditioningDoses, type EasyItem, isRun } from "./easy-work.ts";
import { doseWithSets, fullWeek } from "./options.ts";
import { score } from "./score.ts";
import { optionsOf, type Pick, type PlacedLine, type Solution } from "./task.ts";

/** What a slot was given. `doses` has one dose for each week of the phase, week 1 first, light weeks not yet lightened. */
export interface FittedSlot {
  readonly key: SlotKey;
  readonly choices: SlotChoices;
  readonly chosen?: Candidate;
  readonly doses: readonly Dose[];
  readonly sets: number;
  readonly asked: number;
}

export interface FittedBlock {
  readonly kind: "straight" | "pair" | "round";
  readonly restS?: number;
  readonly slots: readonly FittedSlot[];
}

export interface FittedSession {
  readonly session: Session;
  readonly warmup: readonly EasyItem[];
  readonly ramps: ReadonlyMap<SlotKey, number>;
  readonly blocks: readonly FittedBlock[];
  readonly conditioning: readonly {
    readonly exercise: Exercise;
    readonly dose: Dose;
    readonly effort: "easy" | "steady" | "hard";
    /** Of running and walking in turn. */
    readonly run?: { readonly slot: SlotKey; readonly level: number };
    readonly why: readonly Reason[];
  }[];
}

/** A phase fitted to one person, with the value of the choice, what it is made of and whether it is proven best. */
export interface FittedPhase {
  readonly sessions: readonly FittedSession[];
  readonly solution: Solution;
  readonly lines: readonly PlacedLine[];
}

function fittedSlot(input: FitInput, choices: SlotChoices, exercise: ExerciseId | undefined, sets: number): FittedSlot {
  const chosen = choices.candidates.find((candidate) => candidate.exercise.id === exercise);
  const coach = (week: number) => doseInWeek(choices.slot, week).sets.length;
  const full = fullWeek(input.phase, coach);
  const doses =
    chosen === undefined ? [] : chosen.doses.map((_, index) => doseWithSets(chosen.doses, index + 1, full, sets));
  return {
    key: choices.slot.slot,
    choices,
    ...(chosen === undefined ? {} : { chosen }),
    doses,
    sets,
    asked: coach(full),
  };
}

/** Reads the answer back into sessions. */
export function readChoice(input: FitInput, built: Built, choice: readonly Pick[]): readonly FittedSession[] {
  let at = 0;
  const next = () => {
    const options = optionsOf(built.task.blocks[at]!, choice[at]!);
    at++;
    return options;
  };
  return built.sessions.map(
    ({ session, warmup, blocks, conditioning }): FittedSession => ({
      session,
      warmup,
      ramps: blocks[0]?.ramps ?? new Map(),
      blocks: blocks.map((block): FittedBlock => {
        const options = next();
        const slots = block.slots.map((choices, index) =>
          fittedSlot(input, choices, options[index]!.exercise, options[index]!.sets),
        );
        const filled = slots.filter((slot) => slot.chosen !== undefined).length;
        const kind = filled < 2 ? "straight" : block.kind;
        return { kind, slots, ...(kind === "straight" || block.restS === undefined ? {} : { restS: block.restS }) };
      }),
      conditioning: conditioning.flatMap(({ asked, item, effort }) => {
        const cut = next()[0]!.lines[0]?.data["part"] ?? "all";
        const dose = conditioningDoses(asked, item.dose).find((each) => each.part === cut)?.dose;
        if (dose === undefined) return [];
        const run = isRun(asked, item) ? { run: { slot: asked.slot, level: asked.runWalk } } : {};
        return [{ exercise: item.exercise, dose, effort, ...run, why: item.why }];
      }),
    }),
  );
}

/**
 * The best plan of one phase for one person under the coach's own rules, exactly.
 *
 * Never: a form that is not admitted, an exercise twice in a session, a session longer than its minutes at the upper
 * estimate. Must, counted: open slots, weekly bands that the coach made hard. Want, scored: the right rung, pattern,
 * muscles, likes, the coach's number of sets, weekly bands, balance.
 *
 * @example
 * fitPhase({ programme, phase, person, place, catalogue, on: day("2027-01-11"), perWeek: 3 }).solution.proven
 */
export function fitPhase(input: FitInput): FittedPhase {
  const built = build(input);
  const solution = solveBuilt(input, built);
  if (solution === undefined)
    throw new Error("A fit task without a plan: every block can be left open, so this cannot be");
  return {
    sessions: readChoice(input, built, solution.choice),
    solution,
    lines: score(built.task, solution.choice).lines,
  };
}

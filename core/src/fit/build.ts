import { blockSeconds, sessionSeconds } from "../measures/index.ts";
import { type Conditioning, canonicalJson, type Programme, type Session, slotsOf } from "../model/index.ts";
import type { Admit } from "../offer/index.ts";
import { weeklyRows } from "./bands.ts";
import { admitFor, choicesFor, type FitContext } from "./candidates.ts";
import { afterWork, conditioningDoses, type EasyItem, easyWarmUp } from "./easy-work.ts";
import { type FitMemory, type Remembered, remember, slotText, taskText } from "./memory.ts";
import { type BlockChoices, blockTask, TYPICAL_PER_UNIT } from "./options.ts";
import { solve } from "./search.ts";
import type { BlockTask, FitTask, Option, Solution } from "./task.ts";

/** Want points lost when conditioning is halved or left out, to make room for a slot. Ours, no source. */
const CONDITIONING_HALVED = -30;
const CONDITIONING_LEFT_OUT = -60;

export interface FitInput extends FitContext {
  readonly programme: Programme;
  /** How many sessions a week this person can do; fewer than the phase has makes them go in turn. */
  readonly perWeek: number;
  /** Most different busy stations that one session may take, where others train too. */
  readonly stations?: number;
  /** What earlier fits left behind; it spares work and changes nothing. */
  readonly memory?: FitMemory;
}

/** One session of the phase for one person, before the choice. */
export interface SessionChoices {
  readonly session: Session;
  readonly warmup: readonly EasyItem[];
  readonly blocks: readonly BlockChoices[];
  readonly conditioning: readonly {
    readonly asked: Conditioning;
    readonly item: EasyItem;
    readonly effort: "easy" | "steady" | "hard";
  }[];
}

/** The task and everything needed to read its answer. Blocks of the task: work, then conditioning, by session. */
export interface Built {
  readonly task: FitTask;
  readonly sessions: readonly SessionChoices[];
}

function sessionChoices(
  context: FitContext,
  admit: Admit,
  session: Session,
  known: Remembered | undefined,
): SessionChoices {
  const ramps = new Map(
    (session.warmup ?? []).flatMap((item) => ("ramp" in item ? [[item.ramp, item.sets] as const] : [])),
  );
  return {
    session,
    warmup: easyWarmUp(context, admit, session.warmup),
    blocks: session.work.map((block): BlockChoices => {
      const kind = "pair" in block ? "pair" : "round" in block ? "round" : "straight";
      const restS = "slot" in block ? undefined : block.restS;
      const slots = slotsOf(block).map((slot) =>
        remember(
          known?.choices,
          () => slotText(context, slot),
          () => choicesFor(context, admit, slot),
        ),
      );
      return { kind, slots, ramps, ...(restS === undefined ? {} : { restS }) };
    }),
    conditioning: (session.conditioning ?? []).flatMap((asked) => {
      const item = afterWork(context, admit, asked);
      return item === undefined ? [] : [{ asked, item, effort: item.effort ?? asked.effort }];
    }),
  };
}

/** All that the ways of a block are made from, but for the person, the place and the weeks of the phase. */
function blockText(context: FitContext, block: BlockChoices, moves: boolean, pinned: number | undefined): string {
  const slots = block.slots.map(({ slot }) => slotText(context, slot));
  const ramps = block.slots.map(({ slot }) => block.ramps.get(slot.slot) ?? null);
  return JSON.stringify([slots, block.kind, block.restS ?? null, ramps, moves, pinned ?? null]);
}

/** Seconds of the easy warm-up, as the measure of a whole session counts them. */
function warmUpSeconds(warmup: readonly EasyItem[]): number {
  const known = new Map(warmup.map(({ exercise }) => [exercise.id, exercise]));
  const asked = warmup.map(({ exercise, dose }) => ({ exercise: exercise.id, dose }));
  return sessionSeconds({ warmup: asked, blocks: [], conditioning: [] }, (id) => known.get(id)).parts.warmUp;
}

function conditioningOptions(session: SessionChoices, at: number): readonly Option[] {
  const { asked, item } = session.conditioning[at]!;
  return conditioningDoses(asked, item.dose).map(({ part, dose }, rank): Option => {
    const took =
      dose === undefined ? undefined : blockSeconds("straight", [{ exercise: item.exercise, dose }], undefined, 0);
    const points = part === "all" ? 0 : part === "half" ? CONDITIONING_HALVED : CONDITIONING_LEFT_OUT;
    const seconds = took === undefined ? 0 : took.setUp + took.work + took.rest + item.exercise.moveS;
    return {
      exercise: undefined,
      sets: dose?.sets.length ?? 0,
      must: 0,
      want: points,
      time: Math.ceil(seconds / TYPICAL_PER_UNIT),
      rows: [],
      stations: [],
      rank,
      lines:
        points === 0
          ? []
          : [{ id: "fit/conditioning-cut", level: "want", points, data: { part, exercise: item.exercise.id } }],
    };
  });
}

/**
 * States the choice of a phase for one person in whole numbers. Time is the upper estimate: a session that the measure
 * calls N seconds at most takes N / 5 units here or one more per block.
 */
export function build(input: FitInput): Built {
  const { phase, programme, person, perWeek } = input;
  const admit = admitFor(input);
  const known = input.memory?.of(input);
  const sessions = phase.sessions.map((session) => sessionChoices(input, admit, session, known));
  const setsPinned = new Map(
    person.pins.flatMap((pin) => (pin.sets === undefined ? [] : [[pin.slot, pin.sets] as const])),
  );
  const blocks = sessions.flatMap((session, number): BlockTask[] => [
    ...session.blocks.map((block, index) => {
      const pinned = block.slots.flatMap(({ slot }) => setsPinned.get(slot.slot) ?? [])[0];
      const moves = index > 0;
      const task = remember(
        known?.blocks,
        () => blockText(input, block, moves, pinned),
        () => blockTask(number, input, block, moves, pinned),
      );
      return { ...task, session: number };
    }),
    ...session.conditioning.map(({ asked, item }, at): BlockTask => {
      const task = remember(
        known?.blocks,
        () => canonicalJson([asked, item.exercise.id, item.dose]),
        () => {
          const ways = [{ time: 0, steps: [conditioningOptions(session, at)] }];
          return { session: number, slots: [], ways, atOnce: new Map() };
        },
      );
      return { ...task, session: number };
    }),
  ]);
  const capacity = sessions.map(({ session, warmup }) => {
    const units = Math.min(session.minutes, person.minutes) * 12;
    return Math.max(0, units - Math.ceil(warmUpSeconds(warmup) / TYPICAL_PER_UNIT));
  });
  const rows = weeklyRows(programme, phase.sessions.length, perWeek);
  const { stations } = input;
  return { task: { capacity, blocks, rows, ...(stations === undefined ? {} : { stations }) }, sessions };
}

/** @returns the answer to what was built, or the one that a fit of the very same task left behind */
export function solveBuilt(input: FitInput, { task }: Built): Solution | undefined {
  const known = input.memory?.of(input);
  if (known === undefined) return solve(task);
  return remember(
    known.solutions,
    () => taskText(known, task),
    () => solve(task),
  );
}

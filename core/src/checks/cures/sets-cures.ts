import { setQuarters } from "../../measures/index.ts";
import { type Block, type Exercise, type Muscle, type Path, slotsOf } from "../../model/index.ts";
import type { Quarters } from "../../units.ts";
import type { CheckInput, Cure } from "../run/check.ts";
import { sessionPath } from "../run/walk.ts";
import { setsChanged, setsOf } from "./block-sets.ts";
import { newSlotCures } from "./new-slot.ts";

/** A slot is never given more sets than this as a remedy, nor left with fewer than the other. Ours, no source. */
const MOST_SETS = 6;
const FEWEST_SETS = 1;
/** At most so many forms are tried where no slot trains the muscle. */
const FORMS_TRIED = 2;

/** A block that trains the muscle: one set more of it adds so much. */
interface Lever {
  readonly block: Block;
  readonly at: Path;
  /** Quarter-sets for the muscle of one more set of every slot in the block. */
  readonly each: number;
  readonly direct: boolean;
}

function leversFor(
  { programme, catalogue }: CheckInput,
  phaseIndex: number,
  muscle: Muscle,
  only: number | undefined,
): readonly Lever[] {
  return programme.phases[phaseIndex]!.sessions.flatMap((session, s) =>
    (only === undefined || only === s ? session.work : []).flatMap((block, b): readonly Lever[] => {
      const added = slotsOf(block).map((slot) => {
        const exercise = catalogue.exercises.get(slot.first);
        const last = slot.dose.sets.at(-1);
        return exercise === undefined || last === undefined ? 0 : (setQuarters(exercise, last)[muscle] ?? 0);
      });
      const each = added.reduce<number>((sum, quarter) => sum + quarter, 0);
      const direct = added.some((quarter) => quarter >= 4);
      return each > 0 ? [{ block, at: [...sessionPath(phaseIndex, s), "work", b], each, direct }] : [];
    }),
  );
}

/** Steps of one set, each on the block that then has fewest (or, taking away, most) sets, until the gap is closed. */
function spread(levers: readonly Lever[], gap: Quarters, step: 1 | -1): ReadonlyMap<Lever, number> | undefined {
  const steps = new Map<Lever, number>();
  let left: number = gap;
  while (left > 0) {
    const now = (lever: Lever) => setsOf(lever.block) + step * (steps.get(lever) ?? 0);
    const able = levers.filter((lever) => (step > 0 ? now(lever) < MOST_SETS : now(lever) > FEWEST_SETS));
    const next = able.reduce<Lever | undefined>((best, lever) => {
      return best === undefined || step * now(lever) < step * now(best) ? lever : best;
    }, undefined);
    if (next === undefined) return undefined;
    steps.set(next, (steps.get(next) ?? 0) + 1);
    left -= next.each;
  }
  return steps;
}

function cureOf(input: CheckInput, steps: ReadonlyMap<Lever, number>, step: 1 | -1): Cure {
  const nameOf = (id: string) => input.catalogue.exercises.get(id)?.name ?? id;
  return {
    id: step > 0 ? "more-sets" : "fewer-sets",
    group: "sets",
    data: {
      slots: [...steps].flatMap(([{ block }, count]) =>
        slotsOf(block).map((slot) => {
          const from = slot.dose.sets.length;
          return { slot: slot.slot, name: nameOf(slot.first), from, to: Math.max(1, from + step * count) };
        }),
      ),
    },
    changes: [...steps].flatMap(([{ block, at }, count]) => setsChanged(block, at, step * count)),
  };
}

/** Ladder starts that are for the muscle, then any other exercise that is. */
function formsFor({ catalogue }: CheckInput, muscle: Muscle): readonly Exercise[] {
  const starts = catalogue.ladders.flatMap((ladder) => catalogue.exercises.get(ladder.start) ?? []);
  const suits = (exercise: Exercise) => exercise.muscles[muscle] === 1 && !exercise.coachOnly;
  return [...new Set([...starts, ...catalogue.exercises.values()])].filter(suits).slice(0, FORMS_TRIED);
}

/**
 * Ways to bring a muscle's weekly sets back by a gap: spread over the blocks that are for it, then block by block,
 * then over all that train it at all. All are one group, best first.
 *
 * @param only position of the session in which alone sets may change; every session when left out
 */
export function setsCures(
  input: CheckInput,
  phaseIndex: number,
  muscle: Muscle,
  side: "under" | "over",
  gap: Quarters,
  only?: number,
): readonly Cure[] {
  const step = side === "under" ? 1 : -1;
  const levers = leversFor(input, phaseIndex, muscle, only);
  const direct = levers.filter((lever) => lever.direct);
  const ways = [direct, ...direct.map((lever) => [lever]), levers, ...levers.map((lever) => [lever])];
  const cures = ways.flatMap((way) => {
    const steps = way.length === 0 ? undefined : spread(way, gap, step);
    return steps === undefined ? [] : [cureOf(input, steps, step)];
  });
  const distinct = [...new Map(cures.map((cure) => [JSON.stringify(cure.changes), cure])).values()];
  if (side === "over" || levers.length > 0) return distinct;
  return newSlotCures(input, phaseIndex, formsFor(input, muscle));
}

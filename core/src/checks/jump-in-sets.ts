import { MUSCLES, type Muscle, slotsOf } from "../model/index.ts";
import { setsChanged, setsOf } from "./cures/block-sets.ts";
import type { Check, Cure, Facts, Found } from "./run/check.ts";
import type { AskedWeek, Look } from "./run/look.ts";
import { phasePath, sessionPath } from "./run/walk.ts";

type Data = Facts & { readonly phase: string; readonly fromWeek: number };

/** Most that weekly sets go up by in about four weeks. Source: iusca2021. */
const MOST_TIMES = 1.2;
/** Fewer sets more than this are never a jump, however few there were. Ours, no source. */
const LEAST_MORE = 3;
/** Weeks that are looked back on, and the fewest of them that tell anything; light weeks left out. Ours, no source. */
const LOOK_BACK = 4;
const FEWEST_KNOWN = 2;

interface FullWeek {
  readonly phaseAt: number;
  /** Week of its phase, 1 = first. */
  readonly week: number;
  readonly asked: AskedWeek;
}

interface Jump {
  readonly muscle: Muscle;
  readonly sets: number;
  readonly mean: number;
}

/** Every week of the programme that is not light, in order. */
function fullWeeks({ weeks }: Look): readonly FullWeek[] {
  return weeks.flatMap((phase, phaseAt) =>
    phase
      .filter(({ light }) => !light)
      .flatMap((asked) => asked.weeks.map((week): FullWeek => ({ phaseAt, week, asked }))),
  );
}

function jumpsAt(before: readonly FullWeek[], { asked }: FullWeek): readonly Jump[] {
  const jumps: Jump[] = [];
  for (const muscle of MUSCLES) {
    const sets = (asked.sets.quarters[muscle] ?? 0) / 4;
    let sum = 0;
    for (const week of before) sum += (week.asked.sets.quarters[muscle] ?? 0) / 4;
    const mean = sum / before.length;
    if (sets > MOST_TIMES * mean && sets - mean >= LEAST_MORE) jumps.push({ muscle, sets, mean });
  }
  return jumps;
}

/** One to three sets fewer in every block of the phase that drives one of the muscles, in all its weeks. */
function fewerSets(look: Look, phaseAt: number, jumps: readonly Jump[]): readonly Cure[] {
  const drives = (first: string) => {
    const shares = look.catalogue.exercises.get(first)?.muscles ?? {};
    return jumps.some(({ muscle }) => shares[muscle] === 1);
  };
  return [-1, -2, -3].flatMap((more): readonly Cure[] => {
    const blocks = look.programme.phases[phaseAt]!.sessions.flatMap((session, s) =>
      session.work.flatMap((block, b) =>
        slotsOf(block).some(({ first }) => drives(first)) && setsOf(block) + more >= 1
          ? [{ block, at: [...sessionPath(phaseAt, s), "work", b] }]
          : [],
      ),
    );
    if (blocks.length === 0) return [];
    const slots = blocks.flatMap(({ block }) =>
      slotsOf(block).map((slot) => {
        const name = look.catalogue.exercises.get(slot.first)?.name ?? slot.first;
        const from = slot.dose.sets.length;
        return { slot: slot.slot, name, from, to: Math.max(1, from + more) };
      }),
    );
    const changes = blocks.flatMap(({ block, at }) => setsChanged(block, at, more));
    return [{ id: "fewer-sets", group: "sets", data: { slots }, changes }];
  });
}

/**
 * A week that asks a muscle for over 20 % more sets than the mean of the last four weeks, and at least three more. Light
 * weeks are left out on both sides; with fewer than two weeks before, nothing is said, since what somebody did before
 * the programme is not in it.
 *
 * The remedy takes sets away from the slots that are for the muscle.
 */
export const jumpInSets: Check<"week/jump-in-sets", Data> = {
  id: "week/jump-in-sets",
  severity: "warn",
  sources: ["iusca2021", "ours"],
  run(look) {
    const weeks = fullWeeks(look);
    return weeks.flatMap((now, index): readonly Found<Data>[] => {
      const before = weeks.slice(Math.max(0, index - LOOK_BACK), index);
      // Weeks that ask for the same as the one before cannot be where a jump begins.
      if (before.length < FEWEST_KNOWN || before.at(-1)!.asked === now.asked) return [];
      const muscles = jumpsAt(before, now);
      if (muscles.length === 0) return [];
      const phase = look.programme.phases[now.phaseAt]!;
      return [
        {
          at: phasePath(now.phaseAt),
          data: {
            phase: phase.key,
            title: phase.title,
            fromWeek: now.week,
            known: before.length,
            muscles: muscles.map(({ muscle, sets, mean }) => ({ muscle, sets, mean: Math.round(mean * 10) / 10 })),
          },
          cures: () => fewerSets(look, now.phaseAt, muscles),
        },
      ];
    });
  },
};

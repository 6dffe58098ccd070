import { askedInSet, isDirectSet, workOf } from "../measures/index.ts";
import { type Block, type Catalogue, MUSCLES, type Muscle, type SetDose, type Slot, slotsOf } from "../model/index.ts";
import { doseWith, setsOf } from "./cures/block-sets.ts";
import type { Change } from "./run/change.ts";
import type { Check, Cure, Facts, Found } from "./run/check.ts";
import type { Look } from "./run/look.ts";
import { sessionPath, slotPaths } from "./run/walk.ts";

type Data = Facts & {
  readonly phase: string;
  readonly session: string;
  readonly side: "sets" | "reserve" | "lowering" | "far too much";
};

/** Direct sets a muscle, and repetitions in reserve, with which somebody untrained begins. Ours, no source. */
const MOST_SETS = 2;
const LEAST_RESERVE = 3;
/**
 * Direct sets and repetitions a muscle that are too much for anybody's first session. Ten sets are called the most that
 * one session is good for (iusca2021); a hundred repetitions is ours, under the published session of 8 × 20 squats.
 */
const FAR_SETS = 10;
const FAR_REPS = 100;

interface Size {
  readonly sets: number;
  readonly reps: number;
}

/** Direct sets and repetitions of the first session, per muscle. */
function sizes({ weeks }: Look, catalogue: Catalogue): ReadonlyMap<Muscle, Size> {
  const found = new Map<Muscle, Size>();
  for (const slot of workOf(weeks[0]![0]!.sessions[0]!)) {
    const exercise = catalogue.exercises.get(slot.exercise);
    if (exercise === undefined) continue;
    for (const set of slot.dose.sets) {
      if (!isDirectSet(exercise, set)) continue;
      const reps = set.amount.kind === "reps" || set.amount.kind === "most" ? askedInSet(set).count : 0;
      for (const name in exercise.muscles) {
        const muscle = name as Muscle;
        if (exercise.muscles[muscle] !== 1) continue;
        const before = found.get(muscle) ?? { sets: 0, reps: 0 };
        found.set(muscle, { sets: before.sets + 1, reps: before.reps + reps });
      }
    }
  }
  return found;
}

function leavesTooFew({ amount, reserve }: SetDose): boolean {
  if (amount.kind === "most") return true;
  return amount.kind === "reps" && !((reserve?.from ?? 0) >= LEAST_RESERVE);
}

const WORK = [...sessionPath(0, 0), "work"];

function blocksOf(look: Look): readonly Block[] {
  return look.programme.phases[0]!.sessions[0]!.work;
}

/** The first doses of the blocks that drive one of the muscles, at so many sets; doses of later weeks stay. */
function fewerSets(look: Look, muscles: readonly Muscle[], most: (block: Block) => number): readonly Cure[] {
  const slots: { slot: string; name: string; from: number; to: number }[] = [];
  const changes: Change[] = [];
  for (const [index, block] of blocksOf(look).entries()) {
    const drives = slotsOf(block).some(({ first }) => {
      const shares = look.catalogue.exercises.get(first)?.muscles ?? {};
      return muscles.some((muscle) => shares[muscle] === 1);
    });
    const to = most(block);
    if (!drives || setsOf(block) <= to) continue;
    const paths = slotPaths(block, [...WORK, index]);
    for (const [turn, slot] of slotsOf(block).entries()) {
      const from = slot.dose.sets.length;
      const name = look.catalogue.exercises.get(slot.first)?.name ?? slot.first;
      slots.push({ slot: slot.slot, name, from, to });
      changes.push({ op: "set", at: [...paths[turn]!, "dose"], value: doseWith(slot.dose, to - from) });
    }
  }
  return changes.length === 0 ? [] : [{ id: "fewer-sets", group: "sets", data: { slots }, changes }];
}

/** One or two sets of every block, as many as keep each muscle at two. */
function setsCures(look: Look, muscles: readonly Muscle[]): readonly Cure[] {
  return [2, 1].flatMap((most) => fewerSets(look, muscles, () => most));
}

/** The first doses that leave too few, with three in reserve. */
function reserveCure(look: Look, slots: readonly Slot[]): Cure {
  const changes = blocksOf(look).flatMap((block, index) => {
    const paths = slotPaths(block, [...WORK, index]);
    return slotsOf(block).flatMap((slot, turn): readonly Change[] => {
      if (!slots.includes(slot)) return [];
      const sets = slot.dose.sets.map((set): SetDose => {
        if (!leavesTooFew(set)) return set;
        return { ...set, reserve: { from: LEAST_RESERVE, to: Math.max(LEAST_RESERVE, set.reserve?.to ?? 0) } };
      });
      return [{ op: "set", at: [...paths[turn]!, "dose"], value: { ...slot.dose, sets } }];
    });
  });
  return { id: "more-in-reserve", data: { reserve: LEAST_RESERVE, slots: slots.length }, changes };
}

function forNovices(look: Look, size: ReadonlyMap<Muscle, Size>, about: Facts): readonly Found<Data>[] {
  const at = sessionPath(0, 0);
  const { catalogue } = look;
  const many = MUSCLES.filter((muscle) => (size.get(muscle)?.sets ?? 0) > MOST_SETS);
  const slots = blocksOf(look).flatMap(slotsOf);
  const near = slots.filter(
    ({ first, dose }) => catalogue.exercises.get(first)?.amounts === "reps" && dose.sets.some(leavesTooFew),
  );
  const lowering = slots.filter(({ first }) => catalogue.exercises.get(first)?.lowering);
  const nameOf = ({ first }: Slot) => catalogue.exercises.get(first)?.name ?? first;
  const data = { ...about, phase: String(about["phase"]), session: String(about["session"]) };
  const found: Found<Data>[] = [];
  if (many.length > 0) {
    const muscles = many.map((muscle) => ({ muscle, sets: size.get(muscle)!.sets }));
    found.push({ at, data: { ...data, side: "sets", muscles, most: MOST_SETS }, cures: () => setsCures(look, many) });
  }
  if (near.length > 0) {
    const names = near.map(nameOf);
    const cures = () =>
      near.some(({ dose }) => dose.sets.some(({ amount }) => amount.kind === "most")) ? [] : [reserveCure(look, near)];
    found.push({ at, data: { ...data, side: "reserve", names, least: LEAST_RESERVE }, cures });
  }
  if (lowering.length > 0) {
    found.push({ at, data: { ...data, side: "lowering", names: lowering.map(nameOf) } });
  }
  return found;
}

/**
 * The dose of the very first session. Somebody untrained begins with at most two direct sets a muscle, three or more
 * repetitions in reserve and nothing that only lowers. For anybody, however fit they look, a muscle with over ten direct
 * sets or over a hundred repetitions stops: sessions like that have put active people into hospital.
 *
 * The remedies take sets away, or leave more in reserve.
 */
export const firstDose: Check<"session/first-dose", Data> = {
  id: "session/first-dose",
  severity: "warn",
  sources: ["iusca2021", "ours"],
  run(look) {
    const { programme, person, catalogue } = look;
    const [phase] = programme.phases;
    const session = phase?.sessions[0];
    if (phase === undefined || session === undefined) return [];
    const size = sizes(look, catalogue);
    const about = { phase: phase.key, session: session.key, title: session.title };
    const far = MUSCLES.filter((muscle) => {
      const { sets, reps } = size.get(muscle) ?? { sets: 0, reps: 0 };
      return sets > FAR_SETS || reps > FAR_REPS;
    });
    const status = person?.status ?? programme.status;
    const novice = status === "novice" ? forNovices(look, size, about) : [];
    if (far.length === 0) return novice;
    const muscles = far.map((muscle) => ({ muscle, ...size.get(muscle)! }));
    return [
      {
        at: sessionPath(0, 0),
        severity: "stop",
        data: { ...about, side: "far too much", muscles, mostSets: FAR_SETS, mostReps: FAR_REPS },
        cures: () => setsCures(look, far),
      },
      ...novice,
    ];
  },
};

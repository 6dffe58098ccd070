import { printDay } from "../day.ts";
import type { HurtRecord } from "../measures/index.ts";
import { type Exercise, type ExerciseId, type Json, type Reason, type StressTag, stressesOf } from "../model/index.ts";
import { clearanceOf } from "../offer/index.ts";
import type { ProgressInput } from "./progress-input.ts";
import { reason } from "./reasons.ts";

/** Edges of a pain rule, 0 to 10: up to `free` goes on, up to `most` holds the load, above it the work waits. */
export interface PainEdges {
  readonly free: number;
  readonly most: number;
}

/** Pain that bears on one form. `waits`: it is not to be done; otherwise its load is not to be raised. */
export interface PainOn {
  readonly hurt: HurtRecord;
  readonly waits: boolean;
  /** A sign to stop: one word of the coach is for everything. */
  readonly everything: boolean;
  readonly evidence: readonly Reason[];
}

/**
 * Which of a person's pains bear on a form in a slot: those of the form itself, and those of other forms whose stressed
 * tags it shares. Stressed are the tags that reach the place that hurt, and of these the ones that the form that hurt
 * has, if it has any.
 *
 * A place that a caution already watches may hurt up to `most`; any other up to `free`. Chest pain and dizziness bear
 * on everything, whatever the number.
 *
 * @source silbernagel2007, ours
 */
export function painOn(input: ProgressInput, slot: string, exercise: Exercise): readonly PainOn[] {
  const { record, edges } = input;
  return record.hurts.flatMap((hurt): PainOn[] => {
    const places = stressesOf(hurt.where);
    if (places === "everything") {
      const stop = stopSign(input, hurt);
      return stop === undefined ? [] : [stop];
    }
    const source = formOf(input, hurt);
    const own = source === undefined ? hurt.slot === slot : source.id === exercise.id;
    const reached = places.filter((tag) => (source?.stress[tag] ?? 0) > 0);
    const stressed = reached.length > 0 ? reached : places;
    const shared = stressed.filter((tag) => (exercise.stress[tag] ?? 0) > 0);
    if (!own && shared.length === 0) return [];
    const most = isWatched(input, stressed) ? edges.most : edges.free;
    if (!(hurt.howMuch > edges.free)) return [];
    const tags = own ? [] : [reason("progress/shares-stress", { exercise: exercise.id, tags: shared })];
    return [{ hurt, waits: hurt.howMuch > most, everything: false, evidence: [painReason(input, hurt), ...tags] }];
  });
}

/** Chest pain or dizziness, whatever its number from 1 up. */
export function stopSign(input: ProgressInput, hurt: HurtRecord): PainOn | undefined {
  if (stressesOf(hurt.where) !== "everything" || hurt.howMuch < 1) return undefined;
  const evidence = [painReason(input, hurt), reason("progress/stop-sign", { where: hurt.where })];
  return { hurt, waits: true, everything: true, evidence };
}

function isWatched({ person, today }: ProgressInput, tags: readonly StressTag[]): boolean {
  const { ceilings } = clearanceOf(person, today);
  return tags.some((tag) => ceilings[tag] !== undefined);
}

/** The form that was being done when it hurt: the one that made way for another because of it, else the last one done. */
function formOf({ log, record, catalogue }: ProgressInput, { session, slot }: HurtRecord): Exercise | undefined {
  const during = log.find((each) => each.session === session && each.asked.key === slot);
  const recorded = record.sessions.find((each) => each.session === session)?.slots.find((each) => each.slot === slot);
  const madeWay = recorded?.swaps.find(({ because }) => because === "hurt")?.from;
  const id: ExerciseId | undefined = madeWay ?? during?.sets.at(-1)?.exercise ?? during?.asked.exercise;
  return id === undefined ? undefined : catalogue.exercises.get(id);
}

function painReason(input: ProgressInput, hurt: HurtRecord): Reason {
  const data: Record<string, Json> = {
    where: hurt.where,
    howMuch: hurt.howMuch,
    on: printDay(input.dayOf(hurt.at)),
    exercise: formOf(input, hurt)?.id ?? null,
    hurt: hurt.id,
  };
  return reason("progress/pain", data);
}

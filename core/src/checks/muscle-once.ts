import { workOf } from "../measures/index.ts";
import type { Catalogue, Muscle, Slot } from "../model/index.ts";
import { freeKeys } from "./cures/new-slot.ts";
import type { Change } from "./run/change.ts";
import type { Check, Cure, Facts, Found } from "./run/check.ts";
import type { AskedWeek, Look } from "./run/look.ts";
import { pathOf, phasePath, type SlotPlace, sessionPath } from "./run/walk.ts";

type Data = Facts & { readonly phase: string; readonly title: string };

/** Great muscles that are wanted twice a week. Source: acsm2026 ("all major muscles"); which they are is ours. */
const MAJOR: readonly Muscle[] = [
  "chest",
  "front shoulder",
  "lats",
  "mid back",
  "biceps",
  "triceps",
  "buttocks",
  "front thigh",
  "back thigh",
];
/** A session trains a muscle when it gives it a whole fractional set. Ours, no source. */
const TRAINED_QUARTERS = 4;
/** A slot is not split into fewer sets than one and one. */
const FEWEST_TO_SPLIT = 2;

interface Once {
  readonly muscle: Muscle;
  readonly session: number;
  readonly sets: number;
}

/** Muscles that some slot is for and that one session of the week alone trains. */
function trainedOnce(week: AskedWeek, catalogue: Catalogue): readonly Once[] {
  const { sessions } = week;
  const bySession = week.bySession();
  return MAJOR.flatMap((muscle): readonly Once[] => {
    const days = bySession.flatMap((got, session) => ((got[muscle] ?? 0) >= TRAINED_QUARTERS ? [session] : []));
    const [session] = days;
    if (days.length !== 1 || session === undefined) return [];
    const isFor = workOf(sessions[session]!).some(
      ({ exercise }) => catalogue.exercises.get(exercise)?.muscles[muscle] === 1,
    );
    return isFor ? [{ muscle, session, sets: (bySession[session]![muscle] ?? 0) / 4 }] : [];
  });
}

/** One slot for each muscle, the one with most sets, as few slots as will do; undefined where none can be split. */
function slotsToSplit(look: Look, phaseAt: number, once: readonly Once[]): readonly SlotPlace[] | undefined {
  const chosen: SlotPlace[] = [];
  for (const { muscle, session } of once) {
    const drives = ({ slot }: SlotPlace) => look.catalogue.exercises.get(slot.first)?.muscles[muscle] === 1;
    if (chosen.some(drives)) continue;
    const able = look.slots.filter(
      (place) =>
        place.phaseAt === phaseAt &&
        place.sessionAt === session &&
        "slot" in place.block &&
        place.slot.changes === undefined &&
        place.slot.dose.sets.length >= FEWEST_TO_SPLIT &&
        drives(place),
    );
    const [most] = able.sort((a, b) => b.slot.dose.sets.length - a.slot.dose.sets.length);
    if (most === undefined) return undefined;
    chosen.push(most);
  }
  return chosen;
}

/** The later half of each slot's sets done in another session; every other session is tried as that one. */
function spreadCures(look: Look, phaseAt: number, once: readonly Once[]): readonly Cure[] {
  const slots = slotsToSplit(look, phaseAt, once);
  if (slots === undefined) return [];
  const { sessions } = look.programme.phases[phaseAt]!;
  const keys = freeKeys(
    look.programme,
    slots.map(({ slot }) => slot.slot),
  );
  const others = sessions.map((_, index) => index).filter((index) => slots.some((place) => place.sessionAt !== index));
  return others.map((target): Cure => {
    const changes = slots.flatMap((place, index): readonly Change[] => {
      // Where the target is the slot's own session, its other half goes to the next one.
      const to = place.sessionAt === target ? (target + 1) % sessions.length : target;
      const { dose } = place.slot;
      const kept = Math.ceil(dose.sets.length / 2);
      const other: Slot = { ...place.slot, slot: keys[index]!, dose: { ...dose, sets: dose.sets.slice(kept) } };
      const at = [...sessionPath(phaseAt, to), "work", sessions[to]!.work.length];
      return [
        { op: "set", at: [...pathOf(place), "dose"], value: { ...dose, sets: dose.sets.slice(0, kept) } },
        { op: "insert", at, value: other },
      ];
    });
    const names = slots.map(({ slot }) => look.catalogue.exercises.get(slot.first)?.name ?? slot.first);
    return { id: "over-two-sessions", group: "over-two-sessions", data: { names }, changes };
  });
}

/**
 * Great muscles that one session of the week alone trains. Twice a week is advised for all of them; where the weekly
 * sets are the same, no effect on size was found, so it is a matter of strength, of soreness and of days missed.
 *
 * The remedy moves half of a slot's sets to another session.
 */
export const muscleOnce: Check<"week/muscle-once", Data> = {
  id: "week/muscle-once",
  severity: "warn",
  sources: ["acsm2026", "schoenfeld2019frequency", "ours"],
  run(look) {
    return look.programme.phases.flatMap((phase, phaseAt): readonly Found<Data>[] => {
      const week = look.weeks[phaseAt]!.find(({ light }) => !light);
      // With an exercise that nobody knows the count is short, so "only once" cannot be told.
      if (week === undefined || week.sets.unknown.length > 0) return [];
      const once = trainedOnce(week, look.catalogue);
      if (once.length === 0) return [];
      const muscles = once.map(({ muscle, session, sets }) => {
        return { muscle, session: phase.sessions[session]!.title, sets: look.unsaid === undefined ? sets : null };
      });
      return [
        {
          at: phasePath(phaseAt),
          data: { phase: phase.key, title: phase.title, muscles },
          cures: () => spreadCures(look, phaseAt, once),
        },
      ];
    });
  },
};

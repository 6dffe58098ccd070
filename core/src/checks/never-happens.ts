import type { Phase, Slot } from "../model/index.ts";
import type { Check, Cure, Facts, Found } from "./run/check.ts";
import type { Look } from "./run/look.ts";
import { aboutPlace, pathOf, phasePath } from "./run/walk.ts";
import { sessionsAWeek } from "./training-days.ts";

type Data = Facts & {
  readonly phase: string;
  readonly title: string;
  readonly side: "session" | "full week" | "change";
};

/**
 * Whether a session has its turn in the weeks from one to another, 1 = first, when the sessions of a phase go in turn
 * over fewer days.
 */
function hasTurn(phase: Phase, sessionAt: number, perWeek: number, from = 1, to = phase.weeks): boolean {
  const count = phase.sessions.length;
  const size = Math.min(perWeek, count);
  for (let week = from; week <= to; week++) {
    const after = (sessionAt - (week - 1) * size) % count;
    if ((after + count) % count < size) return true;
  }
  return false;
}

/** A phase of which every week is light: its full doses are never asked for. */
function withoutFullWeek(look: Look): readonly Found<Data>[] {
  return look.programme.phases.flatMap((phase, phaseAt): readonly Found<Data>[] => {
    const light = phase.light ?? [];
    if (!Array.from({ length: phase.weeks }, (_, week) => week + 1).every((week) => light.includes(week))) return [];
    const at = phasePath(phaseAt);
    const cures = (): readonly Cure[] =>
      light.map((week, index) => ({
        id: "drop-light",
        group: "drop-light",
        data: { week },
        changes: [{ op: "remove", at: light.length > 1 ? [...at, "light", index] : [...at, "light"] }],
      }));
    return [{ at, data: { phase: phase.key, title: phase.title, side: "full week", weeks: phase.weeks }, cures }];
  });
}

/** Sessions that have no turn in their phase, with so few days a week. */
function withoutTurn(look: Look, perWeek: number): readonly Found<Data>[] {
  return look.programme.phases.flatMap((phase, phaseAt): readonly Found<Data>[] => {
    if (perWeek >= phase.sessions.length) return [];
    const never = phase.sessions.filter((_, sessionAt) => !hasTurn(phase, sessionAt, perWeek));
    if (never.length === 0) return [];
    const about = { phase: phase.key, title: phase.title, side: "session" } as const;
    return [
      {
        at: [...phasePath(phaseAt), "sessions", phase.sessions.indexOf(never[0]!)],
        data: { ...about, sessions: never.map(({ title }) => title), perWeek, weeks: phase.weeks },
      },
    ];
  });
}

function lastWeekOf({ changes = [] }: Slot, index: number, weeks: number): number {
  return (changes[index + 1]?.week ?? weeks + 1) - 1;
}

/** Changes of a dose in weeks in which their session has no turn. */
function withoutChange(look: Look, perWeek: number): readonly Found<Data>[] {
  return look.slots.flatMap((place): readonly Found<Data>[] => {
    const { phase, slot, sessionAt } = place;
    if (slot.changes === undefined || perWeek >= phase.sessions.length) return [];
    // Of a session that never has its turn all is said already.
    if (!hasTurn(phase, sessionAt, perWeek)) return [];
    return slot.changes.flatMap(({ week }, index): readonly Found<Data>[] => {
      const last = lastWeekOf(slot, index, phase.weeks);
      if (hasTurn(phase, sessionAt, perWeek, week, last)) return [];
      const name = look.catalogue.exercises.get(slot.first)?.name ?? slot.first;
      const about = { ...aboutPlace(place), phase: phase.key, title: phase.title, side: "change" } as const;
      return [{ at: [...pathOf(place), "changes", index], data: { ...about, name, fromWeek: week, last, perWeek } }];
    });
  });
}

/**
 * What a programme writes and nobody does: a phase of light weeks only; sessions that have no turn, and changes of a
 * dose in weeks in which their session has none, when there are fewer days than sessions. The days are those of the
 * person where one is given, else seven, one session a day.
 *
 * The remedy makes one of the light weeks a full one.
 */
export const neverHappens: Check<"phase/never-happens", Data> = {
  id: "phase/never-happens",
  severity: "warn",
  sources: ["ours"],
  run(look) {
    const perWeek = sessionsAWeek(look.person);
    if (perWeek === 0) return withoutFullWeek(look);
    return [...withoutFullWeek(look), ...withoutTurn(look, perWeek), ...withoutChange(look, perWeek)];
  },
};

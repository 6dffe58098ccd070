import type { Day } from "../day.ts";
import { type Occurrence, type RecordFold, runsIn, slotsIn } from "../measures/index.ts";
import { type ExerciseId, nameKey, type PlanSlot } from "../model/index.ts";

/** A session of a plan on its planned day. */
export interface PlannedDay {
  readonly occurrence: Occurrence;
  readonly day: Day;
  /** Wall minutes after midnight. */
  readonly from: number;
}

/** What a row names of a session: the key of a slot, or a movement, or neither. */
export interface Named {
  readonly slot?: string;
  readonly movement?: ExerciseId;
}

export type VisitPlace =
  | { readonly kind: "found"; readonly planned: PlannedDay }
  | { readonly kind: "none" }
  /** Several fit as well. */
  | { readonly kind: "several"; readonly maybe: readonly string[] };

/** A session is looked for on so many days around that of the visit. Ours, no source. */
const REACH_DAYS = 6;
/** How well a movement fits: it is what was asked; it is among what the slot offers. */
const ASKED = 2;
const OFFERED = 1;

/**
 * The slot of a session that a row is about: that of its key, else the first that asks for the movement, else the
 * first that offers it; runs come after them. Slots that rows before have taken come last.
 */
export function slotFor(
  { session }: Occurrence,
  { slot, movement }: Named,
  used: ReadonlySet<string>,
): PlanSlot | undefined {
  const slots = [...slotsIn(session), ...runsIn(session).map((run) => run.slot)];
  if (slot !== undefined) return slots.find(({ key }) => key === slot);
  const fits = [
    slots.filter(({ exercise }) => exercise === movement),
    slots.filter(({ offer }) => movement !== undefined && offer.includes(movement)),
  ].map((each) => [...each].sort((a, b) => Number(used.has(a.key)) - Number(used.has(b.key))));
  return fits[0]![0] ?? fits[1]![0];
}

function scoreOf(occurrence: Occurrence, rows: readonly Named[]): number {
  const used = new Set<string>();
  return rows.reduce((sum, row) => {
    const slot = slotFor(occurrence, row, used);
    if (slot === undefined) return sum;
    used.add(slot.key);
    return sum + (row.movement === undefined || slot.exercise === row.movement ? ASKED : OFFERED);
  }, 0);
}

function isNamed({ id, session }: Occurrence, text: string): boolean {
  return id === text || session.key === text || nameKey(session.title) === nameKey(text);
}

/**
 * The session of the plan that somebody did on a day: the one that has most of the movements, among these the one whose
 * planned day is nearest. One that was recorded on another day is done already. Without movements it is the one
 * planned on that very day.
 *
 * @param text what the file calls the session; empty where it does not
 * @param rows what was done, movement by movement
 */
export function placeVisit(
  days: readonly PlannedDay[],
  recorded: ReadonlyMap<string, Day>,
  { day, text, rows }: { readonly day: Day; readonly text: string; readonly rows: readonly Named[] },
): VisitPlace {
  const reach = rows.length > 0 || text !== "" ? REACH_DAYS : 0;
  const near = days
    .filter((one) => Math.abs(one.day - day) <= reach || recorded.get(one.occurrence.id) === day)
    .filter(({ occurrence }) => (recorded.get(occurrence.id) ?? day) === day)
    .filter(({ occurrence }) => text === "" || isNamed(occurrence, text))
    .map((planned) => ({
      planned,
      score: scoreOf(planned.occurrence, rows),
      away: recorded.has(planned.occurrence.id) ? -1 : Math.abs(planned.day - day),
    }));
  const most = Math.max(0, ...near.map(({ score }) => score));
  if (rows.length > 0 && most === 0 && text === "") return { kind: "none" };
  const best = near.filter(({ score }) => score === most);
  const least = Math.min(...best.map(({ away }) => away));
  const [first, ...more] = best.filter(({ away }) => away === least);
  if (first === undefined) return { kind: "none" };
  if (more.length > 0) return { kind: "several", maybe: [first, ...more].map(({ planned }) => planned.occurrence.id) };
  return { kind: "found", planned: first.planned };
}

/** @returns the day of each session of which something was recorded */
export function recordedDays({ sessions }: RecordFold, dayOf: (at: number) => Day): ReadonlyMap<string, Day> {
  return new Map(sessions.map(({ session, at }) => [session, dayOf(at)]));
}

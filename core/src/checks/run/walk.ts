import { conditioningDose } from "../../measures/index.ts";
import {
  type Block,
  type Dose,
  type ExerciseId,
  type Path,
  type Phase,
  type Programme,
  type Session,
  type Slot,
  slotsOf,
} from "../../model/index.ts";
import type { Facts } from "./check.ts";

/** A session with the positions of it and its phase. Paths are made only when something is found. */
interface InSession {
  readonly phase: Phase;
  readonly session: Session;
  readonly phaseAt: number;
  readonly sessionAt: number;
}

/** A slot with where it stands. */
export interface SlotPlace extends InSession {
  readonly slot: Slot;
  readonly block: Block;
  readonly blockAt: number;
  /** Position within its pair or round. */
  readonly turn: number;
}

/** What is done before or after the work. */
export interface ItemPlace extends InSession {
  readonly exercise: ExerciseId;
  readonly others: readonly ExerciseId[];
  readonly dose: Dose;
  readonly list: "warmup" | "conditioning";
  readonly itemAt: number;
}

/** A dose that somebody wrote: of a slot, of a change within the phase, of the warm-up or the conditioning. */
export interface DosePlace {
  readonly dose: Dose;
  readonly exercise: ExerciseId;
  readonly of: SlotPlace | ItemPlace;
  /** Which of the slot's changes it is. */
  readonly change?: number;
}

export function phasePath(phaseIndex: number): Path {
  return ["phases", phaseIndex];
}

export function sessionPath(phaseIndex: number, sessionIndex: number): Path {
  return ["phases", phaseIndex, "sessions", sessionIndex];
}

/** @returns the path of each slot of a block, in the order they are done */
export function slotPaths(block: Block, blockAt: Path): readonly Path[] {
  if ("pair" in block) return block.pair.map((_, index) => [...blockAt, "pair", index]);
  if ("round" in block) return block.round.map((_, index) => [...blockAt, "round", index]);
  return [blockAt];
}

/** @returns the path of a slot or an item */
export function pathOf(place: SlotPlace | ItemPlace): Path {
  const session = sessionPath(place.phaseAt, place.sessionAt);
  if ("list" in place) return [...session, place.list, place.itemAt];
  return slotPaths(place.block, [...session, "work", place.blockAt])[place.turn]!;
}

/** @returns the path of a dose itself */
export function pathOfDose({ of, change }: DosePlace): Path {
  return [...pathOf(of), ...(change === undefined ? [] : ["changes", change]), "dose"];
}

/** @returns what a finding at a slot or an item is about */
export function aboutPlace(place: SlotPlace | ItemPlace): Facts {
  const { phase, session } = place;
  const what = "list" in place ? { item: `${place.list} ${place.itemAt + 1}` } : { slot: place.slot.slot };
  return { phase: phase.key, session: session.key, ...what };
}

/** @returns what a finding at a dose is about, with the week from which it holds where it is a change */
export function aboutDose({ of, change, exercise }: DosePlace): Facts {
  const fromWeek = "list" in of || change === undefined ? {} : { fromWeek: of.slot.changes![change]!.week };
  return { ...aboutPlace(of), ...fromWeek, exercise };
}

/** @returns every slot of a programme, in the order of the file */
export function slotPlaces(programme: Programme): readonly SlotPlace[] {
  const places: SlotPlace[] = [];
  programme.phases.forEach((phase, phaseAt) => {
    phase.sessions.forEach((session, sessionAt) => {
      session.work.forEach((block, blockAt) => {
        slotsOf(block).forEach((slot, turn) => {
          places.push({ phase, session, phaseAt, sessionAt, slot, block, blockAt, turn });
        });
      });
    });
  });
  return places;
}

/** @returns what is done before and after the work, in the order of the file; lighter sets before a slot left out */
export function itemPlaces(programme: Programme): readonly ItemPlace[] {
  const places: ItemPlace[] = [];
  programme.phases.forEach((phase, phaseAt) => {
    phase.sessions.forEach((session, sessionAt) => {
      for (const list of ["warmup", "conditioning"] as const) {
        (session[list] ?? []).forEach((item, itemAt) => {
          if (!("do" in item)) return;
          const { do: exercise, or: others = [] } = item;
          const dose = "dose" in item ? item.dose : conditioningDose(item);
          places.push({ phase, session, phaseAt, sessionAt, exercise, others, dose, list, itemAt });
        });
      }
    });
  });
  return places;
}

/** @returns every dose of slots: of each the first, then its changes within the phase */
export function dosesOfSlots(slots: readonly SlotPlace[]): readonly DosePlace[] {
  const places: DosePlace[] = [];
  for (const of of slots) {
    const exercise = of.slot.first;
    places.push({ dose: of.slot.dose, exercise, of });
    (of.slot.changes ?? []).forEach(({ dose }, change) => {
      places.push({ dose, exercise, of, change });
    });
  }
  return places;
}

import {
  type Block,
  type Dose,
  type ExerciseId,
  type Path,
  type Phase,
  type Programme,
  type Session,
  type Slot,
  type SlotKey,
  slotsOf,
} from "../../model/index.ts";

/** A slot with where it stands. */
export interface SlotPlace {
  readonly slot: Slot;
  readonly at: Path;
  readonly block: Block;
  readonly session: Session;
  readonly phase: Phase;
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

/** @returns every slot of a programme, in the order of the file */
export function slotPlaces(programme: Programme): readonly SlotPlace[] {
  return programme.phases.flatMap((phase, p) =>
    phase.sessions.flatMap((session, s) =>
      session.work.flatMap((block, b) => {
        const paths = slotPaths(block, [...sessionPath(p, s), "work", b]);
        return slotsOf(block).map((slot, i) => ({ slot, at: paths[i]!, block, session, phase }));
      }),
    ),
  );
}

/** A dose that somebody wrote, with the exercise it is for. */
export interface DosePlace {
  readonly dose: Dose;
  readonly exercise: ExerciseId;
  /** Path of the dose itself. */
  readonly at: Path;
  readonly phase: string;
  readonly session: string;
  readonly slot?: SlotKey;
  /** Which item of the warm-up or conditioning, where it is no slot. */
  readonly item?: string;
  /** The week from which it holds, where it is a change within the phase. */
  readonly fromWeek?: number;
}

/** @returns a slot's doses: the first, then every change within the phase */
export function slotDoses(place: SlotPlace): readonly DosePlace[] {
  const { slot, at, phase, session } = place;
  const about = { exercise: slot.first, phase: phase.key, session: session.key, slot: slot.slot };
  return [
    { ...about, dose: slot.dose, at: [...at, "dose"] },
    ...(slot.changes ?? []).map((change, index) => ({
      ...about,
      dose: change.dose,
      at: [...at, "changes", index, "dose"],
      fromWeek: change.week,
    })),
  ];
}

/** A dose or exercise of the warm-up or the conditioning. */
export interface ItemPlace {
  readonly exercise: ExerciseId;
  readonly others: readonly ExerciseId[];
  readonly dose: Dose;
  readonly at: Path;
  readonly phase: string;
  readonly session: string;
  /** Which of the session's items it is. */
  readonly item: string;
}

/** @returns what is done before and after the work, in the order of the file; lighter sets before a slot left out */
export function itemPlaces(programme: Programme): readonly ItemPlace[] {
  return programme.phases.flatMap((phase, p) =>
    phase.sessions.flatMap((session, s) => {
      const lists = { warmup: session.warmup ?? [], conditioning: session.conditioning ?? [] };
      return (["warmup", "conditioning"] as const).flatMap((name) =>
        lists[name].flatMap((item, i): readonly ItemPlace[] => {
          if (!("do" in item)) return [];
          const at = [...sessionPath(p, s), name, i];
          const others = item.or ?? [];
          const about = { phase: phase.key, session: session.key, item: `${name} ${i + 1}` };
          return [{ exercise: item.do, others, dose: item.dose, at, ...about }];
        }),
      );
    }),
  );
}

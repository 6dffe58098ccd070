import {
  type Catalogue,
  type Exercise,
  type PlanSession,
  type PlanSlot,
  printDose,
  printSeconds,
} from "../model/index.ts";
import type { Messages } from "../text/index.ts";
import type { MassUnit } from "../units.ts";
import { afterDose, doseChange, easyDose, slotDose } from "./dose-words.ts";
import { loadLine, loadWords } from "./load-line.ts";
import type { Column } from "./sheet-columns.ts";
import type { SheetCell, SheetRow } from "./sheet-types.ts";

/** What every row needs besides its own data. */
export interface RowContext {
  readonly catalogue: Catalogue;
  readonly units: MassUnit;
  readonly words: Messages;
}

type Block = PlanSession["blocks"][number];

const NOTHING: SheetCell = { dose: null, load: null, boxes: 0, split: false };

function exerciseOf(catalogue: Catalogue, id: string): Exercise {
  const exercise = catalogue.exercises.get(id);
  if (exercise === undefined) throw new RangeError(`Cannot print a plan as the catalogue must know ${id}`);
  return exercise;
}

function slotIn(session: PlanSession, key: string): PlanSlot | undefined {
  return session.blocks.flatMap((block) => block.slots).find((slot) => slot.key === key);
}

function cellOf(context: RowContext, exercise: Exercise, first: PlanSlot, now: PlanSlot | undefined): SheetCell {
  if (now === undefined) return NOTHING;
  return {
    dose: doseChange(first, now),
    load: loadLine(exercise, now, context.units, context.words),
    boxes: now.dose.sets.length,
    split: now.side === undefined && now.dose.sets.some((set) => set.eachSide),
  };
}

/** What is left of a pair when its other slot stays open is done by itself, and the rest of the pair is its own. */
function alone({ restS, slots }: Block): PlanSlot {
  const slot = slots[0]!;
  const { restS: own = restS, ...dose } = slot.dose;
  return { ...slot, dose: { ...dose, ...(own === undefined ? {} : { restS: own }) } };
}

/** The rows of one block, in the order in which they are done. */
export function blockRows(context: RowContext, block: Block, columns: readonly Column[]): readonly SheetRow[] {
  const { sheet } = context.words;
  const inTurn = block.kind !== "straight" && block.slots.length > 1;
  const rest = block.restS === undefined ? sheet.inTurn : sheet.inTurnResting(printSeconds(block.restS));
  return block.slots.map((slot, index): SheetRow => {
    const exercise = exerciseOf(context.catalogue, slot.exercise);
    const place = index === 0 ? "first" : index === block.slots.length - 1 ? "last" : "middle";
    return {
      name: exercise.name,
      dose: slotDose(block.kind === "straight" || inTurn ? slot : alone(block), context.words),
      note: exercise.cues[0],
      turn: inTurn ? place : "alone",
      above: inTurn && index === 0 ? rest : null,
      cells: columns.map(({ session }) => cellOf(context, exercise, slot, slotIn(session, slot.key))),
    };
  });
}

/** Easy work first, then a sentence for the lighter sets that lead up to a movement; over all weeks, without boxes. */
export function warmUpRows(context: RowContext, session: PlanSession): readonly SheetRow[] {
  const { catalogue, units, words } = context;
  const { sheet } = words;
  const easy = session.warmup.filter((item) => item.for === undefined);
  const led = new Set(session.warmup.flatMap((item) => item.for ?? []));
  const lines = [...led].map((key) => {
    const items = session.warmup.filter((item) => item.for === key);
    const exercise = exerciseOf(catalogue, items[0]!.exercise);
    const loads = items.flatMap(({ load }) => (load === undefined ? [] : [loadWords(exercise, load, units, words)]));
    const [set] = items[0]!.dose.sets;
    const reps = easyDose({ sets: [set!] });
    const count = items.reduce((sum, { dose }) => sum + dose.sets.length, 0);
    return loads.length > 0
      ? sheet.lighter(exercise.name, reps, loads)
      : sheet.lighterUnsaid(exercise.name, count, reps);
  });
  if (easy.length === 0 && lines.length === 0) return [];
  const items = easy.map(({ exercise, dose }) => `${exerciseOf(catalogue, exercise).name}, ${easyDose(dose)}`);
  const note = [...(easy.length === 0 ? [] : [sheet.efforts.easy]), ...lines].join(" ");
  return [{ name: sheet.warmUp, dose: sheet.and(items), note, turn: "alone", above: null, cells: [] }];
}

/** How hard, in words that need no watch; the beats after them, where there are any. */
function effortNote({ effort, pulse }: PlanSession["conditioning"][number], { sheet }: Messages): string {
  return pulse === undefined ? sheet.efforts[effort] : `${sheet.efforts[effort]} ${sheet.beats(pulse)}`;
}

/** Conditioning, with a blank for what was done. */
export function conditioningRows({ catalogue, words }: RowContext, columns: readonly Column[]): readonly SheetRow[] {
  return columns[0]!.session.conditioning.map((item, at): SheetRow => {
    const first = printDose(item.dose);
    return {
      name: exerciseOf(catalogue, item.exercise).name,
      dose: afterDose(item, words),
      note: effortNote(item, words),
      turn: "alone",
      above: null,
      cells: columns.map(({ session }) => {
        const now = session.conditioning[at];
        if (now === undefined) return NOTHING;
        const dose = printDose(now.dose) === first ? null : afterDose(now, words);
        const label = item.run === undefined ? words.sheet.done : words.sheet.runEnded;
        return { dose, load: { label, text: "" }, boxes: 0, split: false };
      }),
    };
  });
}

import {
  type Catalogue,
  canonicalJson,
  type Plan,
  type PlanSession,
  type PlanSlot,
  printDose,
} from "@stave/core/model";
import { afterDose, loadLine } from "@stave/core/report";
import { cautionNotes, en, namesFrom, sayReason } from "@stave/core/text";
import type { MassUnit } from "@stave/core/units";
import { planTable } from "../documents/table/index.ts";
import { type Answer, failed, type Io } from "./answer.ts";
import { type PeopleOptions, type Planned, readPlans, unserved } from "./plans.ts";
import { type OutFile, writeFiles } from "./write-files.ts";

export interface FitOptions extends PeopleOptions {
  readonly out?: string;
  readonly reasons?: boolean;
}

/** A slot in one line: its movement, dose and load. */
export function slotWords(slot: PlanSlot, units: MassUnit, catalogue: Catalogue): string {
  const { label, text } = loadLine(catalogue.exercises.get(slot.exercise)!, slot, units);
  const load = label === null ? [] : [label === en.sheet.load ? text : `${text} (${label})`];
  const side = slot.side === undefined ? [] : [en.sheet.oneSide(slot.side)];
  return `${namesFrom(catalogue).exercise(slot.exercise)}: ${en.sheet.and([printDose(slot.dose), ...side, ...load])}`;
}

function sessionWords(session: PlanSession, units: MassUnit, reasons: boolean, catalogue: Catalogue): string[] {
  const names = namesFrom(catalogue);
  const minutes = `${session.minutes.low}–${session.minutes.high} min`;
  const slots = session.blocks.flatMap((block) =>
    block.slots.flatMap((slot, index) => {
      const turn = block.kind === "straight" ? " " : index === 0 ? "┌" : index === block.slots.length - 1 ? "└" : "│";
      const line = `   ${turn} ${slotWords(slot, units, catalogue)}`;
      return reasons ? [line, ...slot.why.map((reason) => `         ${sayReason(reason, names)}`)] : [line];
    }),
  );
  const open = session.open.map(
    ({ key, why }) => `     open: ${key}. ${why.map((reason) => sayReason(reason, names)).join(" ")}`,
  );
  const easy = session.conditioning.map(
    (item) =>
      `     ${names.exercise(item.exercise)}: ${afterDose(item)}, ${item.effort}${item.pulse === undefined ? "" : `, ${en.sheet.beats(item.pulse)}`}`,
  );
  return [`  Session ${session.title}, ${minutes}`, ...slots, ...open, ...easy];
}

/** A plan in words: its notes, and the first week of each phase. */
export function planWords({ person, programme, plan, catalogue }: Planned, reasons: boolean): string {
  const head = `${person.name} (${person.id}): ${programme.programme.title}`;
  const notes = plan.notes.map((note) => `  ${sayReason(note, namesFrom(catalogue))}`);
  const cautions = person.cautions.flatMap(({ statement }) => {
    if (statement === undefined) return [];
    const { act, ask } = cautionNotes[statement];
    return [`  Mind ${en.words.statements[statement]}: ${act}. Ask: ${ask}.`];
  });
  const phases = plan.phases.flatMap((phase) => {
    const { must, want, bound, proven } = phase.score;
    const value = proven ? `${want} points, proven best` : `${want} points, at most ${bound} possible, not proven`;
    const open = must === 0 ? "" : `, ${must} must points missing`;
    return [
      `  ${phase.title}, ${phase.weeks.length} weeks (${value}${open})`,
      ...phase.weeks[0]!.sessions.flatMap((session) => sessionWords(session, person.units, reasons, catalogue)),
    ];
  });
  return [head, ...notes, ...cautions, ...phases].join("\n");
}

/** Files of a plan: the whole of it as canonical JSON, and as a table. */
export function planFiles({ person, programme, plan, catalogue }: Planned): readonly OutFile[] {
  return [
    { path: `${person.id}/plan.json`, content: `${canonicalJson(plan)}\n` },
    {
      path: `${person.id}/plan.csv`,
      content: planTable({ plan, person, programme: programme.programme, catalogue }),
    },
  ];
}

export function progress(io: Io): (done: number, all: number) => void {
  return (done, all) => io.err(`fitted ${done} of ${all}${done === all ? "\n" : "\r"}`);
}

/** Fits programmes to the people of a roster. */
export async function fit(paths: readonly string[], options: FitOptions, io: Io): Promise<Answer> {
  const command = "fit";
  const read = await readPlans(paths, options, io.today, progress(io));
  if (!read.ok) return failed(command, read.problems);
  const { plans, without } = read.value;
  const files = options.out === undefined ? { written: [] } : await writeFiles(options.out, plans.flatMap(planFiles));
  if ("problem" in files) return failed(command, [files.problem]);
  const result = {
    plans: plans.map(({ plan }): Plan => plan),
    without: without.map(({ id, programme }) => ({ person: id, programme: programme ?? null })),
    files: files.written,
  };
  const words = [
    ...plans.map((planned) => planWords(planned, options.reasons ?? false)),
    ...(without.length === 0 ? [] : [`No programme here for: ${without.map(({ name }) => name).join(", ")}.`]),
    ...files.written.map(({ path }) => `wrote ${path}`),
  ];
  return { command, result, findings: [], problems: unserved(read.value), words: `${words.join("\n\n")}\n` };
}

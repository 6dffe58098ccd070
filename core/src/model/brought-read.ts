import type { Path, Read } from "./finding.ts";
import { type ProgrammeText, readProgramme } from "./programme-read.ts";
import { programmeSchema } from "./programme-schema.ts";
import { readYaml } from "./yaml-text.ts";

/** A plan that somebody brings, with the slots of which nobody wrote how much is asked. */
export interface BroughtProgramme extends ProgrammeText {
  readonly unsaid: readonly Path[];
}

/** Stands for a dose that nobody said, so that the rest of the plan can be read. Nothing is judged by it. */
const STAND_IN = "3 × 10";

/**
 * Reads a programme as `readProgramme` does, and also where nothing is wrong with it but missing doses of slots: then
 * these are told apart, so that what needs no dose can still be said.
 *
 * @param text YAML 1.2
 * @param file its name, for the problems
 */
export function readBrought(text: string, file: string): Read<BroughtProgramme> {
  const read = readProgramme(text, file);
  if (read.ok) return { ...read, value: { ...read.value, unsaid: [] } };
  const missing = read.problems.filter(({ code, at }) => code === "key/missing" && isSlotDose(at));
  if (missing.length < read.problems.length) return read;
  const unsaid = missing.map(({ at }) => at.slice(0, -1));
  const filled = readYaml(text, file, programmeSchema, (value) =>
    unsaid.reduce((all, path) => withDose(all, path), value),
  );
  if (!filled.ok) return read;
  const { value: programme, positions } = filled.value;
  return { ok: true, value: { programme, positions, text, unsaid }, problems: [] };
}

function isSlotDose(at: Path): boolean {
  return at.at(-1) === "dose" && at.includes("work");
}

function withDose(value: unknown, [step, ...rest]: Path): unknown {
  if (step === undefined) return { ...(value as object), dose: STAND_IN };
  if (Array.isArray(value)) return value.map((each, i) => (i === step ? withDose(each, rest) : each));
  const entry = value as Readonly<Record<string, unknown>>;
  return { ...entry, [step]: withDose(entry[step], rest) };
}

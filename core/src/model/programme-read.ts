import type { Read } from "./finding.ts";
import type { Programme } from "./programme.ts";
import { programmeSchema } from "./programme-schema.ts";
import { type Positions, readYaml } from "./yaml-text.ts";

/** A programme with the text that it was read from and the place of every part of it. */
export interface ProgrammeText {
  readonly programme: Programme;
  readonly positions: Positions;
  readonly text: string;
}

/**
 * Reads a programme file.
 *
 * @param text YAML 1.2
 * @param file its name, for the problems
 * @returns the programme, or all problems of the file with line, column, what was found, what is allowed, a likely cure
 */
export function readProgramme(text: string, file: string): Read<ProgrammeText> {
  const read = readYaml(text, file, programmeSchema);
  if (!read.ok) return read;
  const { value: programme, positions } = read.value;
  return { ok: true, value: { programme, positions, text }, problems: read.problems };
}

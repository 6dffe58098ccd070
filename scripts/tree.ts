/** Files of the project, as the checkers and generators see them. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join, sep } from "node:path";

export interface SourceFile {
  /** Path from the top of the project, with forward slashes. */
  readonly path: string;
  readonly text: string;
}

/** @returns every TypeScript file below a folder, in a stated order; none when the folder is not there */
export function filesBelow(folder: string): readonly SourceFile[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => join(folder, name).split(sep).join("/"))
    .sort()
    .map((path) => ({ path, text: readFileSync(path, "utf8") }));
}

import { CATALOGUE, readOwnExercises } from "@stave/core/exercises";
import type { Catalogue } from "@stave/core/model";
import { readInput } from "./read-input.ts";
import type { Got } from "./world.ts";

/** The catalogue, with a coach's own exercises after it where a file of them is named. */
export async function readCatalogue(file: string | undefined): Promise<Got<Catalogue>> {
  if (file === undefined) return { ok: true, value: CATALOGUE };
  const input = await readInput(file);
  return input.ok ? readOwnExercises(input.value, file) : input;
}

import type { Json } from "../model/index.ts";

/** Data of a finding, a remedy or a reason, as the sentence finds them. */
export type Data = Readonly<Record<string, Json>>;

/** Written where a fact is missing, so that a sentence never shows a word of the machine. */
export const MISSING = "?";

/** @returns the fact as words, MISSING when there is none */
export function said(data: Data, name: string): string {
  const value = data[name];
  return typeof value === "string" || typeof value === "number" || typeof value === "boolean" ? String(value) : MISSING;
}

/** @returns the fact as a number, NaN when it is none */
export function numberIn(data: Data, name: string): number {
  const value = data[name];
  return typeof value === "number" ? value : Number.NaN;
}

/** @returns the fact as a list; a single value is a list of one, nothing an empty one */
export function listIn(data: Data, name: string): readonly Json[] {
  const value = data[name];
  if (value === undefined || value === null) return [];
  return Array.isArray(value) ? value : [value as Json];
}

export function wordsIn(data: Data, name: string): readonly string[] {
  return listIn(data, name).map(String);
}

export function numbersIn(data: Data, name: string): readonly number[] {
  return listIn(data, name).map(Number);
}

/** @returns the fact as data of its own, undefined when it is none */
export function dataIn(data: Data, name: string): Data | undefined {
  return asData(data[name]);
}

/** @returns the members of a list that are data of their own */
export function dataListIn(data: Data, name: string): readonly Data[] {
  return listIn(data, name)
    .map(asData)
    .filter((each) => each !== undefined);
}

function asData(value: Json | undefined): Data | undefined {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return undefined;
  return value as Data;
}

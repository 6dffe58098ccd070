import type { Load, MassUnit } from "../units.ts";
import { readLoad } from "./load-text.ts";

/** What a coach wrote for a load. A number without a unit is in the unit of its paper, which is asked once. */
export type WrittenLoad =
  | { readonly kind: "load"; readonly load: Load }
  | { readonly kind: "number"; readonly value: number }
  | { readonly kind: "body" }
  /** On top of body mass: a belt, a vest. */
  | { readonly kind: "added"; readonly value: number; readonly unit?: MassUnit }
  /** Taken off body mass: an assisted machine, a band. */
  | { readonly kind: "help"; readonly value: number; readonly unit?: MassUnit }
  /** So much in each hand. */
  | { readonly kind: "pair"; readonly each: number; readonly unit?: MassUnit }
  /** So much in plates on each side of a bar. */
  | { readonly kind: "a side"; readonly each: number; readonly unit?: MassUnit }
  /** The bar alone; what it weighs is asked once. */
  | { readonly kind: "empty bar" }
  | { readonly kind: "band"; readonly name: string }
  /** The number on a machine's stack, which belongs to that machine and is no mass. */
  | { readonly kind: "setting"; readonly value: number }
  | { readonly kind: "nothing" }
  /** Listed and asked, never turned into 0. */
  | { readonly kind: "unknown"; readonly text: string };

const LONGEST = 40;
const NUMBER = String.raw`(\d{1,5}(?:[.,]\d{1,2})?)`;
const UNIT = String.raw`\s*(kg|kgs|kilos?|lb|lbs|pounds?|#)?`;
const FORMS: readonly (readonly [RegExp, (match: RegExpExecArray) => WrittenLoad | undefined])[] = [
  [/^(?:-|–|—)?$/, () => ({ kind: "nothing" })],
  [/^(?:bw|body ?weight|body)$/i, () => ({ kind: "body" })],
  [
    new RegExp(String.raw`^(?:bw|body ?weight)?\s*([+\-−–])\s*${NUMBER}${UNIT}$`, "i"),
    ([, sign, digits, unit]) => {
      const value = numberOf(digits!);
      return value === undefined ? undefined : { kind: sign === "+" ? "added" : "help", value, ...unitOf(unit) };
    },
  ],
  [
    new RegExp(String.raw`^2\s*[x×*]\s*${NUMBER}${UNIT}$`, "i"),
    ([, digits, unit]) => {
      const each = numberOf(digits!);
      return each === undefined ? undefined : { kind: "pair", each, ...unitOf(unit) };
    },
  ],
  [
    new RegExp(String.raw`^${NUMBER}${UNIT}\s*(?:each|ea|(?:/|per |a |each )\s*(?:hand|arm))$`, "i"),
    ([, digits, unit]) => {
      const each = numberOf(digits!);
      return each === undefined ? undefined : { kind: "pair", each, ...unitOf(unit) };
    },
  ],
  [
    new RegExp(String.raw`^${NUMBER}${UNIT}\s*(?:/|per |a |each )\s*side$`, "i"),
    ([, digits, unit]) => {
      const each = numberOf(digits!);
      return each === undefined ? undefined : { kind: "a side", each, ...unitOf(unit) };
    },
  ],
  [/^(?:empty )?bar$/i, () => ({ kind: "empty bar" })],
  [/^([\p{L}]+(?: [\p{L}]+)?) band$/u, ([, name]) => ({ kind: "band", name: name!.toLowerCase() })],
  [/^band ([\p{L}\d]{1,10})$/iu, ([, name]) => ({ kind: "band", name: name!.toLowerCase() })],
  [
    /^(?:(?:plate|pin|setting|level|hole|notch) |#)(\d{1,3})$/i,
    ([, value]) => ({ kind: "setting", value: Number(value) }),
  ],
];

/** Which implement it was stands with the movement. */
const IMPLEMENT = /^(?:dbs?|kbs?|bb) | ?(?:dbs?|kbs?|bb)$/gi;

/** @returns undefined where a comma or a point may part thousands: "1.250" is asked */
function numberOf(digits: string): number | undefined {
  const read = readLoad(`${digits} kg`);
  return read.ok ? read.value.value : undefined;
}

function unitOf(unit: string | undefined): { readonly unit?: MassUnit } {
  return unit === undefined ? {} : { unit: unit.toLowerCase().startsWith("k") ? "kg" : "lb" };
}

/**
 * What a load in a coach's own shorthand means: `135lb`, `135#`, `60`, `BW+10`, `BW-20`, `2x20`, `20 each`,
 * `25/side`, `bar`, `red band`, `plate 7`, `#7`, `-`. A sum with body mass keeps its sign: what helps is not what loads.
 *
 * @param text one cell or token, at most 40 characters
 */
export function readWrittenLoad(text: string): WrittenLoad {
  const said = text.normalize("NFC").trim().replace(/\s+/g, " ").replace(IMPLEMENT, "");
  const unknown: WrittenLoad = { kind: "unknown", text: said.slice(0, LONGEST) };
  if (said.length > LONGEST) return unknown;
  for (const [form, meaning] of FORMS) {
    const match = form.exec(said);
    if (match) return meaning(match) ?? unknown;
  }
  const match = new RegExp(`^${NUMBER}${UNIT}$`, "i").exec(said);
  if (!match) return unknown;
  const { unit } = unitOf(match[2]);
  const value = numberOf(match[1]!);
  if (value === undefined) return unknown;
  return unit === undefined ? { kind: "number", value } : { kind: "load", load: { value, unit } };
}

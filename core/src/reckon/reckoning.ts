import type { About } from "../equations/index.ts";
import type { SourceId } from "../sources.ts";
import type { Load } from "../units.ts";
import type { PlatePairs, RatedMinutes } from "./load-list.ts";
import type { Dimension, Quantity } from "./quantity.ts";

/**
 * One thing that a reckoning asks for: a quantity, one word of several, bytes in pairs of hexadecimal figures, a day with its
 * hour on the wall, in minutes, or loads.
 */
export type Asked = { readonly key: string; readonly optional?: true } & (
  | { readonly dimension: Dimension }
  | { readonly of: readonly string[] }
  | { readonly mostBytes: number }
  | { readonly clock: "wall" }
  | { readonly list: "loads" | "plates" | "sessions" }
);

/** A list of loads that exist: single ones, or plates as pairs. */
export type Listed =
  | { readonly list: "loads"; readonly loads: readonly Load[] }
  | { readonly list: "plates"; readonly plates: readonly PlatePairs[] }
  | { readonly list: "sessions"; readonly sessions: readonly RatedMinutes[] };

/** What was answered, each read by what was asked; asking for another name is a slip of ours and throws. */
export interface Given {
  readonly number: (key: string) => number;
  readonly numberIf: (key: string) => number | undefined;
  /** The unit that a quantity was written in. */
  readonly unit: (key: string) => string;
  readonly word: <T extends string>(key: string) => T;
  readonly wordIf: <T extends string>(key: string) => T | undefined;
  readonly bytes: (key: string) => readonly number[];
  readonly loads: (key: string) => readonly Load[];
  readonly plates: (key: string) => readonly PlatePairs[];
  /** Sessions of a day; none where nothing was said of it. */
  readonly sessions: (key: string) => readonly RatedMinutes[];
}

/** One number or class that comes out, with the source of its formula. */
export interface Figure {
  /** Code of what it is; its words stand in text. */
  readonly what: string;
  readonly source: SourceId;
  readonly value: number | string;
  readonly unit?: string;
  readonly low?: number;
  readonly high?: number;
  /** Decimals to print. */
  readonly decimals?: number;
}

export interface Reckoning {
  readonly name: string;
  readonly asks: readonly Asked[];
  /** On whom the formulas were made and how far they miss, for what was answered. */
  readonly about: (given: Given) => readonly About[];
  /** @throws RangeError where a formula was not made for what was answered */
  readonly figures: (given: Given) => readonly Figure[];
}

/** Said where a paper's people could not be read. */
export const NOT_STATED = "not stated in what could be read";

/** @returns what was answered, by name */
export function givenBy(
  quantities: ReadonlyMap<string, Quantity>,
  words: ReadonlyMap<string, string>,
  lists: ReadonlyMap<string, Listed> = new Map(),
): Given {
  const wordIf = <T extends string>(key: string) => words.get(key) as T | undefined;
  const must = <T>(value: T | undefined, key: string): T => {
    if (value === undefined) throw new TypeError(`A reckoning wants "${key}" and does not ask for it`);
    return value;
  };
  return {
    number: (key) => must(quantities.get(key), key).value,
    numberIf: (key) => quantities.get(key)?.value,
    unit: (key) => must(quantities.get(key), key).unit,
    word: <T extends string>(key: string) => must(wordIf<T>(key), key),
    wordIf,
    bytes: (key) => (must(wordIf(key), key).match(/../g) ?? []).map((pair) => Number.parseInt(pair, 16)),
    loads: (key) => {
      const listed = must(lists.get(key), key);
      return listed.list === "loads" ? listed.loads : [];
    },
    plates: (key) => {
      const listed = must(lists.get(key), key);
      return listed.list === "plates" ? listed.plates : [];
    },
    sessions: (key) => {
      const listed = lists.get(key);
      return listed?.list === "sessions" ? listed.sessions : [];
    },
  };
}

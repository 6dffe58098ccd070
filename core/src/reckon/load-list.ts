import { readLoad, readLoadRun } from "../model/index.ts";
import { type Load, type MassUnit, massOf } from "../units.ts";

/** Plates of one kind, as pairs. */
export interface PlatePairs {
  readonly load: Load;
  readonly pairs: number;
}

const MOST_KINDS = 20;
const MOST_LOADS = 200;
/** Semicolons part, and commas with a blank behind them, so that a decimal comma stays whole. */
const PARTS = /\s*;\s*|,\s+/;
const PAIRS = /^(.*?)\s*:\s*(\d{1,2})$/;

/**
 * Plates as they are owned: `15 kg: 1; 10 kg: 2` is one pair of 15 kg and two pairs of 10 kg.
 *
 * @returns undefined where a part cannot be read; a part without a number is one pair
 */
export function readPlatePairs(text: string): readonly PlatePairs[] | undefined {
  const parts = text.trim().split(PARTS);
  if (parts.length > MOST_KINDS) return undefined;
  const plates = parts.map((part): PlatePairs | undefined => {
    const [, loadText = part, pairs = "1"] = PAIRS.exec(part) ?? [];
    const load = readLoad(loadText);
    return load.ok && load.value.value > 0 && Number(pairs) > 0
      ? { load: load.value, pairs: Number(pairs) }
      : undefined;
  });
  return plates.every((each) => each !== undefined) ? plates : undefined;
}

/**
 * Loads that exist, rising: `2; 4; 6; 8; 10 kg`, `1–10 kg by 1; 12.5 kg`. A number without a unit has that of the next
 * one that has it.
 *
 * @returns undefined where a part cannot be read or is not heavier than the one before
 */
export function readLoadList(text: string): readonly Load[] | undefined {
  const parts = text.trim().split(PARTS);
  const loads: Load[] = [];
  let unit: MassUnit | undefined;
  for (const part of parts.toReversed()) {
    const run = readLoadRun(
      /[a-z]\s*$/i.test(part) || unit === undefined || / by /.test(part) ? part : `${part} ${unit}`,
    );
    if (!run.ok || loads.length + run.value.length > MOST_LOADS) return undefined;
    unit = run.value[0]?.unit;
    const [next] = loads;
    if (next !== undefined && !(massOf(run.value.at(-1)!) < massOf(next))) return undefined;
    loads.unshift(...run.value);
  }
  return loads;
}

/** A session of so many minutes, and how hard it was; undefined: not said. */
export interface RatedMinutes {
  readonly minutes: number;
  readonly effort?: number;
}

const RATED = /^(\d{1,4}) ?(?:min)? ?(?:[x×*@]|at) ?(\d{1,2}(?:[.,]5)?|\?)(?: ?\/ ?10)?$/i;

/**
 * Sessions of one day: `60x7` is 60 minutes at 7 of 10, `60x7; 20x3` two of them, `60x?` one that nobody rated, `0` none.
 *
 * @returns undefined where a part cannot be read, lasts over a day, or is rated over 10
 */
export function readRatedMinutes(text: string): readonly RatedMinutes[] | undefined {
  if (/^(?:0|-|rest|off)$/i.test(text.trim())) return [];
  const read = text
    .trim()
    .split(PARTS)
    .map((part): RatedMinutes | undefined => {
      const [, minutes = "", effort = ""] = RATED.exec(part) ?? [];
      const rated = {
        minutes: Number(minutes),
        ...(effort === "?" ? {} : { effort: Number(effort.replace(",", ".")) }),
      };
      return minutes !== "" && rated.minutes <= 1440 && !((rated.effort ?? 0) > 10) ? rated : undefined;
    });
  return read.every((each) => each !== undefined) ? read : undefined;
}

import type { Caution, Grade, Statement, StressTag } from "../model/index.ts";
import { STRESS_TAGS } from "../model/index.ts";
import type { StatementRow } from "../tables/index.ts";
import { byText } from "./by-text.ts";

/** A statement, a ceiling that somebody set for one tag ("tag"), what the person cannot do, or the screening. */
export type Origin = Statement | "tag" | "cannot" | "screening";

/** One origin's own ceiling for a tag; `who` set it, where it stands for one tag alone. */
export interface Share {
  readonly by: Origin;
  readonly ceiling: Grade;
  readonly who?: string;
}

/** The lowest grade allowed, and every origin that speaks of the tag, strictest first. */
export interface Ceiling {
  readonly grade: Grade;
  readonly from: readonly Share[];
}

/** A number that no set may pass, and the origins that ask for just this number. */
export interface Bound {
  readonly value: number;
  readonly from: readonly Origin[];
}

/** @returns the strictest of the values, or undefined when nobody states one */
export function bound(
  stated: readonly (readonly [Origin, number | undefined])[],
  strictest: (...values: number[]) => number,
): Bound | undefined {
  const values = stated.flatMap(([, value]) => (value === undefined ? [] : [value]));
  if (values.length === 0) return undefined;
  const value = strictest(...values);
  return { value, from: stated.filter(([, each]) => each === value).map(([origin]) => origin) };
}

/** Somebody who cannot get to the floor still sits on a low seat or a bench, which is grade 1 of that tag. */
function ceilingOfCannot(tag: StressTag): Grade {
  return tag === "floor" ? 1 : 0;
}

/**
 * Ceilings of all tags that are not free. The lowest wins; the order of the cautions never matters. A tag with a
 * caution but no ceiling of its own is never offered.
 */
export function ceilingsOf(
  rows: readonly StatementRow[],
  cautions: readonly Caution[],
  cannot: readonly StressTag[],
): Partial<Record<StressTag, Ceiling>> {
  const found: Partial<Record<StressTag, Ceiling>> = {};
  for (const tag of STRESS_TAGS) {
    const shares: Share[] = [
      ...rows.flatMap(({ id, ceilings }) => (ceilings[tag] === undefined ? [] : [{ by: id, ceiling: ceilings[tag] }])),
      ...cautions
        .filter((caution) => caution.tag === tag)
        .map(({ ceiling, who }) => ({ by: "tag" as const, ceiling: ceiling ?? 0, who })),
      ...(cannot.includes(tag) ? [{ by: "cannot" as const, ceiling: ceilingOfCannot(tag) }] : []),
    ];
    if (shares.length === 0) continue;
    const from = shares.toSorted((a, b) => a.ceiling - b.ceiling || byText(nameOf(a), nameOf(b)));
    found[tag] = { grade: from[0]!.ceiling, from };
  }
  return found;
}

function nameOf(share: Share): string {
  return `${share.by} ${share.who ?? ""}`;
}

import type { RecordFold } from "../measures/index.ts";
import type { Phase, Programme } from "../model/index.ts";

/** What a coach decided on the weeks of a plan, by their names: phase/week. */
export type LightWeeks = ReadonlyMap<string, "full" | "light" | "lighter">;

/** The coach's decisions on light weeks that stand, the later one over the earlier. */
export function lightWeeksOf({ decisions }: Pick<RecordFold, "decisions">): LightWeeks {
  const weeks = new Map<string, "full" | "light" | "lighter">();
  for (const { patch } of decisions) {
    if (patch?.change === "full week") weeks.set(patch.week, "full");
    if (patch?.change !== "light week") continue;
    if (patch.instead !== undefined) weeks.set(patch.instead, "full");
    weeks.set(patch.week, patch.lighter === true ? "lighter" : "light");
  }
  return weeks;
}

/** A programme with its light weeks as they were decided; what is named outside it changes nothing. */
export function withLightWeeks(programme: Programme, decided: LightWeeks): Programme {
  if (decided.size === 0) return programme;
  return {
    ...programme,
    phases: programme.phases.map((phase) => {
      const all = Array.from({ length: phase.weeks }, (_, index) => index + 1);
      const light = all.filter((week) => {
        const said = decided.get(`${phase.key}/${week}`);
        return said === undefined ? phase.light?.includes(week) : said !== "full";
      });
      const { light: _, ...kept } = phase;
      return light.length === 0 ? kept : { ...kept, light };
    }),
  };
}

/** @returns the weeks of a phase that are light with lighter loads */
export function lighterIn(decided: LightWeeks, { key, weeks }: Phase): ReadonlySet<number> {
  const all = Array.from({ length: weeks }, (_, index) => index + 1);
  return new Set(all.filter((week) => decided.get(`${key}/${week}`) === "lighter"));
}

import type { Day } from "../day.ts";
import type { RecordFold } from "./record.ts";

export interface PressureReading {
  readonly day: Day;
  readonly systolic: number;
  readonly diastolic: number;
}

/** Readings of one kind, and the means of the first and the last three. */
export interface PressureSeries {
  readonly when: "before" | "after";
  /** Oldest first. */
  readonly readings: readonly PressureReading[];
  /** mmHg, to a tenth; undefined for fewer than six readings, where first and last would share some. */
  readonly means?: { readonly first: readonly [number, number]; readonly last: readonly [number, number] };
}

const THREE = 3;

function meanOf(readings: readonly PressureReading[]): readonly [number, number] {
  const mean = (of: "systolic" | "diastolic") =>
    Math.round((10 * readings.reduce((sum, each) => sum + each[of], 0)) / readings.length) / 10;
  return [mean("systolic"), mean("diastolic")];
}

/** Blood pressure before sessions and after them: two series, since effort changes what is read. */
export function pressureSeries(
  { pressures }: Pick<RecordFold, "pressures">,
  dayOf: (at: number) => Day,
): readonly PressureSeries[] {
  return (["before", "after"] as const).flatMap((when): PressureSeries[] => {
    const readings = pressures
      .filter(({ data }) => data.when === when)
      .map(({ at, data }) => ({ day: dayOf(at), systolic: data.systolic, diastolic: data.diastolic }))
      .sort((a, b) => a.day - b.day);
    if (readings.length === 0) return [];
    const enough = readings.length >= 2 * THREE;
    const means = { first: meanOf(readings.slice(0, THREE)), last: meanOf(readings.slice(-THREE)) };
    return [{ when, readings, ...(enough ? { means } : {}) }];
  });
}

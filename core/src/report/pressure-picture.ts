import type { Day } from "../day.ts";
import type { PressureReading } from "../measures/index.ts";
import type { Drawing, Shape } from "../sign/index.ts";

const WIDTH = 480;
const HEIGHT = 96;
const MARGIN = 8;
const RADIUS = 2.5;
/** mmHg at the lower and the upper edge; what lies beyond stands on the edge. */
const [LOW, HIGH] = [40, 200];

/** All readings over time, upper values dark and lower ones light; a line where medicines changed. */
export function drawPressure(readings: readonly PressureReading[], changes: readonly Day[], word: string): Drawing {
  const [from, to] = [readings[0]!.day, readings.at(-1)!.day];
  const x = (day: Day) => MARGIN + ((WIDTH - 2 * MARGIN) * (day - from)) / Math.max(1, to - from);
  const y = (value: number) => HEIGHT - ((Math.min(HIGH, Math.max(LOW, value)) - LOW) / (HIGH - LOW)) * HEIGHT;
  const marks = changes
    .filter((day) => from <= day && day <= to)
    .flatMap((day): Shape[] => [
      {
        kind: "bar",
        x: x(day),
        y: 0,
        width: 1,
        height: HEIGHT,
        fill: "ink",
        outline: "none",
        dashed: false,
        weight: 0,
      },
      { kind: "word", x: x(day), y: HEIGHT + 12, word, role: "ink" },
    ]);
  const rules = [80, 120, 160].map((value): Shape => ({ kind: "line", x1: 0, x2: WIDTH, y: y(value), role: "rule" }));
  const dots = readings.flatMap(({ day, systolic, diastolic }): Shape[] => [
    { kind: "dot", x: x(day), y: y(systolic), radius: RADIUS, role: "ink" },
    { kind: "dot", x: x(day), y: y(diastolic), radius: RADIUS, role: "edge" },
  ]);
  return { width: WIDTH, height: HEIGHT + 16, shapes: [...rules, ...marks, ...dots] };
}

import type { Stroke } from "@stave/core/model";
import * as fc from "fast-check";
import { expect, test } from "vitest";
import { fittingStrokes } from "./fitting.ts";

const done = (reps: number): Stroke => ({
  state: "done",
  asked: { from: 8, to: 12 },
  hold: false,
  hurt: false,
  done: { both: reps },
});
const next: Stroke = { state: "to come", asked: { from: 8, to: 12 }, hold: false, hurt: false };
const bars = (past: number, width: number) =>
  fittingStrokes(
    Array.from({ length: past }, () => [done(10), done(9), done(8)]),
    [next, next, next],
    width,
    40,
  ).shapes.filter(({ kind }) => kind === "bar").length;

test("as many of the last sessions as have room, always the last and the next", () => {
  expect(bars(10, 1)).toBe(6);
  expect(bars(10, 10_000)).toBe(33);
  expect(bars(0, 100)).toBe(3);
});

test("never wider than asked unless there is only one session left to leave out", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 30 }), fc.integer({ min: 40, max: 900 }), (sessions, width) => {
      const past = Array.from({ length: sessions }, () => [done(10), done(9)]);
      const drawing = fittingStrokes(past, [next], width, 40);
      const shown = drawing.shapes.filter(({ kind }) => kind === "bar").length;
      expect(drawing.width <= width || shown <= 3).toBe(true);
    }),
  );
});

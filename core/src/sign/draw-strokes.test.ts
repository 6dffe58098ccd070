import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Stroke } from "../model/index.ts";
import { type Drawing, drawStrokes, type Shape } from "./index.ts";

const ASKED: Stroke = { state: "asked", asked: { from: 8, to: 10 }, hold: false, hurt: false };
const done = (reps: number | undefined, more: Partial<Stroke> = {}): Stroke => ({
  ...ASKED,
  state: "done",
  done: { both: reps },
  ...more,
});
const LANE = { height: 50, scale: "all" } as const;
const barsOf = ({ shapes }: Drawing) =>
  shapes.filter((shape): shape is Shape & { kind: "bar" } => shape.kind === "bar");
const rulesOf = ({ shapes }: Drawing) =>
  shapes.filter((shape): shape is Shape & { kind: "line" } => shape.kind === "line" && shape.role === "rule");

describe("height", () => {
  test("what reaches an end of the asked range reaches its rule", () => {
    const drawing = drawStrokes([[done(8), done(10)]], LANE);
    const tops = barsOf(drawing).map(({ y }) => y);
    const rules = rulesOf(drawing).map(({ y }) => y - 0.5);
    expect(tops).toEqual([...rules].sort((a, b) => b - a));
    expect(rules).toHaveLength(2);
  });
  test("one number asked is one rule", () => {
    expect(rulesOf(drawStrokes([[{ ...ASKED, asked: { from: 8, to: 8 } }]], LANE))).toHaveLength(1);
  });
  test("more repetitions are never lower, and nothing leaves the drawing", () => {
    fc.assert(
      fc.property(fc.nat(2000), fc.nat(2000), fc.nat(40), fc.nat(40), (one, other, from, more) => {
        const asked = { from, to: from + more };
        const [low, high] = barsOf(
          drawStrokes([[done(Math.min(one, other), { asked }), done(Math.max(one, other), { asked })]], LANE),
        );
        expect(high!.height).toBeGreaterThanOrEqual(low!.height);
        expect(high!.y).toBeGreaterThanOrEqual(0);
        expect(low!.height).toBeGreaterThanOrEqual(1);
      }),
    );
  });
  test("in a lane of one movement ten repetitions stand equally high whatever was asked", () => {
    const [first, second] = barsOf(drawStrokes([[done(10)], [done(10, { asked: { from: 12, to: 20 } })]], LANE));
    expect(first!.height).toBe(second!.height);
  });
  test("in a session each movement has its own scale, so that what was asked stands equally high", () => {
    const [first, second] = barsOf(
      drawStrokes([[ASKED], [{ ...ASKED, hold: true, asked: { from: 30, to: 30 } }]], { height: 50, scale: "each" }),
    );
    expect(first!.height).toBe(second!.height);
  });
});

describe("width", () => {
  test.each([
    [0, 2],
    [0.5, 6],
    [1, 10],
    [1.4, 10],
    [-1, 2],
    [Number.NaN, 2],
    [undefined, 6],
  ])("a share of %s is %s px", (share, width) => {
    expect(barsOf(drawStrokes([[done(8, share === undefined ? {} : { share })]], LANE))[0]!.width).toBe(width);
  });
});

describe("state", () => {
  const looks = (stroke: Stroke) =>
    barsOf(drawStrokes([[stroke]], LANE)).map(({ fill, outline, dashed }) => ({ fill, outline, dashed }));
  test("done is solid", () => expect(looks(done(9))).toEqual([{ fill: "ink", outline: "none", dashed: false }]));
  test("asked is an outline", () => expect(looks(ASKED)).toEqual([{ fill: "none", outline: "ink", dashed: false }]));
  test("to come is a dashed outline", () =>
    expect(looks({ ...ASKED, state: "to come" })).toEqual([{ fill: "none", outline: "edge", dashed: true }]));
  test("missed is a dot on the base line and no bar", () => {
    const drawing = drawStrokes([[{ ...ASKED, state: "missed" }]], LANE);
    expect(barsOf(drawing)).toEqual([]);
    const dot = drawing.shapes.find(({ kind }) => kind === "dot") as Shape & { kind: "dot" };
    expect(dot.y + dot.radius).toBeLessThanOrEqual(50);
    expect(dot.y + dot.radius).toBeGreaterThan(48);
  });
  test("done with no number said is half filled below an outline, so that it reads as no number", () => {
    const [half, outline] = barsOf(drawStrokes([[done(undefined)]], LANE));
    const [asked] = barsOf(drawStrokes([[ASKED]], LANE));
    expect(outline).toEqual(asked);
    expect(half!.fill).toBe("ink");
    expect(half!.height * 2).toBeGreaterThanOrEqual(asked!.height - 1);
    expect(half!.height * 2).toBeLessThanOrEqual(asked!.height + 1);
  });
  test("what hurt is a set with an outline in the correction colour around it, and a word where asked", () => {
    const drawing = drawStrokes([[done(8, { hurt: true })]], { ...LANE, hurtWord: "hurt" });
    const [stroke, outline] = barsOf(drawing);
    expect(outline!.outline).toBe("correction");
    expect(outline!.x).toBeLessThan(stroke!.x);
    expect(outline!.x + outline!.width).toBeGreaterThan(stroke!.x + stroke!.width);
    expect(drawing.shapes.filter(({ kind }) => kind === "word")).toHaveLength(1);
    expect(drawing.height).toBe(64);
  });
});

describe("form", () => {
  test("a hold has a flat cap wider than its stroke, at its top", () => {
    const [stroke, cap] = barsOf(drawStrokes([[done(9, { hold: true })]], LANE));
    expect(cap!.y).toBe(stroke!.y);
    expect(cap!.x).toBeLessThan(stroke!.x);
    expect(cap!.width).toBeGreaterThan(stroke!.width);
  });
  test("left and right stand apart, each at its own height, and sets to come are split too", () => {
    const [left, right, ...next] = barsOf(
      drawStrokes([[done(0, { done: { left: 10, right: 7 }, share: 0 }), { ...ASKED, share: 0 }]], LANE),
    );
    expect(left!.height).toBeGreaterThan(right!.height);
    expect(right!.x).toBe(left!.x + 2 + 2);
    expect(next).toHaveLength(2);
  });
  test("strokes of a lot never touch", () => {
    const share = fc.option(fc.double({ min: 0, max: 1, noNaN: true }), { nil: undefined });
    fc.assert(
      fc.property(fc.array(share, { minLength: 2, maxLength: 12 }), (shares) => {
        const strokes = shares.map((one) => done(8, one === undefined ? {} : { share: one }));
        const bars = barsOf(drawStrokes([strokes], LANE));
        for (let at = 1; at < bars.length; at++) {
          expect(bars[at]!.x).toBeGreaterThan(bars[at - 1]!.x + bars[at - 1]!.width);
        }
      }),
    );
  });
  test("nothing to draw is a bare base line", () => {
    expect(drawStrokes([], LANE).shapes.map(({ kind }) => kind)).toEqual(["line"]);
  });
});

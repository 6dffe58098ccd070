import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import { pulseTarget } from "../equations/index.ts";
import type { Pulse } from "../model/index.ts";
import { madeUpPerson, published } from "../testing/index.ts";
import { pulseZone } from "./pulse-zone.ts";

const ON = day("2027-03-01");
const who = (born: string, pulse?: Omit<Pulse, "on" | "slowed"> & { readonly slowed?: boolean }) =>
  madeUpPerson({ born: day(born), ...(pulse === undefined ? {} : { pulse: { slowed: false, on: ON, ...pulse } }) });
const FORTY = "1987-03-01";

// Karvonen with a highest of 180 and a rest of 60: 40 % is 108, 60 % is 132 (worked in the reference).
published("karvonen1957", "steady at 40, rest 60, highest 180 measured", [
  [
    "worked",
    "40 % of the reserve",
    () => pulseZone(who(FORTY, { rest: 60, highest: 180 }), "steady", ON)!.from,
    108,
    0,
  ],
  ["worked", "60 % of the reserve", () => pulseZone(who(FORTY, { rest: 60, highest: 180 }), "steady", ON)!.to, 132, 0],
]);

test("easy is light, steady moderate, hard vigorous, and each begins where the one before ends", () => {
  const zones = (["easy", "steady", "hard"] as const).map((effort) =>
    pulseZone(who(FORTY, { rest: 60, highest: 180 }), effort, ON),
  );
  expect(zones).toEqual([
    { from: 96, to: 108, miss: 0 },
    { from: 108, to: 132, miss: 0 },
    { from: 132, to: 168, miss: 0 },
  ]);
});

test("from an equation of age the interval is said; one person in three lies further off", () => {
  // 208 − 0.7 × 40 = 180, like the measured one; 60 % of 10 beats are 6.
  expect(pulseZone(who(FORTY, { rest: 60 }), "steady", ON)).toEqual({ from: 108, to: 132, miss: 6 });
});

describe("cd-01: a woman of 34, rest 76, beginner, 65 % of the reserve, highest 220 − 34", () => {
  const at = (share: number) => pulseTarget({ bpm: 220 - 34, measured: false }, 76, share, false);
  test("147.5 is the target, and 60 to 70 % are 142 to 153", () => {
    expect(at(0.65).bpm).toBeCloseTo(147.5, 9);
    expect([at(0.6).bpm, at(0.7).bpm].map((bpm) => Math.floor(bpm + 0.5))).toEqual([142, 153]);
  });
  test("it is off by several beats either way for one person", () => {
    expect(at(0.65).high - at(0.65).bpm).toBeCloseTo(6.5, 9);
  });
  test("half a beat is rounded up: 147.5 becomes 148", () => {
    // 65 % is no end of a zone; a highest of 155 and a rest of 80 put 147.5 on one: 80 + 90 % × 75.
    expect(pulseZone(who("1993-03-01", { rest: 80, highest: 155 }), "hard", ON)?.to).toBe(148);
  });
});

describe("cd-03: a woman of 62 on a medicine that slows the heart, rest 54", () => {
  const SHE = "1964-12-01";
  test("no target in beats is given: talking tells", () => {
    for (const effort of ["easy", "steady", "hard"] as const)
      expect(pulseZone(who(SHE, { rest: 54, slowed: true }), effort, ON)).toBeUndefined();
  });
  test("neighbour: with a highest that was measured while taking it there is one", () => {
    expect(pulseZone(who(SHE, { rest: 54, slowed: true, highest: 121 }), "steady", ON)).toEqual({
      from: 81,
      to: 94,
      miss: 0,
    });
  });
  test("neighbour: without the medicine there is one", () => {
    expect(pulseZone(who(SHE, { rest: 54 }), "steady", ON)).toBeDefined();
  });
});

test("nothing is guessed: no pulse, an age outside the equation, a highest below the rest", () => {
  expect(pulseZone(who(FORTY), "easy", ON)).toBeUndefined();
  expect(pulseZone(who("2010-01-01", { rest: 60 }), "easy", ON)).toBeUndefined();
  expect(pulseZone(who("1945-01-01", { rest: 60 }), "easy", ON)).toBeUndefined();
  expect(pulseZone(who("1945-01-01", { rest: 60, highest: 140 }), "easy", ON)).toBeDefined();
});

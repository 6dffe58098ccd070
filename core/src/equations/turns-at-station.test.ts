import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { turnsAtStation } from "./turns-at-station.ts";

describe("ot-01 (open case): two people, one bench and one bar", () => {
  const a = { sets: 4, restS: 150 };
  const b = { sets: 3, restS: 90 };
  const two = turnsAtStation([a, b], 45, 45);

  test("the others' set and two changes are 135 s of rest: 15 s short for the first, more than enough for the second", () => {
    expect(two.got).toEqual([
      { restS: 150, waitS: 15, freeRounds: 0 },
      { restS: 150, waitS: 0, freeRounds: 1 },
    ]);
    expect(turnsAtStation([{ ...a, restS: 135 }, b], 45, 45).got[0]).toEqual({ restS: 135, waitS: 0, freeRounds: 0 });
  });

  test("four rounds of 180 s, about twelve minutes, with the waits; the second's fourth place is free", () => {
    expect(two).toMatchObject({ rounds: 4, roundS: 180 + 15, crowded: false });
    // Three whole rounds, and the first person's last set.
    expect(two.totalS).toBe(3 * 195 + 45);
  });

  test("a third person: 225 s between two sets is more than twice what somebody wants, so one goes elsewhere", () => {
    const three = turnsAtStation([a, b, { sets: 3, restS: 90 }], 45, 45);
    expect(three.got.map(({ restS }) => restS)).toEqual([225, 225, 225]);
    expect(three.crowded).toBe(true);
    expect(turnsAtStation([a, { ...b, restS: 120 }, { sets: 3, restS: 120 }], 45, 45).crowded).toBe(false);
  });
});

test("nobody ever rests less than they want, and no two are at the station at once", () => {
  const turn = fc.record({ sets: fc.integer({ min: 1, max: 20 }), restS: fc.integer({ min: 0, max: 900 }) });
  fc.assert(
    fc.property(
      fc.array(turn, { minLength: 2, maxLength: 4 }),
      fc.integer({ min: 5, max: 600 }),
      fc.integer({ min: 0, max: 600 }),
      (turns, setS, changeS) => {
        const found = turnsAtStation(turns, setS, changeS);
        // The same by laying one set after the other on a clock.
        let clock = 0;
        const last = turns.map(() => Number.NEGATIVE_INFINITY);
        for (let round = 0; round < 2; round++)
          for (const [person] of turns.entries()) {
            const start = round * found.roundS + person * (setS + changeS);
            expect(start).toBeGreaterThanOrEqual(clock);
            if (round > 0) expect(start - last[person]!).toBeGreaterThanOrEqual(turns[person]!.restS);
            if (round > 0) expect(start - last[person]!).toBe(found.got[person]!.restS);
            last[person] = start + setS;
            clock = start + setS + changeS;
          }
      },
    ),
    { seed: 11 },
  );
});

test.each([
  [[{ sets: 3, restS: 90 }], 45, 45],
  [Array.from({ length: 5 }, () => ({ sets: 3, restS: 90 })), 45, 45],
  [
    [
      { sets: 3, restS: 90 },
      { sets: 0, restS: 90 },
    ],
    45,
    45,
  ],
  [
    [
      { sets: 3, restS: 90 },
      { sets: 3, restS: Number.NaN },
    ],
    45,
    45,
  ],
  [
    [
      { sets: 3, restS: 90 },
      { sets: 3, restS: 90 },
    ],
    4,
    45,
  ],
  [
    [
      { sets: 3, restS: 90 },
      { sets: 3, restS: 90 },
    ],
    45,
    -1,
  ],
])("refused: %j, %d s, %d s", (turns, setS, changeS) => {
  expect(() => turnsAtStation(turns, setS, changeS)).toThrow(RangeError);
});

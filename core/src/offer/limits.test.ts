import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import type { Limit } from "../model/index.ts";
import { inKg } from "../units.ts";
import { limitsOn, massAllowed } from "./limits.ts";

function load(value: number, from: string, to: string, more: Partial<Limit> = {}): Limit {
  return {
    kind: "load",
    atMost: { value, unit: "lb" },
    applies: "total",
    side: "both",
    from: day(from),
    to: day(to),
    who: "the surgeon",
    ...more,
  };
}

/** The letter: nothing over 10 lb until 8 March, nothing over 25 lb until 22 March, review on 22 March. */
const FIRST = load(10, "2027-02-08", "2027-03-08");
const SECOND = load(25, "2027-03-09", "2027-03-22");

function pounds(limits: readonly Limit[], on: string): (number | undefined)[] {
  return limitsOn(limits, day(on)).loads.map((limit) => limit.atMost?.value);
}

describe("the steps of one letter follow one another", () => {
  const rows: [string, number[], number][] = [
    ["2027-02-07", [], 0],
    ["2027-02-08", [10], 0],
    ["2027-03-08", [10], 0],
    ["2027-03-09", [25], 0],
    ["2027-03-22", [25], 0],
    ["2027-03-23", [25], 1],
    ["2028-03-23", [25], 1],
  ];
  test.each(rows)("on %s: at most %j lb", (on, want, asks) => {
    expect(pounds([SECOND, FIRST], on)).toEqual(want);
    expect(limitsOn([FIRST, SECOND], day(on)).asks.length).toBe(asks);
  });

  test("written from one day on, the strictest of those that run binds", () => {
    const letter = [FIRST, load(25, "2027-02-08", "2027-03-22")];
    expect(pounds(letter, "2027-03-08")).toEqual([10]);
    expect(pounds(letter, "2027-03-10")).toEqual([25]);
  });

  test("in a gap between two steps the earlier one stays and asks", () => {
    const letter = [FIRST, load(25, "2027-03-15", "2027-03-22")];
    expect(pounds(letter, "2027-03-12")).toEqual([10]);
    expect(limitsOn(letter, day("2027-03-12")).asks).toEqual([
      {
        code: "offer/ask-limit",
        data: {
          kind: "load",
          to: "2027-03-08",
          who: "the surgeon",
          side: "both",
          applies: "total",
          atMost: { value: 10, unit: "lb" },
        },
      },
    ]);
  });
});

describe("only a recorded review ends a limit", () => {
  const lifted = { on: day("2027-03-24"), who: "the surgeon" };
  test("the whole letter goes, from the day of the review on", () => {
    const letter = [FIRST, { ...SECOND, lifted }];
    expect(pounds(letter, "2027-03-23")).toEqual([25]);
    expect(pounds(letter, "2027-03-24")).toEqual([]);
    expect(limitsOn(letter, day("2027-03-24")).asks).toEqual([]);
  });
  test("a review of the first step leaves the later one", () => {
    const early = { ...FIRST, lifted: { on: day("2027-03-01"), who: "the surgeon" } };
    expect(pounds([early, SECOND], "2027-03-05")).toEqual([]);
    expect(pounds([early, SECOND], "2027-03-10")).toEqual([25]);
  });
  test("a later letter of the same writer binds again", () => {
    expect(pounds([{ ...SECOND, lifted }, load(5, "2028-01-01", "2028-02-01")], "2028-01-15")).toEqual([5]);
  });
});

describe("over several days, what stands on any of them binds on all", () => {
  const over = (limits: readonly Limit[], on: string, to: string) => limitsOn(limits, day(on), day(to));
  const values = (limits: readonly Limit[], on: string, to: string) =>
    over(limits, on, to).loads.map((limit) => limit.atMost?.value);

  test("of a letter its strictest step, and it is said from when to when that one stands", () => {
    expect(values([FIRST, SECOND], "2027-03-01", "2027-03-28")).toEqual([10]);
    expect(over([SECOND, FIRST], "2027-03-01", "2027-03-28").throughout).toEqual([
      {
        code: "offer/limit-throughout",
        data: {
          kind: "load",
          from: "2027-02-08",
          to: "2027-03-08",
          who: "the surgeon",
          side: "both",
          applies: "total",
          atMost: { value: 10, unit: "lb" },
          first: "2027-03-01",
          last: "2027-03-28",
        },
      },
    ]);
  });
  test("a limit that begins on the last of them", () => {
    expect(values([FIRST], "2027-01-11", "2027-02-08")).toEqual([10]);
    expect(over([FIRST], "2027-01-11", "2027-02-08").throughout).toHaveLength(1);
    expect(values([FIRST], "2027-01-11", "2027-02-07")).toEqual([]);
  });
  test("a limit that is lifted within them", () => {
    const letter = [{ ...SECOND, lifted: { on: day("2027-03-24"), who: "the surgeon" } }];
    expect(values(letter, "2027-03-15", "2027-03-28")).toEqual([25]);
    expect(over(letter, "2027-03-15", "2027-03-28").throughout).toHaveLength(1);
    expect(values(letter, "2027-03-24", "2027-03-28")).toEqual([]);
  });
  test("nothing is said of what stands on all of them: one step, one that ends and stays, orders in a row", () => {
    for (const [limits, on, to] of [
      [[FIRST, SECOND], "2027-03-10", "2027-03-20"],
      [[SECOND], "2027-03-15", "2027-04-30"],
      [
        [FIRST, SECOND].map(({ atMost: _, ...limit }): Limit => ({ ...limit, kind: "rest", part: "leg" })),
        "2027-03-01",
        "2027-03-20",
      ],
    ] as const) {
      expect(over(limits, on, to).throughout).toEqual([]);
    }
  });
  test("what must be asked is asked on the first day", () => {
    expect(over([FIRST], "2027-03-01", "2027-03-28").asks).toEqual([]);
    expect(over([FIRST], "2027-03-09", "2027-03-28").asks).toHaveLength(1);
  });
});

test("different writers, sides, movements and ways of counting bind together", () => {
  const others: Partial<Limit>[] = [{ who: "Lise" }, { side: "left" }, { applies: "hand" }, { movement: "hinge" }];
  for (const other of others) {
    expect(pounds([FIRST, load(20, "2027-02-08", "2027-03-30", other)], "2027-03-01")).toEqual([10, 20]);
  }
  expect(pounds([FIRST, load(20, "2027-02-08", "2027-03-30")], "2027-03-01")).toEqual([10]);
});

test("rest orders and forbidden movements stand in their own lists", () => {
  const rest: Limit = { ...FIRST, kind: "rest", part: "arm", side: "left" };
  const out: Limit = { ...FIRST, kind: "movement", movement: "jump" };
  const now = limitsOn([rest, out, FIRST], day("2027-03-01"));
  expect([now.loads, now.rests, now.movements]).toEqual([[FIRST], [rest], [out]]);
});

test("pounds are exact, and a load limit that names no load allows none", () => {
  expect(inKg(massAllowed(SECOND))).toBe(11.33980925);
  const { atMost: _, ...unnamed } = FIRST;
  expect(massAllowed(unnamed)).toBe(0);
});

import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import { readRoster } from "./roster-read.ts";

const HEAD = `stave: 1
people:
  - id: ann
    name: Ann
    born: 1990-02-28
    status: novice
    units: kg
    place: home
    windows: [mon 17:00–18:00]
    minutes: 40
`;

function read(more: string) {
  return readRoster(`${HEAD}    ${more}\n`, "people.yaml");
}

function codes(more: string) {
  const result = read(more);
  return result.ok ? [] : result.problems.map(({ code, at }) => [code, at.slice(2).join(".")]);
}

describe("recent weeks", () => {
  test("are read with their sets in quarters", () => {
    const result = read(
      "recent: [{ week: 2026-12-07, sets: { chest: 6.5, lats: 8 } }, { week: 2026-11-30, sets: {} }]",
    );
    expect(result.ok && result.value.value[0]?.recent).toEqual([
      { week: day("2026-12-07"), sets: { chest: 6.5, lats: 8 } },
      { week: day("2026-11-30"), sets: {} },
    ]);
  });

  test.each([
    ["recent: [{ week: 2026-12-07, sets: { chest: 6.3 } }]", "recent.0.sets.chest"],
    ["recent: [{ week: 2026-12-07, sets: { chest: -1 } }]", "recent.0.sets.chest"],
    ["recent: [{ week: 2026-12-07, sets: { chest: 61 } }]", "recent.0.sets.chest"],
    ["recent: [{ week: 2026-12-07 }]", "recent.0.sets"],
    ["recent: [{ week: 2026-13-07, sets: {} }]", "recent.0.week"],
    ["recent: [{ week: 2026-12-07, sets: {} }, { week: 2026-12-13, sets: {} }]", "recent.1.week"],
    ["recent: 7", "recent"],
  ])("%s is told at %s", (more, at) => {
    expect(codes(more).map(([, where]) => where)).toEqual([at]);
  });

  test("two entries for one week are told as such; a week apart they are two", () => {
    const two = (second: string) => `recent: [{ week: 2026-12-07, sets: {} }, { week: ${second}, sets: {} }]`;
    expect(codes(two("2026-12-13"))).toEqual([["recent/same-week", "recent.1.week"]]);
    expect(codes(two("2026-12-14"))).toEqual([]);
    expect(codes(two("2026-12-01"))).toEqual([["recent/same-week", "recent.1.week"]]);
  });
});

describe("pulse", () => {
  test("is read; nothing said of medicines means that none slows the heart", () => {
    const result = read("pulse: { rest: 62, on: 2026-12-07 }");
    expect(result.ok && result.value.value[0]?.pulse).toEqual({ rest: 62, slowed: false, on: day("2026-12-07") });
    const all = read("pulse: { rest: 54, highest: 132, slowed: true, on: 2026-12-07 }");
    expect(all.ok && all.value.value[0]?.pulse).toMatchObject({ highest: 132, slowed: true });
  });

  test.each([
    ["pulse: { rest: 29, on: 2026-12-07 }", "pulse.rest"],
    ["pulse: { rest: 101, on: 2026-12-07 }", "pulse.rest"],
    ["pulse: { rest: 60, highest: 221, on: 2026-12-07 }", "pulse.highest"],
    ["pulse: { rest: 60, highest: 100, on: 2026-12-07 }", "pulse.highest"],
    ["pulse: { rest: 60.5, on: 2026-12-07 }", "pulse.rest"],
    ["pulse: { rest: 60 }", "pulse.on"],
    ["pulse: { rest: 60, slowed: perhaps, on: 2026-12-07 }", "pulse.slowed"],
  ])("%s is told at %s", (more, at) => {
    expect(codes(more).map(([, where]) => where)).toEqual([at]);
  });
});

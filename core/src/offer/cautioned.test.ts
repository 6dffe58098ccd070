import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import type { Caution, Exercise, Statement } from "../model/index.ts";
import { madeUpExercise, madeUpPerson } from "../testing/index.ts";
import { againstCeilings, setAsideByFilters } from "./cautioned.ts";
import { clearanceOf } from "./clearance.ts";

function stating(...statements: Statement[]) {
  const cautions = statements.map((statement) => ({
    statement,
    from: day("2027-01-01"),
    recheck: day("2028-01-01"),
    who: "them",
  }));
  return clearanceOf(madeUpPerson({ cautions }), day("2027-03-01"));
}
const form = (said: Partial<Exercise>) => madeUpExercise({ id: "form", pattern: "mobility", ...said });

describe("filters", () => {
  test("a withheld lane takes its patterns, also those counted beside", () => {
    const legs = stating("surgery-trunk");
    const why = [{ code: "offer/lane-withheld", data: { lane: "hinge", from: ["surgery-trunk"] } }];
    expect(setAsideByFilters(form({ pattern: "bridge" }), legs)).toEqual(why);
    expect(setAsideByFilters(form({ alsoCounts: "hinge" }), legs)).toEqual(why);
    expect(setAsideByFilters(form({ pattern: "squat" }), legs)).toEqual([]);
    expect(setAsideByFilters(form({ pattern: "upper isolation" }), legs)).toEqual([]);
  });
  test("seated only, no arms, no lowering, each with whoever asks", () => {
    const all = stating("seated", "surgery-arm", "knee");
    expect(setAsideByFilters(form({ armsUsed: true, lowering: true }), all)).toEqual([
      { code: "offer/seated-only", data: { from: ["seated"] } },
      { code: "offer/arms-used", data: { from: ["surgery-arm"] } },
      { code: "offer/lowering-only", data: { from: ["knee", "seated"] } },
    ]);
    expect(setAsideByFilters(form({ seated: true }), all)).toEqual([]);
    expect(setAsideByFilters(form({ armsUsed: true, lowering: true }), stating())).toEqual([]);
  });
  test("what is done in a wheelchair waits for the statement", () => {
    const push = form({ needs: [["wheelchair"]], seated: true });
    expect(setAsideByFilters(push, stating())).toEqual([{ code: "offer/wheelchair", data: {} }]);
    expect(setAsideByFilters(push, stating("seated"))).toEqual([]);
    expect(setAsideByFilters(form({ needs: [["chair", "wheelchair"]] }), stating())).toEqual([]);
  });
});

describe("ceilings", () => {
  test("above is refused, on it is watched, below says nothing", () => {
    const { ceilings } = stating("bone");
    expect(againstCeilings({ balance: 3, sp_hold: 2, sp_axial: 1, sp_flex: 1 }, ceilings)).toEqual({
      why: [
        { code: "offer/ceiling", data: { tag: "sp_flex", grade: 1, ceiling: 0, from: [{ by: "bone", ceiling: 0 }] } },
        { code: "offer/ceiling", data: { tag: "balance", grade: 3, ceiling: 2, from: [{ by: "bone", ceiling: 2 }] } },
      ],
      watch: ["sp_hold"],
    });
  });
  test("a tag that nobody limits is free", () => {
    expect(againstCeilings({ grip: 3 }, stating("bone").ceilings)).toEqual({ why: [], watch: [] });
  });
  test("only the origins whose own ceiling is passed are named", () => {
    const { ceilings } = stating("vertigo", "bone");
    expect(againstCeilings({ balance: 2 }, ceilings).why[0]?.data["from"]).toEqual([{ by: "vertigo", ceiling: 1 }]);
    expect(againstCeilings({ balance: 3 }, ceilings).why[0]?.data["from"]).toEqual([
      { by: "vertigo", ceiling: 1 },
      { by: "bone", ceiling: 2 },
    ]);
  });
  test("what the person cannot do is said as that, beside the statements", () => {
    const cautions: Caution[] = [
      { statement: "larger", from: day("2027-01-01"), recheck: day("2028-01-01"), who: "them" },
      { tag: "floor", ceiling: 2, from: day("2027-01-01"), recheck: day("2028-01-01"), who: "Lise" },
    ];
    const { ceilings } = clearanceOf(madeUpPerson({ cautions, cannot: ["floor"] }), day("2027-03-01"));
    expect(againstCeilings({ floor: 3 }, ceilings).why).toEqual([
      { code: "offer/cannot", data: { tag: "floor", grade: 3, ceiling: 1 } },
      {
        code: "offer/ceiling",
        data: {
          tag: "floor",
          grade: 3,
          ceiling: 1,
          from: [
            { by: "larger", ceiling: 1 },
            { by: "tag", ceiling: 2, who: "Lise" },
          ],
        },
      },
    ]);
    expect(againstCeilings({ floor: 1 }, ceilings)).toEqual({ why: [], watch: ["floor"] });
  });
});

import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays, type Day, day } from "../day.ts";
import { type Caution, type Limit, STATEMENTS, STRESS_TAGS, type Statement, type StressTag } from "../model/index.ts";
import { statementRow } from "../tables/index.ts";
import { madeUpPerson } from "../testing/index.ts";
import { type Clearance, clearanceOf } from "./clearance.ts";

const ON = day("2027-03-01");

function stated(statement: Statement, more: Partial<Caution> = {}): Caution {
  return { statement, from: day("2027-02-01"), recheck: day("2027-12-31"), who: "the person", ...more };
}
function cleared(...cautions: Caution[]) {
  return clearanceOf(madeUpPerson({ cautions }), ON);
}

test("nothing stated, nothing limited", () => {
  expect(cleared()).toEqual({
    outcome: "no reason found",
    ceilings: {},
    noBreathHold: [],
    noLoweringOnly: [],
    withheld: {},
    seatedOnly: [],
    noArms: [],
    wheelchair: false,
    limits: { loads: [], rests: [], movements: [], asks: [], throughout: [] },
    asks: [],
    throughout: [],
    until: day("2027-12-31"),
    ruleSet: "unsigned",
  });
});

test("shoulder pain and glaucoma together: the lowest of each", () => {
  const both = cleared(stated("shoulder"), stated("eye"));
  expect(both.ceilings.head_down).toEqual({ grade: 0, from: [{ by: "eye", ceiling: 0 }] });
  expect(both.ceilings.sh_overhead?.grade).toBe(1);
  expect(both.percent).toEqual({ value: 65, from: ["eye"] });
  expect(both.reserve).toEqual({ value: 3, from: ["shoulder", "eye"] });
  expect(both.holdS).toEqual({ value: 15, from: ["eye"] });
  expect(both.noBreathHold).toEqual(["eye"]);
  expect(both.noLoweringOnly).toEqual(["shoulder"]);
});

test("a tag that two statements limit names both, the stricter first", () => {
  expect(cleared(stated("bone"), stated("vertigo")).ceilings.balance).toEqual({
    grade: 1,
    from: [
      { by: "vertigo", ceiling: 1 },
      { by: "bone", ceiling: 2 },
    ],
  });
});

test("lanes and filters add up and say whose they are", () => {
  const both = cleared(stated("surgery-arm"), stated("surgery-leg"));
  expect(both.withheld).toEqual({
    push: ["surgery-arm"],
    pull: ["surgery-arm"],
    squat: ["surgery-leg"],
    hinge: ["surgery-leg"],
    "single leg": ["surgery-leg"],
  });
  expect([both.seatedOnly, both.noArms, both.wheelchair]).toEqual([["surgery-leg"], ["surgery-arm"], false]);
  expect(cleared(stated("seated")).wheelchair).toBe(true);
});

test("a tag with a ceiling of its own binds beside the statements; without a ceiling it is never offered", () => {
  const own = (ceiling?: 0 | 1 | 2): Caution => ({
    tag: "supine",
    ...(ceiling === undefined ? {} : { ceiling }),
    from: day("2027-02-01"),
    recheck: day("2027-12-31"),
    who: "the midwife",
  });
  expect(cleared(stated("pregnant"), own(0)).ceilings.supine).toEqual({
    grade: 0,
    from: [
      { by: "tag", ceiling: 0, who: "the midwife" },
      { by: "pregnant", ceiling: 1 },
    ],
  });
  expect(cleared(stated("pregnant"), own(2)).ceilings.supine?.grade).toBe(1);
  expect(cleared(own()).ceilings.supine?.grade).toBe(0);
});

test("who cannot get to the floor may still sit low; what cannot be done at all is never offered", () => {
  const person = madeUpPerson({ cannot: ["floor", "kneel"] });
  const { ceilings } = clearanceOf(person, ON);
  expect(ceilings.floor).toEqual({ grade: 1, from: [{ by: "cannot", ceiling: 1 }] });
  expect(ceilings.kneel?.grade).toBe(0);
});

describe("days", () => {
  test("a caution begins on its day", () => {
    const later = stated("knee", { from: day("2027-03-02") });
    expect(cleared(later).ceilings).toEqual({});
    expect(clearanceOf(madeUpPerson({ cautions: [later] }), day("2027-03-02")).ceilings.knee_deep?.grade).toBe(1);
  });

  test("four weeks after a pregnancy was stated it asks, and goes on asking; the ceilings stay", () => {
    const from = day("2027-03-01");
    const recheck = addDays(from, 7 * statementRow("pregnant").recheckWeeks!);
    expect(recheck).toBe(day("2027-03-29"));
    const person = madeUpPerson({ cautions: [stated("pregnant", { from, recheck })] });
    expect(clearanceOf(person, day("2027-03-28")).asks).toEqual([]);
    for (const on of [day("2027-03-29"), day("2027-09-01")]) {
      const asking = clearanceOf(person, on);
      expect(asking.asks).toEqual([
        { code: "offer/ask-caution", data: { statement: "pregnant", recheck: "2027-03-29", who: "the person" } },
      ]);
      expect(asking.ceilings).toEqual(clearanceOf(person, from).ceilings);
    }
  });

  test("an outcome that has run out asks, and its effort stays", () => {
    const screening = { outcome: "start light to moderate", on: day("2027-01-01"), by: "coach" } as const;
    const person = madeUpPerson({ screening: { ...screening, until: day("2027-02-28") } });
    expect(clearanceOf(person, day("2027-02-28")).asks).toEqual([]);
    const asking = clearanceOf(person, ON);
    expect(asking.asks).toEqual([{ code: "offer/ask-screening", data: { until: "2027-02-28" } }]);
    expect(asking.reserve).toEqual({ value: 3, from: ["screening"] });
  });

  test("a minor's row binds by birth date alone, to the day before the 18th birthday", () => {
    const person = madeUpPerson({ born: day("2009-03-02") });
    expect(clearanceOf(person, ON).percent).toEqual({ value: 79, from: ["young"] });
    expect(clearanceOf(person, ON).until).toBe(ON);
    expect(clearanceOf(person, day("2027-03-02")).percent).toBeUndefined();
  });
});

test("light effort keeps 4 in reserve, moderate 3; a statement may ask for more", () => {
  const screened = (effort: "light" | "moderate", cautions: Caution[] = []) =>
    clearanceOf(
      madeUpPerson({
        cautions,
        screening: { outcome: "no reason found", on: day("2027-01-01"), until: ON, by: "coach", effort },
      }),
      ON,
    ).reserve;
  expect(screened("light")).toEqual({ value: 4, from: ["screening"] });
  expect(screened("moderate")).toEqual({ value: 3, from: ["screening"] });
  expect(screened("moderate", [stated("postnatal")])).toEqual({ value: 4, from: ["postnatal"] });
});

const anyCautions = fc.array(
  fc.oneof(
    fc.constantFrom(...STATEMENTS).map((statement) => stated(statement)),
    fc
      .record({
        tag: fc.constantFrom(...STRESS_TAGS),
        ceiling: fc.constantFrom(0, 1, 2, 3),
        who: fc.constantFrom("a", "b"),
      })
      .map(({ tag, ceiling, who }) => ({
        tag: tag as StressTag,
        ceiling: ceiling as 0 | 1 | 2 | 3,
        who,
        from: day("2027-02-01"),
        recheck: day("2027-02-28"),
      })),
  ),
  { maxLength: 6 },
);

test("the order in which cautions were entered never matters", () => {
  fc.assert(
    fc.property(anyCautions, fc.infiniteStream(fc.nat()), (cautions, keys) => {
      const shuffled = cautions
        .map((caution) => ({ caution, key: keys.next().value as number }))
        .toSorted((a, b) => a.key - b.key)
        .map(({ caution }) => caution);
      expect(cleared(...shuffled)).toEqual(cleared(...cautions));
    }),
  );
});

test("one statement more is never looser in any field", () => {
  fc.assert(
    fc.property(anyCautions, anyCautions, (some, more) => {
      const part = cleared(...some);
      const whole = cleared(...some, ...more);
      for (const tag of STRESS_TAGS) {
        expect(whole.ceilings[tag]?.grade ?? 3).toBeLessThanOrEqual(part.ceilings[tag]?.grade ?? 3);
      }
      expect(whole.percent?.value ?? 100).toBeLessThanOrEqual(part.percent?.value ?? 100);
      expect(whole.holdS?.value ?? 999).toBeLessThanOrEqual(part.holdS?.value ?? 999);
      expect(whole.reserve?.value ?? 0).toBeGreaterThanOrEqual(part.reserve?.value ?? 0);
      expect(Object.keys(whole.withheld)).toEqual(expect.arrayContaining(Object.keys(part.withheld)));
      for (const list of ["noBreathHold", "noLoweringOnly", "seatedOnly", "noArms"] as const) {
        expect(whole[list]).toEqual(expect.arrayContaining([...part[list]]));
      }
    }),
  );
});

test("until its last day a clearance stays as it is, whatever is dated", () => {
  const near = fc.integer({ min: -20, max: 20 }).map((days) => addDays(ON, days));
  const dated = fc.record({ from: near, recheck: near, to: near, lifted: fc.option(near), until: near, born: near });
  fc.assert(
    fc.property(dated, ({ from, recheck, to, lifted, until, born }) => {
      const person = madeUpPerson({
        born: addDays(born, -6575),
        cautions: [stated("knee", { from, recheck })],
        limits: [
          {
            kind: "load",
            atMost: { value: 5, unit: "kg" },
            side: "both",
            from,
            to,
            who: "Dr A",
            ...(lifted === null ? {} : { lifted: { on: lifted, who: "Dr A" } }),
          },
        ],
        screening: { outcome: "start light to moderate", on: recheck, until, by: "coach" },
      });
      const now = clearanceOf(person, ON);
      expect(now.until ?? ON).toBeGreaterThanOrEqual(ON);
      const last = Math.min(now.until ?? addDays(ON, 30), addDays(ON, 30));
      for (let on = ON; on <= last; on = addDays(on, 1)) expect(clearanceOf(person, on)).toEqual(now);
    }),
    { numRuns: 300 },
  );
});

describe("over several days", () => {
  const knee = stated("knee", { from: day("2027-03-15"), recheck: day("2027-06-15") });
  const person = madeUpPerson({ cautions: [knee] });

  test("a caution that begins within them binds from the first, and it is said", () => {
    const span = clearanceOf(person, ON, day("2027-03-28"));
    expect(span.ceilings).toEqual(clearanceOf(person, day("2027-03-15")).ceilings);
    expect(span.throughout).toEqual([
      {
        code: "offer/caution-throughout",
        data: {
          statement: "knee",
          from: "2027-03-15",
          who: "the person",
          first: "2027-03-01",
          last: "2027-03-28",
        },
      },
    ]);
  });

  test("neighbour: one that begins after them does not", () => {
    expect(clearanceOf(person, ON, day("2027-03-14"))).toEqual(clearanceOf(person, ON));
    expect(clearanceOf(person, day("2027-03-15"), day("2027-03-28")).throughout).toEqual([]);
  });

  test("an outcome of light effort that is dated within them keeps 4 in reserve", () => {
    const screening = { outcome: "no reason found", on: day("2027-03-10"), by: "coach", effort: "light" } as const;
    const later = madeUpPerson({ screening: { ...screening, until: day("2027-12-31") } });
    expect(clearanceOf(later, ON, day("2027-03-28")).reserve?.value).toBe(4);
    expect(clearanceOf(later, ON, day("2027-03-09")).reserve).toBeUndefined();
  });
});

test("over a span nothing is looser than on any day of it, whatever is dated", () => {
  const near = fc.integer({ min: -20, max: 20 }).map((days) => addDays(ON, days));
  const dated = fc.record({ a: near, b: near, c: near, d: near, e: near, lifted: fc.option(near), born: near });
  fc.assert(
    fc.property(dated, ({ a, b, c, d, e, lifted, born }) => {
      const step = (value: number, from: Day, to: Day): Limit => ({
        kind: "load",
        atMost: { value, unit: "kg" },
        applies: "total",
        side: "both",
        from,
        to,
        who: "Dr A",
      });
      const review = lifted === null ? {} : { lifted: { on: lifted, who: "Dr A" } };
      const somebody = madeUpPerson({
        born: addDays(born, -6575),
        cautions: [stated("knee", { from: a }), stated("eye", { from: b })],
        limits: [{ ...step(5, c, d), ...review }, step(10, d, e)],
        screening: {
          outcome: "ask a doctor first",
          on: b,
          until: e,
          by: "coach",
          effort: "vigorous",
          agreed: { on: c, who: "Dr A" },
        },
      });
      const last = addDays(ON, 10);
      const span = clearanceOf(somebody, ON, last);
      const most = ({ limits }: Clearance) => Math.min(999, ...limits.loads.map((limit) => limit.atMost!.value));
      for (let on = ON; on <= last; on = addDays(on, 1)) {
        const one = clearanceOf(somebody, on);
        for (const tag of STRESS_TAGS) {
          expect(span.ceilings[tag]?.grade ?? 3).toBeLessThanOrEqual(one.ceilings[tag]?.grade ?? 3);
        }
        expect(span.percent?.value ?? 100).toBeLessThanOrEqual(one.percent?.value ?? 100);
        expect(span.reserve?.value ?? 0).toBeGreaterThanOrEqual(one.reserve?.value ?? 0);
        expect(most(span)).toBeLessThanOrEqual(most(one));
      }
    }),
    { numRuns: 500, seed: 11 },
  );
});

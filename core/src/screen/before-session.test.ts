import { describe, expect, test } from "vitest";
import { addDays, day } from "../day.ts";
import {
  type Answers,
  beforeSession,
  type Consent,
  DISEASES,
  PAIN_RULES,
  PRESSURE_RULES,
  SIGNS,
  STANDS_DAYS,
  type Today,
  usualRules,
} from "./index.ts";

const BORN = day("1967-05-05");
const ON = day("2027-01-11");
const said = (on: string, given: boolean, purpose: Consent["purpose"] = "use my health answers"): Consent => ({
  purpose,
  on: day(on),
  given,
  by: { who: "self" },
});

/** Active, nothing known, nothing felt: goes on without a question. */
const answers = (more: Partial<Answers> = {}): Answers => ({
  on: ON,
  by: "Ines",
  active: true,
  disease: Object.fromEntries(DISEASES.map((name) => [name, false])),
  signs: Object.fromEntries(SIGNS.map((name) => [name, false])),
  wanted: "moderate",
  ...more,
});
const file = (more: Partial<Answers> = {}, consents: readonly Consent[] = [said("2027-01-11", true)]) => ({
  answers: answers(more),
  born: BORN,
  consents,
});
const today = (more: Partial<Today> = {}): Today => ({
  on: day("2027-02-01"),
  by: "Ines",
  news: {},
  consents: [],
  pain: [],
  stop: [],
  ...more,
});
const codes = (session: ReturnType<typeof beforeSession>) => session.because.map(({ code }) => code);
const checkOf = (session: ReturnType<typeof beforeSession>, name: string) =>
  session.checks.find(({ kind }) => kind === name);

describe("anything new since last time?", () => {
  test("asked and nothing: go, and what stands is said", () => {
    const session = beforeSession(file(), today());
    expect(session.before).toBe("go");
    expect(codes(session)).toEqual(["before/screening-stands"]);
    expect(session.again).toBe(false);
  });

  test("not asked: asks", () => {
    const { news: _, ...unasked } = today();
    const session = beforeSession(file(), unasked);
    expect(session.before).toBe("ask");
    expect(codes(session)).toEqual(["before/new-not-asked"]);
  });

  // riebe2015, row of the active with a sign: stop, then a clinician.
  test("a new sign in somebody active holds, and says what was new", () => {
    const session = beforeSession(file(), today({ news: { signs: ["chest pain"] } }));
    expect(session.before).toBe("hold");
    expect(session.again).toBe(true);
    expect(session.screening.outcome).toBe("stop");
    expect(session.because).toContainEqual({
      code: "before/screened-again",
      data: { names: ["chest pain"], wanted: null, active: null },
    });
    expect(codes(session)).toContain("before/screening-holds");
  });

  // riebe2015, row of the active with a disease and no sign: moderate goes on.
  test("a new disease in somebody active softens: moderate at most", () => {
    const session = beforeSession(file(), today({ news: { disease: ["heart"] } }));
    expect(session.before).toBe("soften");
    expect(session.screening).toMatchObject({ outcome: "start light to moderate", effort: "moderate" });
  });

  test("a wish for harder work with a known disease asks a doctor first, and a lost habit counts as one", () => {
    const ill = file({ disease: { ...answers().disease, heart: true } });
    expect(beforeSession(ill, today()).again).toBe(false);
    const harder = beforeSession(ill, today({ news: { wanted: "vigorous" } }));
    expect([harder.again, harder.before]).toEqual([true, "soften"]);
    expect(harder.screened.readiness).toBe("ask a doctor before vigorous");
    const stopped = beforeSession(ill, today({ news: { active: false } }));
    expect([stopped.again, stopped.before]).toEqual([true, "hold"]);
  });

  test("the same sign said again is not new", () => {
    const known = file({ signs: { ...answers().signs, murmur: true }, active: false });
    expect(beforeSession(known, today({ news: { signs: ["murmur"] } })).again).toBe(false);
  });

  test("an unknown condition asks and does not guess", () => {
    const session = beforeSession(file(), today({ news: { other: ["a thing called Q-fever"] } }));
    expect(session.before).toBe("ask");
    expect(session.because).toContainEqual({ code: "before/new-other", data: { said: ["a thing called Q-fever"] } });
    expect(session.again).toBe(false);
  });

  test("new and something else: both grounds are kept, the stricter wins", () => {
    const session = beforeSession(file(), today({ news: { disease: ["heart"], other: ["tablets"] } }));
    expect(session.before).toBe("ask");
    expect(codes(session)).toEqual(expect.arrayContaining(["before/screened-again", "before/new-other"]));
  });
});

describe("the outcome ends, and a question on the way does not prolong it", () => {
  const last = addDays(ON, STANDS_DAYS);
  test.each([
    [last, "go", "before/screening-stands"],
    [addDays(last, 1), "ask", "before/screening-old"],
  ] as const)("day %i: %s", (on, before, code) => {
    const session = beforeSession(file(), today({ on }));
    expect(session.before).toBe(before);
    expect(codes(session)).toContain(code);
  });
  test("screened again with something new, it still ends with the first", () => {
    const session = beforeSession(file(), today({ news: { disease: ["kidney"] } }));
    expect(session.screening.until).toBe(last);
    expect(session.screening.on).toBe(day("2027-02-01"));
  });
  test("a day before the screening is refused", () => {
    expect(() => beforeSession(file(), today({ on: addDays(ON, -1) }))).toThrow(RangeError);
    expect(beforeSession(file(), today({ on: ON })).before).toBe("go");
  });
});

describe("a doctor first", () => {
  const ill = { active: false, disease: { ...answers().disease, heart: true } };
  test("holds without an agreement, goes with one", () => {
    expect(beforeSession(file(ill), today()).before).toBe("hold");
    const agreed = file({ ...ill, cleared: { on: ON, who: "Dr Aziz", effort: "moderate" } });
    const session = beforeSession(agreed, today());
    expect(session.before).toBe("go");
    expect(session.screening.agreed?.who).toBe("Dr Aziz");
    expect(session.because).toContainEqual({ code: "screen/locked", data: { effort: "vigorous" } });
  });
  test("the milder rule for diabetes alone lets start what the strict one holds", () => {
    const sugar = file({ active: false, disease: { ...answers().disease, "diabetes type 2": true } });
    expect(beforeSession(sugar, today()).before).toBe("hold");
    expect(beforeSession(sugar, today(), usualRules(), "mild").before).toBe("go");
  });
});

describe("consent, purpose by purpose", () => {
  const readings = { pressure: { readings: [{ systolic: 190, diastolic: 100 }] as const, note: false }, slept: 3 };
  test("never asked and a child alone ask; what was measured is judged all the same", () => {
    const never = beforeSession(file({}, []), today(readings));
    expect(codes(never)).toEqual(
      expect.arrayContaining(["before/consent-not-asked", "before/pressure-again", "before/slept-little"]),
    );
    const child = { ...file({}, [said("2027-01-11", true)]), born: day("2014-06-01") };
    expect(codes(beforeSession(child, today()))).toContain("before/consent-guardian");
    const grown = { ...child, consentAge: { country: "United Kingdom", age: 13 } };
    expect(codes(beforeSession({ ...grown, born: day("2013-06-01") }, today()))).not.toContain(
      "before/consent-guardian",
    );
  });

  test("withdrawn: nothing of health is looked at, the outcome and its limits stay, work is softer", () => {
    const session = beforeSession(
      file({}, [said("2027-01-11", true)]),
      today({ ...readings, consents: [said("2027-02-01", false)], pain: [], news: { signs: ["faint"] } }),
    );
    expect(session.before).toBe("soften");
    expect(session.again).toBe(false);
    expect(session.checks.map(({ kind }) => kind)).toEqual(["consent", "screening", "new"]);
    expect(checkOf(session, "new")?.because).toEqual([
      { code: "before/not-used", data: { answers: ["pressure", "slept", "new"] } },
    ]);
    expect(checkOf(session, "screening")?.because.map(({ code }) => code)).toEqual([
      "before/screening-stands",
      "before/screening-sealed",
    ]);
  });

  test("withdrawn, and nothing was said of today: nothing is named as not used; a pain is", () => {
    const consents = [said("2027-01-20", false)];
    const { news: _, ...silent } = today();
    expect(checkOf(beforeSession(file({}, consents), silent), "new")?.because).toEqual([]);
    const pain = [{ where: "knee", score: 9, rising: false, signs: [] }];
    expect(checkOf(beforeSession(file({}, consents), { ...silent, pain }), "new")?.because).toEqual([
      { code: "before/not-used", data: { answers: ["pain"] } },
    ]);
  });

  test("withdrawn, a held outcome stays held and the stop list still stops", () => {
    const ill = file({ active: false, disease: { ...answers().disease, heart: true } }, [
      said("2027-01-11", true),
      said("2027-01-20", false),
    ]);
    expect(beforeSession(ill, today()).before).toBe("hold");
    const stop = beforeSession(file({}, [said("2027-01-20", false)]), today({ stop: ["faint or dizzy"] }));
    expect(stop.before).toBe("hold");
    expect(codes(stop)).toContain("before/stop-now");
  });

  test("one purpose says nothing of another", () => {
    const { consents } = beforeSession(
      file({}, [said("2027-01-11", true), said("2027-01-11", false, "photos")]),
      today(),
    );
    expect(consents.filter(({ state }) => state !== "never asked")).toEqual([
      { purpose: "use my health answers", state: "given" },
      { purpose: "photos", state: "withdrawn" },
    ]);
  });
});

describe("where sources conflict, one is chosen and the others are said", () => {
  const high = {
    readings: [
      { systolic: 184, diastolic: 104 },
      { systolic: 182, diastolic: 104 },
    ] as const,
    note: false,
  };
  // liftingPressure2024 holds from 180/110; acsmGuidelines9 prints 200/110 for a test.
  test("182/104 is held by one rule and let go by the other", () => {
    const by = (at: number) =>
      checkOf(
        beforeSession(file(), today({ pressure: high }), { ...usualRules(), pressure: PRESSURE_RULES[at]! }),
        "pressure",
      )!;
    expect(by(0)).toMatchObject({ before: "hold", rule: { id: "lifting 2024" } });
    expect(by(0).others).toEqual([{ rule: PRESSURE_RULES[1], before: "go" }]);
    expect(by(1)).toMatchObject({ before: "go", rule: { id: "exercise test" } });
    expect(by(1).others).toEqual([{ rule: PRESSURE_RULES[0], before: "hold" }]);
  });
  test("where they agree nothing is said of the others", () => {
    const fine = { readings: [{ systolic: 120, diastolic: 70 }] as const, note: false };
    expect(checkOf(beforeSession(file(), today({ pressure: fine })), "pressure")?.others).toEqual([]);
  });
  test("glucose 255 mg/dL, pain 3, a night and days after an illness each name their rule", () => {
    const session = beforeSession(
      file(),
      today({
        glucose: { value: 255, unit: "mg/dL" },
        pain: [{ where: "left knee", score: 3, rising: false, signs: [] }],
        lastIll: day("2027-01-28"),
        slept: 4,
      }),
    );
    const rules = session.checks.flatMap(({ kind, rule, others }) =>
      rule === undefined ? [] : [[kind, rule.id, others.map((other) => [other.rule.id, other.before])]],
    );
    expect(rules).toEqual([
      ["glucose", "bands of 2016", [["mountain medicine", "go"]]],
      ["pain", PAIN_RULES[0]!.id, [[PAIN_RULES[1]!.id, "go"]]],
      ["illness", "seven-day ladder", [["seven days free, two weeks gentle", "hold"]]],
      ["sleep", "short night, under 5 h", []],
    ]);
    expect(checkOf(session, "pain")?.because[0]?.data).toMatchObject({ where: "left knee", score: 3 });
    expect(checkOf(session, "illness")?.because[0]?.data).toMatchObject({ minutes: 45, resistance: "light" });
  });
  test("ill today counts no day as free, whatever day is named as the last", () => {
    const session = beforeSession(file(), today({ ill: ["runny nose"], lastIll: day("2027-01-20") }));
    expect(session.checks.filter(({ kind }) => kind === "illness").map(({ before }) => before)).toEqual([
      "soften",
      "hold",
    ]);
  });
  test("each place of pain is judged by itself, and the worst decides", () => {
    const pain = [1, 7].map((score) => ({ where: `place ${score}`, score, rising: false, signs: [] }));
    const session = beforeSession(file(), today({ pain }));
    expect(session.checks.filter(({ kind }) => kind === "pain").map(({ before }) => before)).toEqual(["go", "hold"]);
    expect(session.before).toBe("hold");
  });
});

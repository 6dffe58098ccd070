/** Situations with the answer a competent coach or source gives, each with a neighbour that differs in one fact. */
import { describe, expect, test } from "vitest";
import { ageOn, day } from "../day.ts";
import {
  type Answers,
  beforeSession,
  type Consent,
  consentsOn,
  DISEASES,
  glucoseBefore,
  PRESSURE_RULES,
  pressureBefore,
  SIGNS,
  screen,
  withNews,
} from "./index.ts";

const none = (on: string, more: Partial<Answers> = {}): Answers => ({
  on: day(on),
  by: "coach",
  active: false,
  disease: Object.fromEntries(DISEASES.map((name) => [name, false])),
  signs: Object.fromEntries(SIGNS.map((name) => [name, false])),
  wanted: "moderate",
  ...more,
});

describe("sc-01: risk factors without disease or signs do not ask for a doctor (published case)", () => {
  const answers = none("2027-01-11");
  test("start light to moderate, nobody asked first", () => {
    const { screening, locked } = screen(answers, day("2001-06-01"));
    expect(screening.outcome).toBe("start light to moderate");
    expect(locked.map(({ code }) => code)).not.toContain("screen/all-locked");
  });
  test("a diagnosis instead of a raised value differs", () => {
    const diagnosed = { ...answers, disease: { ...answers.disease, "diabetes type 2": true } };
    expect(screen(diagnosed, day("2001-06-01")).screening.outcome).toBe("ask a doctor first");
  });
});

describe("sc-03: a stent four years ago, active, wants hard intervals; later tight on the stairs (handbook)", () => {
  const born = day("1967-05-05");
  const answers = none("2027-01-11", {
    active: true,
    disease: { ...none("2027-01-11").disease, heart: true },
    wanted: "vigorous",
  });
  test("moderate goes on without a new clearance, vigorous stays locked", () => {
    const { screening, locked } = screen(answers, born);
    expect(screening).toMatchObject({ outcome: "start light to moderate", effort: "moderate" });
    expect(locked).toEqual([{ code: "screen/locked", data: { effort: "vigorous" } }]);
  });
  test("week 6, new chest tightness: all held, and it says why", () => {
    const { screening, because, locked } = screen(
      withNews(answers, { signs: ["chest pain"] }, day("2027-02-15"), "Ines"),
      born,
    );
    expect(screening.outcome).toBe("stop");
    expect(because).toContainEqual({ code: "screen/signs", data: { signs: ["chest pain"] } });
    expect(locked).toEqual([{ code: "screen/all-locked", data: {} }]);
  });
  test("without the stent the intervals are open", () => {
    expect(screen({ ...answers, disease: none("2027-01-11").disease }, born).locked).toEqual([]);
  });
});

describe("sc-05: 184/112, after five minutes 182/111 (handbook)", () => {
  const first = { systolic: 184, diastolic: 112 };
  test("no lifting today by every rule here, the limit printed; a settled reading differs", () => {
    for (const rule of PRESSURE_RULES) {
      const answer = pressureBefore([first, { systolic: 182, diastolic: 111 }], true, rule);
      expect(answer.before).toBe("hold");
      expect(answer.because[0]?.data).toMatchObject({ limit: { diastolic: 110 }, rule: rule.id });
    }
    expect(pressureBefore([first, { systolic: 152, diastolic: 92 }], true).before).toBe("go");
  });
});

describe("sc-07: two units with the same digits (handbook)", () => {
  const typed = [
    [4.4, "mmol/L", 79, "before/glucose-low"],
    [14.5, "mmol/L", 261, "before/glucose-ketones"],
    [79, "mg/dL", 79, "before/glucose-low"],
    [260, "mg/dL", 260, "before/glucose-ketones"],
  ] as const;
  test.each(typed)("%d %s", (value, unit, mgdl, code) => {
    const { because } = glucoseBefore({ value, unit, shortOrHard: true });
    expect(because[0]).toMatchObject({ code, data: { mgdl } });
  });
  test("the same digits in the other unit are refused", () => {
    expect(glucoseBefore({ value: 79, unit: "mmol/L" }).because[0]?.code).toBe("before/glucose-impossible");
    expect(glucoseBefore({ value: 4.4, unit: "mg/dL" }).because[0]?.code).toBe("before/glucose-impossible");
  });
});

describe("sc-10: born on 29 February, under age, a murmur that is said to be over (handbook)", () => {
  const born = day("2012-02-29");
  const answers = none("2027-03-01", { past: ["heart murmur as a baby"] });
  test("15 on 1 March, 14 the day before; guardian and note asked for", () => {
    expect(ageOn(born, day("2027-02-28"))).toBe(14);
    const { because, screening } = screen(answers, born);
    expect(screening.outcome).toBe("start light to moderate");
    expect(because).toContainEqual({ code: "screen/under-age", data: { age: 15 } });
    expect(because.map(({ code }) => code)).toContain("screen/past");
  });
  test("a grown person without the history is asked neither", () => {
    const codes = screen(none("2027-03-01"), day("1995-01-01")).because.map(({ code }) => code);
    expect(codes).not.toContain("screen/under-age");
    expect(codes).not.toContain("screen/past");
  });
});

describe("ot-07: one box for terms, health, photos and news; later the health part is withdrawn; 12 in another variant (handbook)", () => {
  const said = (purpose: Consent["purpose"], on: string, given: boolean): Consent => ({
    purpose,
    on: day(on),
    given,
    by: { who: "self" },
  });
  const consents = [
    said("use my health answers", "2027-01-11", true),
    said("photos", "2027-01-11", true),
    said("use my health answers", "2027-02-01", false),
  ];
  const uk = { country: "United Kingdom", age: 13 };
  const file = { answers: none("2027-01-11", { active: true }), born: day("1990-05-05"), consents, consentAge: uk };
  const measured = { readings: [{ systolic: 190, diastolic: 100 }] as const, note: false };
  const today = { on: day("2027-02-01"), by: "Ines", news: {}, consents: [], pain: [], stop: [], pressure: measured };
  test("photos and news follow their own boxes", () => {
    const states = consentsOn(file, today.on).map(({ purpose, state }) => [purpose, state]);
    expect(states).toContainEqual(["use my health answers", "withdrawn"]);
    expect(states).toContainEqual(["photos", "given"]);
    expect(states).toContainEqual(["news and offers", "never asked"]);
  });
  test("health answers stop being used, the cautious default stays, and it is said", () => {
    const session = beforeSession(file, today);
    expect(session.before).toBe("soften");
    expect(session.because.map(({ code }) => code)).toContain("before/consent-withdrawn");
    expect(JSON.stringify(session.checks)).not.toContain("190");
  });
  test("the day before, the reading counts", () => {
    const session = beforeSession(file, { ...today, on: day("2027-01-31") });
    expect(session.because.map(({ code }) => code)).toEqual(["before/pressure-again"]);
  });
  test("12 under a law of 13: a parent consents; 13: the child does", () => {
    const health = (born: string) =>
      consentsOn({ ...file, consents: [consents[0]!], born: day(born) }, day("2027-01-11"))[1]?.state;
    expect(health("2014-01-12")).toBe("needs a guardian");
    expect(health("2014-01-11")).toBe("given");
  });
});

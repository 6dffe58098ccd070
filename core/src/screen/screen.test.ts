import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import { type Answers, DISEASES, SIGNS, screen } from "./index.ts";

const BORN = day("1968-03-02");
const NONE: Answers = {
  on: day("2027-01-11"),
  by: "coach",
  active: false,
  disease: Object.fromEntries(DISEASES.map((name) => [name, false])),
  signs: Object.fromEntries(SIGNS.map((name) => [name, false])),
  wanted: "moderate",
};
const codes = (answers: Answers, ...more: [] | ["mild"]) =>
  screen(answers, BORN, ...more).because.map(({ code }) => code);

describe("riebe2015, the outcome that is entered", () => {
  test("nobody to ask: light to moderate, vigorous locked, for a year", () => {
    const { screening, locked, ruleSet } = screen(NONE, BORN);
    expect(screening).toEqual({
      outcome: "start light to moderate",
      effort: "moderate",
      on: day("2027-01-11"),
      until: day("2028-01-11"),
      by: "coach",
    });
    expect(locked).toEqual([{ code: "screen/locked", data: { effort: "vigorous" } }]);
    expect(ruleSet).toEqual({ id: "riebe2015", dated: "2015-11", diabetes: "strict" });
  });

  test("active with nothing known: no reason found, nothing locked", () => {
    const { screening, locked } = screen({ ...NONE, active: true, wanted: "vigorous" }, BORN);
    expect(screening.outcome).toBe("no reason found");
    expect(screening.effort).toBeUndefined();
    expect(locked).toEqual([]);
  });

  test("active with known disease: moderate goes on, vigorous waits for a clinician's yes of the last 12 months", () => {
    const heart: Answers = { ...NONE, active: true, disease: { ...NONE.disease, heart: true }, wanted: "vigorous" };
    expect(screen(heart, BORN).readiness).toBe("ask a doctor before vigorous");
    expect(screen(heart, BORN).screening).toMatchObject({ outcome: "start light to moderate", effort: "moderate" });
    const cleared = { on: day("2026-06-01"), who: "Dr Amsel", effort: "vigorous" } as const;
    const opened = screen({ ...heart, cleared }, BORN);
    expect(opened.screening).toMatchObject({ outcome: "no reason found", until: day("2027-06-01") });
    const old = screen({ ...heart, cleared: { ...cleared, on: day("2026-01-10") } }, BORN);
    expect(old.screening.effort).toBe("moderate");
    expect(old.because.map(({ code }) => code)).toContain("screen/clearance-old");
    expect(screen({ ...heart, cleared: { ...cleared, on: day("2026-01-11") } }, BORN).readiness).toBe("go on");
    expect(screen({ ...heart, cleared: { ...cleared, effort: "moderate" } }, BORN).screening.effort).toBe("moderate");
    expect(screen({ ...heart, cleared: { ...cleared, on: day("2027-01-12") } }, BORN).screening.effort).toBe(
      "moderate",
    );
  });

  test("a sign stops whoever is active and asks for a doctor in whoever is not", () => {
    const signs = { ...NONE.signs, "chest pain": true };
    expect(screen({ ...NONE, active: true, signs }, BORN).screening.outcome).toBe("stop");
    expect(screen({ ...NONE, signs }, BORN).screening.outcome).toBe("ask a doctor first");
    expect(screen({ ...NONE, signs }, BORN).locked).toEqual([{ code: "screen/all-locked", data: {} }]);
  });

  test("a clinician's yes covers only the signs it names", () => {
    const signs = { ...NONE.signs, murmur: true };
    const cleared = { on: day("2026-12-01"), who: "Dr Amsel", effort: "moderate", about: ["murmur"] } as const;
    const known = screen({ ...NONE, active: true, signs, cleared }, BORN);
    expect(known.screening).toMatchObject({
      outcome: "ask a doctor first",
      agreed: { on: day("2026-12-01"), who: "Dr Amsel" },
      effort: "moderate",
      until: day("2027-12-01"),
    });
    const more = screen({ ...NONE, active: true, signs: { ...signs, palpitations: true }, cleared }, BORN);
    expect(more.screening.outcome).toBe("stop");
    expect(more.because).toContainEqual({
      code: "screen/clearance-before-signs",
      data: { on: "2026-12-01", who: "Dr Amsel", signs: ["palpitations"] },
    });
  });
});

describe("missing answers are read the safe way (ours, no source)", () => {
  test.each(DISEASES)("%s not answered counts as yes", (name) => {
    const { [name]: _, ...disease } = NONE.disease;
    expect(screen({ ...NONE, disease }, BORN).screening.outcome).toBe("ask a doctor first");
    expect(codes({ ...NONE, disease })).toContain("screen/missing");
  });
  test.each(SIGNS)("%s not answered counts as yes", (name) => {
    const { [name]: _, ...signs } = NONE.signs;
    expect(screen({ ...NONE, active: true, signs }, BORN).screening.outcome).toBe("stop");
  });
  test("active not answered counts as no, the wish as vigorous", () => {
    const { active: _, wanted: __, ...rest } = NONE;
    const found = screen({ ...rest, disease: { ...NONE.disease, kidney: true } }, BORN);
    expect(found.screening.outcome).toBe("ask a doctor first");
    expect(found.because).toContainEqual({ code: "screen/missing", data: { answers: ["active", "wanted"] } });
    expect(found.because).toContainEqual({ code: "screen/wanted", data: { effort: "vigorous" } });
  });
});

describe("colberg2016 against riebe2015: diabetes alone", () => {
  const diabetes: Answers = { ...NONE, disease: { ...NONE.disease, "diabetes type 2": true } };
  test("the strict rule asks a doctor first, the mild one starts; each says so", () => {
    expect(screen(diabetes, BORN).screening.outcome).toBe("ask a doctor first");
    expect(codes(diabetes)).toContain("screen/diabetes-strict");
    expect(screen(diabetes, BORN, "mild").screening).toMatchObject({ outcome: "start light to moderate" });
    expect(codes(diabetes, "mild")).toContain("screen/diabetes-mild");
  });
  test("the mild rule ends where vigorous work, a sign or another disease begins", () => {
    for (const other of [
      { ...diabetes, wanted: "vigorous" as const },
      { ...diabetes, signs: { ...NONE.signs, faint: true } },
      { ...diabetes, disease: { ...diabetes.disease, kidney: true } },
    ]) {
      expect(screen(other, BORN, "mild").screening.outcome).toBe("ask a doctor first");
    }
  });
});

test("under 18 a guardian is asked for, and history that is said to be over asks for a note", () => {
  const young = screen({ ...NONE, on: day("2030-03-01"), past: ["a murmur as a baby"] }, day("2012-03-02"));
  expect(young.because).toContainEqual({ code: "screen/under-age", data: { age: 17 } });
  expect(young.because).toContainEqual({ code: "screen/past", data: { past: ["a murmur as a baby"] } });
  const grown = screen({ ...NONE, on: day("2030-03-02") }, day("2012-03-02"));
  expect(grown.because.map(({ code }) => code)).not.toContain("screen/under-age");
});

test("a clinician's yes that nobody needed does not shorten the year", () => {
  const cleared = { on: day("2026-10-01"), who: "Dr Amsel", effort: "vigorous" as const };
  expect(screen({ ...NONE, active: true, cleared }, BORN).screening.until).toBe(day("2028-01-11"));
});

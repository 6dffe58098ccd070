import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import {
  type Answers,
  type AnswersFile,
  adviceRequest,
  beforeSession,
  DISEASES,
  SIGNS,
  screen,
  type Today,
} from "./index.ts";

const agreed: AnswersFile["consents"] = [
  { purpose: "use my health answers", on: day("2027-01-11"), given: true, by: { who: "self" } },
  { purpose: "share with my clinician", on: day("2027-01-11"), given: true, by: { who: "self" } },
];
const file = (more: Partial<Answers> = {}, rest: Partial<AnswersFile> = {}): AnswersFile => ({
  person: "dagny",
  name: "Dagny T.",
  born: day("1967-05-05"),
  consents: agreed,
  answers: {
    on: day("2027-01-11"),
    by: "Ines",
    active: true,
    disease: Object.fromEntries(DISEASES.map((name) => [name, false])),
    signs: Object.fromEntries(SIGNS.map((name) => [name, false])),
    wanted: "moderate",
    ...more,
  },
  ...rest,
});
const ask = (said: AnswersFile) => adviceRequest(said, screen(said.answers, said.born));
const requestOf = (said: AnswersFile) => {
  const answer = ask(said);
  if (!answer.ok) throw new Error(answer.reason.code);
  return answer.request;
};
const heart = { disease: { ...file().answers.disease, heart: true } };
const murmur = { signs: { ...file().answers.signs, murmur: true } };

describe("what causes the question and nothing else", () => {
  test("a sign: it, whether active, and what the person wants", () => {
    const request = requestOf(file(murmur));
    expect(request.facts).toEqual([
      { code: "request/active", data: { active: true } },
      { code: "request/signs", data: { names: ["murmur"] } },
    ]);
    expect(request).toMatchObject({ name: "Dagny T.", by: "Ines", wanted: "moderate", efforts: ["light", "moderate"] });
  });
  test("what was not answered is named as such and never as a yes", () => {
    const { faint: _, ...signs } = file().answers.signs;
    const { facts } = requestOf(file({ signs, active: false }));
    expect(facts).toContainEqual({ code: "request/not-answered", data: { names: ["faint"] } });
    expect(facts.map(({ code }) => code)).not.toContain("request/signs");
  });
  test("an earlier agreement is told, with what it was for", () => {
    const cleared = { on: day("2025-01-11"), who: "Dr Aziz", effort: "light" as const };
    expect(requestOf(file({ ...murmur, cleared })).facts).toContainEqual({
      code: "request/cleared",
      data: { on: "2025-01-11", who: "Dr Aziz", effort: "light" },
    });
  });
  test("vigorous work with a known disease asks, moderate does not", () => {
    expect(requestOf(file({ ...heart, wanted: "vigorous" })).efforts).toEqual(["light", "moderate", "vigorous"]);
    expect(ask(file(heart))).toEqual({ ok: false, reason: { code: "request/nothing-to-ask", data: {} } });
  });
  test("what is said to be over asks for a note; nothing at all asks for nothing", () => {
    expect(requestOf(file({ past: ["a murmur as a baby"] })).facts).toEqual([
      { code: "request/past", data: { past: ["a murmur as a baby"] } },
    ]);
    expect(ask(file()).ok).toBe(false);
  });
  test("once a clinician agreed there is nothing to ask", () => {
    const cleared = { on: day("2027-01-05"), who: "Dr Aziz", effort: "moderate" as const };
    expect(ask(file({ ...heart, active: false })).ok).toBe(true);
    expect(ask(file({ ...heart, active: false, cleared })).ok).toBe(false);
  });
});

describe("only with the person's consent to share", () => {
  const state = (consents: AnswersFile["consents"], rest: Partial<AnswersFile> = {}) => {
    const answer = ask(file(murmur, { consents, ...rest }));
    return answer.ok ? "given" : answer.reason.data["state"];
  };
  const share = agreed[1]!;
  test("never asked, withdrawn, a child alone, given again", () => {
    expect(state([agreed[0]!])).toBe("never asked");
    expect(state([share, { ...share, given: false }])).toBe("withdrawn");
    expect(state([share], { born: day("2014-01-01") })).toBe("needs a guardian");
    expect(state([share, { ...share, given: false }, share])).toBe("given");
    expect(state([{ ...share, on: day("2027-01-12") }])).toBe("never asked");
  });
  test("the page says who agreed and when; the latest counts", () => {
    expect(requestOf(file(murmur)).consent).toEqual({ on: day("2027-01-11"), by: "Dagny T.", guardian: false });
    const later = { ...share, on: day("2027-01-11"), by: { who: "guardian" as const, name: "Ann" } };
    expect(requestOf(file(murmur, { consents: [{ ...share, on: day("2027-01-02") }, later] })).consent).toEqual({
      on: day("2027-01-11"),
      by: "Ann",
      guardian: true,
    });
  });
  test("of two statements on one day the later in the file says who", () => {
    const by = (name: string) => ({ ...share, by: { who: "guardian" as const, name } });
    expect(requestOf(file(murmur, { consents: [by("Ann"), by("Bea")] })).consent.by).toBe("Bea");
  });
  test("without a name the id stands there", () => {
    const { name: _, ...nameless } = file(murmur);
    expect(requestOf(nameless).name).toBe("dagny");
  });
});

describe("a day on which something was measured", () => {
  const today = (more: Partial<Today>): Today => ({
    on: day("2027-02-01"),
    by: "Jo",
    news: {},
    consents: [],
    pain: [],
    stop: [],
    ...more,
  });
  const factsOf = (more: Partial<Today>) => {
    const said = file();
    const day = today(more);
    const before = beforeSession(said, day);
    const answer = adviceRequest(said, before.screened, { today: day, before });
    return answer.ok ? answer.request.facts : [];
  };
  const readings = [
    { systolic: 184, diastolic: 112 },
    { systolic: 182, diastolic: 111 },
  ] as const;
  test("a pressure that holds is told with all readings and the rule; one that does not is not told", () => {
    expect(factsOf({ pressure: { readings, note: false }, slept: 3 })).toEqual([
      { code: "request/pressure", data: { readings, rule: "lifting 2024", dated: "2024" } },
    ]);
    expect(factsOf({ pressure: { readings: [{ systolic: 120, diastolic: 80 }], note: false } })).toEqual([]);
  });
  test("glucose, pain and illness that hold, and what is new in the person's words", () => {
    expect(
      factsOf({
        glucose: { value: 15, unit: "mmol/L", ketones: "moderate or large" },
        pain: [{ where: "left knee", score: 7, rising: false, signs: [] }],
        ill: ["palpitations"],
        news: { other: ["new tablets"] },
      }).map(({ code, data }) => [code, data["value"] ?? data["where"] ?? data["signs"] ?? data["said"]]),
    ).toEqual([
      ["request/glucose", 15],
      ["request/pain", "left knee"],
      ["request/ill", ["palpitations"]],
      ["request/said", ["new tablets"]],
    ]);
    expect(
      factsOf({
        glucose: { value: 6, unit: "mmol/L" },
        pain: [{ where: "left knee", score: 1, rising: false, signs: [] }],
        ill: ["sneezing"],
      }),
    ).toEqual([]);
  });
  test("a new sign is asked about, by whoever asked on that day", () => {
    const said = file();
    const day = today({ news: { signs: ["faint"] } });
    const before = beforeSession(said, day);
    const answer = adviceRequest(said, before.screened, { today: day, before });
    expect(answer).toMatchObject({ ok: true, request: { by: "Jo", on: day.on } });
    expect(answer.ok && answer.request.facts).toContainEqual({ code: "request/signs", data: { names: ["faint"] } });
  });
});

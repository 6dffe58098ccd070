import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import { adviceRequest } from "./advice-request.ts";
import { DISEASES, SIGNS } from "./answers.ts";
import { readAnswers } from "./answers-read.ts";
import { screen } from "./screen.ts";

const file = (more: string) => {
  const read = readAnswers(
    `stave: 1
person: ann
born: 1980-02-29
on: 2027-03-01
by: Imke Farrowdale
active: yes
disease: { ${DISEASES.map((name) => `${name}: no`).join(", ")} }
signs: { ${SIGNS.map((name) => `${name}: no`).join(", ")} }
wanted: moderate
consents: [{ purpose: share with my clinician, on: 2027-03-01, given: yes, by: self }]
${more}
`,
    "answers.yaml",
  );
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value.value;
};

describe("a condition that stands on no list", () => {
  const stated = file("other: [epilepsy, a rare one]");
  test("is asked about and decides nothing by itself", () => {
    const [plain, named] = [file(""), stated].map(({ answers, born }) => screen(answers, born));
    expect(named!.screening).toEqual(plain!.screening);
    expect(named!.because.find(({ code }) => code === "screen/other")?.data).toEqual({
      said: ["epilepsy", "a rare one"],
    });
    expect(plain!.because.map(({ code }) => code)).not.toContain("screen/other");
  });
  test("goes into the request to a clinician, which is not empty because of it", () => {
    const ask = (from: ReturnType<typeof file>) => adviceRequest(from, screen(from.answers, from.born));
    expect(ask(stated)).toMatchObject({ ok: true });
    expect(JSON.stringify(ask(stated))).toContain("epilepsy");
    expect(ask(file(""))).toMatchObject({ ok: false });
  });
  test("an empty word and a long list are refused", () => {
    for (const other of ["['']", `[${Array(21).fill("x").join(", ")}]`])
      expect(() => file(`other: ${other}`)).toThrow();
  });
});

test("somebody born on 29 February turns eighteen on the first of March where there is no 29th", () => {
  const under = (on: string) => {
    const answers = { ...file("").answers, on: day(on) };
    return screen(answers, day("2008-02-29")).because.some(({ code }) => code === "screen/under-age");
  };
  expect([under("2026-02-28"), under("2026-03-01")]).toEqual([true, false]);
});

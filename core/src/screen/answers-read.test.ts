import { expect, test } from "vitest";
import { day } from "../day.ts";
import { readAnswers } from "./answers-read.ts";

const WHOLE = `stave: 1
person: dagny
born: 1956-02-29
on: 2027-01-11
by: Ines
active: yes
disease:
  heart: yes
  diabetes type 1: no
signs: { chest pain: no }
wanted: vigorous
cleared: { on: 2026-10-01, who: Dr Amsel, effort: moderate, about: [murmur] }
past: [a murmur as a baby]
name: Dagny Thorsdottir
consents: [{ purpose: photos, on: 2027-01-11, given: no, by: self }, { purpose: photos, on: 2027-01-12, given: yes, by: { guardian: Ann } }]
age of consent: { country: United Kingdom, age: 13 }
`;
const problemsOf = (text: string) => readAnswers(text, "a.yaml").problems.map(({ code, line }) => [code, line]);

test("a whole file; what is left out stays not answered", () => {
  const read = readAnswers(WHOLE, "a.yaml");
  expect(read.ok && read.value.value).toEqual({
    person: "dagny",
    name: "Dagny Thorsdottir",
    born: day("1956-02-29"),
    consents: [
      { purpose: "photos", on: day("2027-01-11"), given: false, by: { who: "self" } },
      { purpose: "photos", on: day("2027-01-12"), given: true, by: { who: "guardian", name: "Ann" } },
    ],
    consentAge: { country: "United Kingdom", age: 13 },
    answers: {
      on: day("2027-01-11"),
      by: "Ines",
      active: true,
      disease: { heart: true, "diabetes type 1": false },
      signs: { "chest pain": false },
      wanted: "vigorous",
      cleared: { on: day("2026-10-01"), who: "Dr Amsel", effort: "moderate", about: ["murmur"] },
      past: ["a murmur as a baby"],
    },
  });
});

test("an unknown condition asks and does not guess", () => {
  const read = readAnswers(WHOLE.replace("heart: yes", "hart: yes"), "a.yaml");
  expect(read.ok).toBe(false);
  expect(read.problems[0]).toMatchObject({ line: 8, found: "hart" });
});

test("problems with their lines, all at once", () => {
  expect(problemsOf(WHOLE.replace("active: yes", "active: maybe").replace("1956-02-29", "2057-02-28"))).toEqual([
    ["answers/born-later", 3],
    ["value/choice", 6],
  ]);
  expect(problemsOf(WHOLE.replace("2026-10-01", "2027-01-12"))).toEqual([["answers/cleared-later", 12]]);
  expect(problemsOf(WHOLE.replace("1956-02-29", "1955-02-29"))).toEqual([["date/none", 3]]);
  expect(problemsOf(WHOLE.replace("age: 13", "age: 12"))).toEqual([["value/small", 16]]);
  expect(problemsOf(WHOLE.replace("guardian: Ann", "gardian: Ann")).map(([code]) => code)).toContain("key/unknown");
  expect(problemsOf("")).toEqual([["yaml/empty", 1]]);
});

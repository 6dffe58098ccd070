import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import { readToday } from "./today-read.ts";

const HEAD = "stave: 1\nperson: tobiah\non: 2027-01-20\nby: Ines\n";
const read = (more: string) => readToday(HEAD + more, "today.yaml");
const todayOf = (more: string) => {
  const found = read(more);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found.value.value.today;
};
const wrong = (more: string) => {
  const { problems } = read(more);
  return problems.map(({ code, line, column, found, maybe }) => [code, line, column, found, maybe]);
};

test("nothing but the head: nothing was asked", () => {
  expect(todayOf("")).toEqual({ on: day("2027-01-20"), by: "Ines", consents: [], pain: [], stop: [] });
});

test("asked and nothing new is another thing than not asked", () => {
  expect(todayOf("new: nothing").news).toEqual({});
  expect(todayOf("new: { other: [new tablets], active: no }").news).toEqual({ other: ["new tablets"], active: false });
});

test("all that can be said", () => {
  expect(
    todayOf(`pressure: { readings: [184/112, 182 / 111 mmHg], note allows light: yes }
glucose: { reading: "5,4 mmol/l", ketones: none or small, severe low: no, short or very hard: yes }
pain: [{ where: left knee, score: 3, morning: 2, rising: yes, signs: [swelling] }, { where: elbow, score: 0 }]
ill: []
last ill: 2027-01-20
slept: 6.5 h
stop: [faint or dizzy]
consents: [{ purpose: photos, on: 2027-01-20, given: no, by: { guardian: Ann } }]
`),
  ).toEqual({
    on: day("2027-01-20"),
    by: "Ines",
    pressure: {
      readings: [
        { systolic: 184, diastolic: 112 },
        { systolic: 182, diastolic: 111 },
      ],
      note: true,
    },
    glucose: { value: 5.4, unit: "mmol/L", ketones: "none or small", severeLow: false, shortOrHard: true },
    pain: [
      { where: "left knee", score: 3, morning: 2, rising: true, signs: ["swelling"] },
      { where: "elbow", score: 0, rising: false, signs: [] },
    ],
    ill: [],
    lastIll: day("2027-01-20"),
    slept: 6.5,
    stop: ["faint or dizzy"],
    consents: [{ purpose: "photos", on: day("2027-01-20"), given: false, by: { who: "guardian", name: "Ann" } }],
  });
});

describe("what is wrong, with its place", () => {
  test.each([
    ["pressure: { readings: [184-112] }", "before/pressure-form", 24],
    ["pressure: { readings: [82/128] }", "before/pressure-size", 24],
    ["pressure: { readings: [301/100] }", "before/pressure-size", 24],
    ["pressure: { readings: [59/40] }", "before/pressure-size", 24],
    ["pressure: { readings: [128/29] }", "before/pressure-size", 24],
    ["pressure: { readings: [250/201] }", "before/pressure-size", 24],
    ["pressure: { readings: [] }", "value/few", 23],
    ["glucose: { reading: 5.4 }", "before/glucose-unit", 21],
    ["glucose: { reading: 5.4 g }", "before/glucose-form", 21],
    ["glucose: { reading: low }", "before/glucose-form", 21],
    ["pain: [{ where: knee, score: 11 }]", "value/big", 30],
    ["slept: 6", "before/slept-form", 8],
    ["slept: 25 h", "before/slept-form", 8],
    ["ill: [measles]", "value/choice", 7],
    ["last ill: 2027-01-21", "before/ill-later", 11],
    ["new: nothing much", "value/type", 6],
    ["stop: [fainting]", "value/choice", 8],
    ["weight: 80 kg", "key/unknown", 1],
  ])("%s", (more, code, column) => {
    expect(wrong(more)[0]?.slice(0, 3)).toEqual([code, 5, column]);
  });
  test("a value of the other unit is told as such", () => {
    expect(wrong("glucose: { reading: 79 mmol/L }")).toEqual([["before/glucose-size", 5, 21, "79 mmol/L", "79 mg/dL"]]);
    expect(wrong("glucose: { reading: 4.4 mg/dL }")).toEqual([
      ["before/glucose-size", 5, 21, "4.4 mg/dL", "4.4 mmol/L"],
    ]);
    expect(wrong("glucose: { reading: 700 mg/dL }")).toEqual([["before/glucose-size", 5, 21, "700 mg/dL", undefined]]);
  });
  test("what stands at the edges is taken", () => {
    expect(todayOf("slept: 0 h").slept).toBe(0);
    const five = Array(5).fill("120/80").join(", ");
    expect(todayOf(`pressure: { readings: [${five}] }`).pressure?.readings).toHaveLength(5);
    expect(wrong(`pressure: { readings: [${five}, 120/80] }`)[0]?.[0]).toBe("value/many");
    expect(wrong(`slept: ${"x".repeat(50)}`)[0]?.[3]).toHaveLength(40);
    expect(todayOf("pressure: { readings: [60/30, 300/200] }").pressure?.readings).toHaveLength(2);
    expect(todayOf("slept: 24 h").slept).toBe(24);
    expect(todayOf("glucose: { reading: 33.3 mmol/L }").glucose?.value).toBe(33.3);
    expect(todayOf("glucose: { reading: 10 mg/dL }").glucose?.value).toBe(10);
  });
});

import { describe, expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { type Aim, type FoodAnswer, type FoodFacts, foodGuidance, type Stated } from "./food-guidance.ts";

const NO = { pregnancy: "no", eatingDisorder: "no", kidneyDisease: "no", diabetes: "no" } as const;
const MAN: FoodFacts = {
  sex: "man",
  massKg: 80,
  heightCm: 180,
  ageY: 30,
  life: "moderately active",
  aim: "keep",
  ...NO,
};
const WOMAN: FoodFacts = { ...MAN, sex: "woman", massKg: 65, heightCm: 165, ageY: 40, life: "sedentary" };

function given(answer: FoodAnswer) {
  if (!answer.ok) throw new Error(JSON.stringify(answer));
  return answer.value;
}
const of = (facts: Partial<FoodFacts>, who = MAN) => given(foodGuidance({ ...who, ...facts }));
const refused = (facts: Partial<FoodFacts>, who = MAN) => {
  const answer = foodGuidance({ ...who, ...facts });
  return answer.ok ? undefined : answer;
};

published("mifflin1990", "man of 80 kg, 180 cm, 30 years, moderately active, kcal a day", [
  ["worked", "1780 × 1.55", () => of({}).daily.value, 2759, 0],
]);
published("acsm2016", "protein of 80 kg, g a day", [
  ["worked", "1.2 g/kg", () => of({}).protein.from, 96, 1e-9],
  ["worked", "2.0 g/kg", () => of({}).protein.to, 160, 1e-9],
]);
published("jager2017", "protein of 80 kg, g a meal", [["worked", "0.25 g/kg", () => of({}).proteinAMealG, 20, 1e-9]]);
published("acsm2001", "most loss of a week at 90 kg, kg", [
  ["worked", "1 %", () => of({ massKg: 90 }).mostLossKg, 0.9, 1e-9],
  ["worked", "never over 1 kg", () => of({ massKg: 130 }).mostLossKg, 1, 0],
]);

describe("energy to eat", () => {
  const eat = (aim: Aim, who = MAN) => given(foodGuidance({ ...who, aim })).eat;

  test("to keep, give or take 8 %; to lose 250 to 500 less; to gain as much more", () => {
    expect(eat("keep").from).toBeCloseTo(2759 * 0.92, 6);
    expect(eat("keep").to).toBeCloseTo(2759 * 1.08, 6);
    expect(eat("lose")).toEqual({ from: 2259, to: 2509 });
    expect(eat("gain")).toEqual({ from: 3009, to: 3259 });
  });

  test("the band of a day is that of the equation and of the factor, and holds the figure", () => {
    const { from, to, value } = of({}).daily;
    expect(from).toBeCloseTo((2759 / 1.09) * 0.92, 6);
    expect(to).toBeCloseTo((2759 / 0.79) * 1.08, 6);
    expect(from < value && value < to).toBe(true);
  });

  test("nobody is given less than the body takes at rest, nor under 1200 kcal", () => {
    // Resting 1320.25 (printed in the reference), × 1.2 = 1584.3; 500 less would be under the rest.
    const found = given(foodGuidance({ ...WOMAN, aim: "lose" }));
    expect(found.floorKcal).toBe(1320.25);
    expect(found.eat.from).toBe(1320.25);
    expect(found.eat.to).toBeCloseTo(1584.3 - 250, 6);
    const small = { ...WOMAN, massKg: 48, heightCm: 155, ageY: 60 };
    expect(given(foodGuidance({ ...small, aim: "keep" })).floorKcal).toBe(1200);
  });

  test("where even 250 less would go under the floor, somebody is sent on instead; to keep they are not", () => {
    const small = { ...WOMAN, massKg: 48, heightCm: 155, ageY: 60 };
    expect(refused({ ...small, aim: "lose" })?.refer).toEqual(["less energy than a body at rest takes"]);
    expect(refused({ ...small, aim: "keep" })).toBeUndefined();
  });
});

test("protein counts body mass up to an index of 30", () => {
  // 30 × 1.8² = 97.2 kg.
  expect(of({ massKg: 97.2 }).protein.from).toBeCloseTo(1.2 * 97.2, 6);
  expect(of({ massKg: 140 }).protein.from).toBeCloseTo(1.2 * 97.2, 6);
});

describe("who is sent on", () => {
  test.each([
    [{ ageY: 18.9 }, "under 19"],
    [{ ageY: 79 }, "over 78, where the equation was not made"],
    [{ eatingDisorder: "yes" }, "an eating disorder, now or before"],
    [{ kidneyDisease: "yes" }, "kidney disease"],
    [{ diabetes: "yes" }, "diabetes under treatment"],
    [{ massKg: 59.9 }, "underweight"],
    [{ sex: "woman", pregnancy: "yes" }, "pregnancy, birth within 12 months or breast-feeding"],
  ] as const)("%j: %s, and no figure", (facts, why) => {
    expect(refused(facts)).toEqual({ ok: false, refer: [why], unanswered: [] });
  });

  test("neighbours just inside are given figures", () => {
    for (const facts of [{ ageY: 19 }, { ageY: 78 }, { massKg: 60 }]) expect(refused(facts)).toBeUndefined();
  });

  test("several reasons are all told", () => {
    expect(refused({ ageY: 15, kidneyDisease: "yes" })?.refer).toEqual(["under 19", "kidney disease"]);
  });

  test.each(["pregnancy", "eatingDisorder", "kidneyDisease", "diabetes"] as const)(
    "%s not answered is read the safe way",
    (key) => {
      const open: Stated = "not answered";
      expect(refused({ [key]: open }, WOMAN)?.unanswered).toHaveLength(1);
    },
  );

  test("men are not asked about pregnancy", () => {
    expect(refused({ pregnancy: "not answered" })).toBeUndefined();
  });
});

import { ACTIVITY_FACTORS, type ActivityLevel, RESTING_ENERGY } from "../equations/index.ts";
import { AIMS, type Aim, foodGuidance, type Stated } from "../food/index.ts";
import type { Asked, Figure, Given, Reckoning } from "./reckoning.ts";

const YES_NO = ["yes", "no"] as const;
function question(key: string): Asked {
  return { key, of: YES_NO, optional: true };
}

function figures(given: Given): readonly Figure[] {
  const stated = (key: string): Stated => given.wordIf<"yes" | "no">(key) ?? "not answered";
  const answer = foodGuidance({
    sex: given.word<"man" | "woman">("sex"),
    massKg: given.number("mass"),
    heightCm: given.number("height"),
    ageY: given.number("age"),
    life: given.word<ActivityLevel>("life"),
    aim: given.word<Aim>("aim"),
    pregnancy: stated("pregnancy"),
    eatingDisorder: stated("eating-disorder"),
    kidneyDisease: stated("kidney-disease"),
    diabetes: stated("diabetes"),
  });
  if (!answer.ok) {
    return [
      ...answer.refer.map((value): Figure => ({ what: "food-refer", source: "ours", value })),
      ...answer.unanswered.map((value): Figure => ({ what: "food-unanswered", source: "ours", value })),
    ];
  }
  const { daily, eat, floorKcal, protein, proteinAMealG, mostLossKg } = answer.value;
  const kcal = { unit: "kcal/d", decimals: 0 } as const;
  return [
    { what: "daily-energy", source: "mifflin1990", value: daily.value, low: daily.from, high: daily.to, ...kcal },
    { what: "energy-to-eat", source: "ours", value: eat.from, low: eat.from, high: eat.to, ...kcal },
    { what: "energy-floor", source: "ours", value: floorKcal, ...kcal },
    {
      what: "protein-a-day",
      source: "acsm2016",
      value: protein.from,
      low: protein.from,
      high: protein.to,
      unit: "g/d",
      decimals: 0,
    },
    { what: "protein-a-meal", source: "jager2017", value: proteinAMealG, unit: "g", decimals: 0 },
    { what: "most-loss", source: "acsm2001", value: mostLossKg, unit: "kg/week", decimals: 1 },
  ];
}

/** Guidance on food within a coach's scope, or whom to ask instead. */
export const FOOD: readonly Reckoning[] = [
  {
    name: "food",
    asks: [
      { key: "sex", of: ["man", "woman"] },
      { key: "mass", dimension: "mass" },
      { key: "height", dimension: "length" },
      { key: "age", dimension: "years" },
      { key: "life", of: Object.keys(ACTIVITY_FACTORS) },
      { key: "aim", of: AIMS },
      question("pregnancy"),
      question("eating-disorder"),
      question("kidney-disease"),
      question("diabetes"),
    ],
    about: () => [RESTING_ENERGY.mifflin, { source: "faoWhoUnu2001", who: "groups of people, and not single ones" }],
    figures,
  },
];

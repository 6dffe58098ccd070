import { addDays, day } from "./day.ts";
import {
  bodyMassIndex,
  densityFromFolds,
  densityFromFourFolds,
  energyAvailability,
  fatError,
  fatFromDensity,
  heartRateMax,
  kcalPerMin,
  metMinutes,
  metsOf,
  mileAndHalfRun,
  mileWalk,
  moderateMinutes,
  pedallingOxygen,
  pulseTarget,
  recentLoad,
  restingEnergy,
  restingEnergyOfLean,
  runningOxygen,
  runningSpeed,
  steppingOxygen,
  stepTest,
  tapeFat,
  twelveMinuteRun,
  waistHip,
  waistRisk,
  walkingOxygen,
  weeklyActivity,
} from "./equations/index.ts";
import { weekLoad } from "./measures/index.ts";
import { readPulseMessage } from "./model/index.ts";
import { glucoseBefore, pressureBefore, readiness } from "./screen/index.ts";
import {
  chairStandNorm,
  intensityOf,
  metsByCode,
  oneLegStandMean,
  PROTEIN_PLATEAU,
  PROTEIN_RANGES,
  proteinGrams,
  weaknessBy,
} from "./tables/index.ts";
import { checkValues } from "./testing/index.ts";
import { lb } from "./units.ts";

/** The codes of the sheet in the product's own words. */
const OK_START_LOWER = "start light to moderate";
const CLEAR_FIRST = "ask a doctor before starting";
const OK_CONTINUE_MODERATE = "go on, moderate at most";
const CLEAR_BEFORE_VIGOROUS = "ask a doctor before vigorous";
const STOP_AND_CLEAR = "stop and ask a doctor";
const facts = { active: false, disease: false, signs: false } as const;

const inch = (value: number) => value * 2.54;
const fourFolds = (sum: number, age: number) => fatFromDensity("siri", densityFromFourFolds("man", sum, age));
const threeFolds = (sex: "man" | "woman", sum: number) => densityFromFolds(sex, "three folds", sum, 30);
const MAN = { sex: "man", mass: lb(170), ageY: 40, minutes: 14.5, bpm: 130 } as const;
const MONDAY = day("2027-03-01");
const week = weekLoad(
  [240, 0, 360, 120, 0, 450, 180].map((load, n) => ({ day: addDays(MONDAY, n), minutes: load / 5, effort: 5 })),
  MONDAY,
);
const foster = (what: "monotony" | "strain") => () => (week.known ? week.week[what] : undefined);
const rise = recentLoad([...Array<number>(21).fill(200), ...Array<number>(7).fill(350)]);
const ipaq = metMinutes(
  { walking: { days: 5, minutes: 30 }, moderate: { days: 2, minutes: 30 }, vigorous: { days: 3, minutes: 20 } },
  40,
);
const glucose = (value: number, ketones?: "moderate or large") => () => {
  const { before, because } = glucoseBefore({ value, unit: "mg/dL", ...(ketones ? { ketones } : {}) });
  return `${before}: ${because[0]!.code}`;
};
const fastCarbohydrate = () => {
  const data = glucoseBefore({ value: 85, unit: "mg/dL" }).because[0]!.data as {
    carbohydrate: { from: number; to: number };
  };
  return `${data.carbohydrate.from}–${data.carbohydrate.to}`;
};
const sensor = (...bytes: readonly number[]) => {
  const message = readPulseMessage(bytes);
  if (typeof message === "string") throw new Error(message);
  return message;
};
const pressure = (systolic: number, diastolic: number) => () => {
  const reading = { systolic, diastolic };
  return pressureBefore([reading, reading], true).before;
};

checkValues("health", 40, [
  [
    1,
    "VERIFIED-2",
    "riebe2015",
    "inactive, nothing, vigorous wanted",
    () => readiness({ ...facts, wanted: "vigorous" }),
    OK_START_LOWER,
  ],
  [
    2,
    "VERIFIED-2",
    "riebe2015",
    "inactive, disease, light",
    () => readiness({ ...facts, disease: true, wanted: "light" }),
    CLEAR_FIRST,
  ],
  [
    3,
    "VERIFIED-2",
    "riebe2015",
    "active, disease, moderate",
    () => readiness({ ...facts, active: true, disease: true, wanted: "moderate" }),
    OK_CONTINUE_MODERATE,
  ],
  [
    4,
    "VERIFIED-2",
    "riebe2015",
    "active, disease, vigorous",
    () => readiness({ ...facts, active: true, disease: true, wanted: "vigorous" }),
    CLEAR_BEFORE_VIGOROUS,
  ],
  [
    5,
    "VERIFIED-2",
    "riebe2015",
    "active, sign, light",
    () => readiness({ ...facts, active: true, signs: true, wanted: "light" }),
    STOP_AND_CLEAR,
  ],
  [6, "VERIFIED", "tanaka2001", "highest pulse at 50", () => heartRateMax("tanaka", 50), 173, 0.05],
  [7, "VERIFIED", "gellish2007", "highest pulse at 40", () => heartRateMax("gellish", 40), 179, 0.05],
  [8, "VERIFIED", "gulati2010", "highest pulse at 35", () => heartRateMax("gulati", 35), 175.2, 0.05],
  [
    9,
    "VERIFIED-2",
    "karvonen1957",
    "55 y by 220 − age, rest 62, 60 %",
    () => pulseTarget({ bpm: heartRateMax("fox", 55), measured: false }, 62, 0.6, false).bpm,
    123.8,
    0.05,
  ],
  [10, "VERIFIED", "garber2011", "60 % of the reserve", () => intensityOf("% reserve", 60), "vigorous"],
  [11, "VERIFIED-2", "bushman2020", "walk 3.5 mph, 10 %", () => walkingOxygen(3.5 * 26.8, 0.1), 29.76, 0.005],
  [12, "VERIFIED", "bushman2020", "run 6 mph, level", () => runningOxygen(6 * 26.8), 35.66, 0.005],
  [
    13,
    "VERIFIED-2",
    "bushman2020",
    "62 kg, 450 kg·m/min by legs",
    () => pedallingOxygen("legs", 450, 62),
    20.065,
    0.0006,
  ],
  [14, "VERIFIED-2", "bushman2020", "step 0.3048 m, 30 a minute", () => steppingOxygen(30, 0.3048), 31.39, 0.005],
  [15, "VERIFIED-2", "acsmGetp10", "8 METs, 70 kg, kcal/min", () => kcalPerMin(8, 70), 9.8, 0.005],
  [16, "VERIFIED", "ipaq2005", "5 × 30, 2 × 30, 3 × 20, MET-min", () => ipaq.total, 1215],
  [16, "VERIFIED", "ipaq2005", "5 × 30, 2 × 30, 3 × 20, class", () => ipaq.class, "moderate"],
  [17, "VERIFIED", "herrmann2024", "01210", () => metsByCode("01210"), 3.5],
  [18, "VERIFIED-2", "herrmann2024", "02054", () => metsByCode("02054"), 3.5],
  [18, "VERIFIED-2", "herrmann2024", "02050", () => metsByCode("02050"), 6],
  [19, "VERIFIED-2", "cooper1968", "2400 m", () => twelveMinuteRun(2400), 42.37, 0.005],
  [20, "VERIFIED-2", "acsmGetp10", "1.5 miles in 12:00", () => mileAndHalfRun(12), 43.75, 0.005],
  [21, "VERIFIED-2", "kline1987", "man 170 lb, 40 y, 14.5 min, 130", () => mileWalk(MAN).mlKgMin, 42.9, 0.005],
  [22, "VERIFIED", "kline1987", "the same in L/min", () => mileWalk(MAN).lMin, 3.337, 0.0005],
  [23, "VERIFIED-2", "mcardle1972", "man, 140", () => stepTest("man", 140), 52.53, 0.005],
  [23, "VERIFIED-2", "mcardle1972", "woman, 140", () => stepTest("woman", 140), 39.95, 0.005],
  [
    24,
    "VERIFIED",
    "mifflin1990",
    "man 80 kg, 180 cm, 30 y",
    () => restingEnergy("mifflin", { sex: "man", massKg: 80, heightCm: 180, ageY: 30 }),
    1780,
    0.5,
  ],
  [
    25,
    "VERIFIED-2",
    "mifflin1990",
    "woman 75 kg, 165.1 cm, 45 y",
    () => restingEnergy("mifflin", { sex: "woman", massKg: 75, heightCm: 165.1, ageY: 45 }),
    1395.9,
    0.05,
  ],
  [
    26,
    "VERIFIED-2",
    "rozaShizgal1984",
    "woman 65 kg, 165 cm, 40 y",
    () => restingEnergy("roza", { sex: "woman", massKg: 65, heightCm: 165, ageY: 40 }),
    1386.62,
    0.005,
  ],
  [27, "VERIFIED-2", "cunningham1980", "70 kg without fat", () => restingEnergyOfLean("1980", 70), 2040],
  [28, "VERIFIED", "areta2021", "1900 in, 500 out, 50 kg", () => energyAvailability(1900, 500, 50).kcalPerKg, 28, 0.05],
  [28, "VERIFIED", "areta2021", "1900 in, 500 out, 50 kg: low", () => energyAvailability(1900, 500, 50).low, true],
  [29, "VERIFIED", "morton2018", "80 kg × 1.62, g", () => proteinGrams(80, PROTEIN_PLATEAU), 129.6, 0.05],
  [30, "VERIFIED", "whoBmi", "70 kg, 1.75 m", () => bodyMassIndex(70, 175, 40).value, 22.86, 0.005],
  [30, "VERIFIED", "whoBmi", "70 kg, 1.75 m, class", () => bodyMassIndex(70, 175, 40).class, "normal"],
  [
    31,
    "VERIFIED-2",
    "whoWaist2008",
    "woman, waist over hip 0.85",
    () => waistHip("woman", 85, 100).risk,
    "substantially increased",
  ],
  [31, "VERIFIED-2", "whoWaist2008", "man, waist 103 cm", () => waistRisk("man", 103), "substantially increased"],
  [32, "VERIFIED-2", "jacksonPollock1978", "man 45 mm, 30 y, density", () => threeFolds("man", 45), 1.067697, 5e-7],
  [
    32,
    "VERIFIED-2",
    "siri1961",
    "man 45 mm, 30 y, % fat",
    () => fatFromDensity("siri", threeFolds("man", 45)),
    13.61,
    0.005,
  ],
  [
    33,
    "VERIFIED-2",
    "jacksonPollockWard1980",
    "woman 60 mm, 30 y, density",
    () => threeFolds("woman", 60),
    1.044022,
    5e-7,
  ],
  [
    33,
    "VERIFIED-2",
    "siri1961",
    "woman 60 mm, 30 y, % fat",
    () => fatFromDensity("siri", threeFolds("woman", 60)),
    24.13,
    0.005,
  ],
  [
    34,
    "VERIFIED-2",
    "durninWomersley1974",
    "man of 45, 40 mm, by the coefficients",
    () => fourFolds(40, 45),
    21.49,
    0.005,
  ],
  [
    34,
    "VERIFIED-2",
    "durninWomersley1974",
    "man of 35, 50 mm, by the coefficients",
    () => fourFolds(50, 35),
    21.53,
    0.005,
  ],
  // The printed table and the printed coefficients part by a tenth.
  [34, "VERIFIED-2", "durninWomersley1974", "man of 45, 40 mm, printed table", () => fourFolds(40, 45), 21.4, 0.1],
  [34, "VERIFIED-2", "durninWomersley1974", "man of 35, 50 mm, printed table", () => fourFolds(50, 35), 21.5, 0.05],
  [
    35,
    "VERIFIED-2",
    "hodgdonFriedl1999",
    "man 70, 36, 16 in",
    () => tapeFat({ sex: "man", heightCm: inch(70), abdomenCm: inch(36), neckCm: inch(16) }, 30),
    19.43,
    0.005,
  ],
  [
    35,
    "VERIFIED-2",
    "hodgdonFriedl1999",
    "woman 65, 30, 38, 13 in",
    () => tapeFat({ sex: "woman", heightCm: inch(65), waistCm: inch(30), hipCm: inch(38), neckCm: inch(13) }, 30),
    28.56,
    0.005,
  ],
  [36, "VERIFIED", "foster1998", "monotony of 240, 0, 360, 120, 0, 450, 180, n − 1", foster("monotony"), 1.126, 0.0005],
  [36, "VERIFIED", "foster1998", "strain of the same", foster("strain"), 1519.5, 0.05],
  [37, "VERIFIED", "williams2017", "21 × 200, 7 × 350: 7 days over 28", () => rise.overUsual, 1.4737, 0.00005],
  [37, "VERIFIED", "williams2017", "21 × 200, 7 × 350: 7 days over the 21 before", () => rise.overEarlier, 1.75],
  [37, "VERIFIED", "williams2017", "21 × 200, 7 × 350: fading", () => rise.fading, 1.2738, 0.00005],
  [
    38,
    "VERIFIED",
    "colberg2016",
    "260 mg/dL, moderate ketones",
    glucose(260, "moderate or large"),
    "hold: before/glucose-no-exercise",
  ],
  [38, "VERIFIED", "colberg2016", "85 mg/dL", glucose(85), "ask: before/glucose-low"],
  [38, "VERIFIED", "colberg2016", "85 mg/dL, fast carbohydrate in g", fastCarbohydrate, "15–30"],
  [39, "VERIFIED", "hl7PhysicalActivity", "3 days × 40 min", () => weeklyActivity(3, 40).minutes, 120],
  [39, "VERIFIED", "hl7PhysicalActivity", "code", () => weeklyActivity(3, 40).loinc, "82290-8"],
  [39, "VERIFIED", "hl7PhysicalActivity", "unit", () => weeklyActivity(3, 40).unit, "min/wk"],
  [40, "VERIFIED", "gattHeartRate", "16 48 00 04, beats a minute", () => sensor(0x16, 0x48, 0, 4).bpm, 72],
  [40, "VERIFIED", "gattHeartRate", "16 48 00 04, s between beats", () => sensor(0x16, 0x48, 0, 4).gapsS[0], 1],
  [40, "VERIFIED", "gattHeartRate", "16 48 00 04, on the skin", () => sensor(0x16, 0x48, 0, 4).contact, true],
  [40, "VERIFIED", "gattHeartRate", "00 3C, beats a minute", () => sensor(0, 0x3c).bpm, 60],
]);

const acsm = PROTEIN_RANGES.find(({ source }) => source === "acsm2016")!;
checkValues("health, second reading", 0, [
  ["A1", "VERIFIED", "liftingPressure2024", "181/95 at rest", pressure(181, 95), "hold"],
  ["A1", "VERIFIED", "liftingPressure2024", "150/111 at rest", pressure(150, 111), "hold"],
  ["A1", "VERIFIED", "liftingPressure2024", "161/95 at rest, the note allows", pressure(161, 95), "soften"],
  ["A1", "VERIFIED", "liftingPressure2024", "159/99 at rest", pressure(159, 99), "go"],
  ["A5", "VERIFIED-2", "acsm2016", "protein, g/kg", () => `${acsm.from}–${acsm.to}`, "1.2–2"],
  [
    "A6",
    "VERIFIED-2",
    "jacksonPollock1978",
    "error at 1.0677, % fat",
    () => fatError("man", "three folds", 1.0677),
    3.34,
    0.005,
  ],
  [
    "A6",
    "VERIFIED-2",
    "jacksonPollockWard1980",
    "error at 1.044, seven folds, % fat",
    () => fatError("woman", "seven folds", 1.044),
    3.77,
    0.005,
  ],
  ["A13", "VERIFIED", "colberg2016", "89 mg/dL", glucose(89), "ask: before/glucose-low"],
  ["A13", "VERIFIED", "colberg2016", "90 mg/dL", glucose(90), "go: before/glucose-carbohydrate-from-start"],
  ["A13", "VERIFIED", "colberg2016", "150 mg/dL", glucose(150), "go: before/glucose-fine"],
  ["A13", "VERIFIED", "colberg2016", "250 mg/dL", glucose(250), "ask: before/glucose-ketones"],
  [
    "A15",
    "VERIFIED",
    "latin2001",
    "step 0.3048 m, 30 a minute, constant of 2.4",
    () => steppingOxygen(30, 0.3048),
    31.446,
    0.1,
  ],
  ["B1", "VERIFIED-2", "who2020", "90 moderate and 40 vigorous minutes", () => moderateMinutes(90, 40), 170],
  ["B2", "VERIFIED-2", "bushman2020", "speed of a run of 8 METs, m/min", () => runningSpeed(8 * 3.5), 122.5, 0.05],
  [
    "B2",
    "VERIFIED-2",
    "bushman2020",
    "60 kg, 7 METs, kcal a minute by 1 kcal/kg/h",
    () => kcalPerMin(7, 60) / 1.05,
    7,
    0.05,
  ],
  ["B8", "VERIFIED-2", "rikliJones1999", "stands of men of 65 to 69, from", () => chairStandNorm(67, "man")!.from, 12],
  [
    "B8",
    "VERIFIED-2",
    "rikliJones1999",
    "stands of women of 90 to 94, from",
    () => chairStandNorm(92, "woman")!.from,
    4,
  ],
  ["B8", "VERIFIED", "bohannon2006", "one leg at 72, s", () => oneLegStandMean(72), 17.2],
  ["B8", "VERIFIED-2", "ewgsop2019", "grip of 26.9 kg, man", () => weaknessBy("grip", 26.9, "man").length, 2],
  [
    "B8",
    "VERIFIED-2",
    "ewgsop2019",
    "grip of 27 kg, man: by one of two bodies",
    () => weaknessBy("grip", 27, "man").length,
    1,
  ],
  ["4", "VERIFIED-2", "bushman2020", "walk 3.5 mph, 10 %, METs", () => metsOf(walkingOxygen(93.8, 0.1)), 8.5, 0.05],
]);

import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { type Girths, TAPE_FAT, tapeFat, tapeFatByDensity } from "./tape-fat.ts";

const MAN: Girths = { sex: "man", heightCm: 178, neckCm: 38, abdomenCm: 90 };
const WOMAN: Girths = { sex: "woman", heightCm: 165, neckCm: 33, waistCm: 75, hipCm: 98 };
const inch = (value: number) => value * 2.54;

published("hodgdonFriedl1999", "% fat by tape, restated", [
  [
    "worked",
    "man 70, 36, 16 in",
    () => tapeFat({ sex: "man", heightCm: inch(70), abdomenCm: inch(36), neckCm: inch(16) }, 30),
    19.43,
    0.005,
  ],
  [
    "worked",
    "woman 65, 30, 38, 13 in",
    () => tapeFat({ sex: "woman", heightCm: inch(65), waistCm: inch(30), hipCm: inch(38), neckCm: inch(13) }, 30),
    28.56,
    0.005,
  ],
  ["worked", "man 178, 90, 38 cm", () => tapeFat(MAN, 30), 20.27, 0.005],
  ["worked", "woman 165, 75, 98, 33 cm", () => tapeFat(WOMAN, 30), 28.73, 0.005],
  ["printed", "standard error, men", () => TAPE_FAT.man.miss.from, 3.52, 0],
  ["printed", "standard error, women", () => TAPE_FAT.woman.miss.from, 3.61, 0],
]);
published("hodgdonBeckett1984", "% fat by tape, density form of three digits, restated", [
  ["worked", "man 178, 90, 38 cm", () => tapeFatByDensity(MAN, 30), 20.06, 0.005],
  ["worked", "woman 165, 75, 98, 33 cm", () => tapeFatByDensity(WOMAN, 30), 28.3, 0.005],
]);

test("the two forms lie within 0.7 % of fat of each other", () => {
  for (const abdomenCm of [75, 90, 110, 130]) {
    const man = { ...MAN, abdomenCm } as Girths;
    expect(Math.abs(tapeFat(man, 30) - tapeFatByDensity(man, 30))).toBeLessThan(0.7);
  }
});

test("an abdomen under the neck, a height in metres and a child are refused, in both forms", () => {
  for (const fat of [tapeFat, tapeFatByDensity]) {
    const beyond: readonly (() => unknown)[] = [
      () => fat({ ...MAN, abdomenCm: 38 } as Girths, 30),
      () => fat({ ...MAN, abdomenCm: 42.9 } as Girths, 30),
      () => fat({ ...MAN, abdomenCm: 221 } as Girths, 30),
      () => fat({ ...MAN, heightCm: 1.78 }, 30),
      () => fat({ ...MAN, neckCm: 19 }, 30),
      () => fat({ ...MAN, neckCm: 71, abdomenCm: 120 } as Girths, 30),
      () => fat({ ...WOMAN, waistCm: 33 } as Girths, 30),
      () => fat({ ...WOMAN, waistCm: 221 } as Girths, 30),
      () => fat({ ...WOMAN, hipCm: 49 } as Girths, 30),
      () => fat({ ...WOMAN, hipCm: 221 } as Girths, 30),
      () => fat(MAN, 17.9),
      () => fat(MAN, 121),
      () => fat({ ...WOMAN, hipCm: Number.NaN } as Girths, 30),
    ];
    for (const call of beyond) expect(call).toThrow(RangeError);
    expect(() => fat({ ...MAN, abdomenCm: 43 } as Girths, 18)).toThrow(RangeError);
    expect(fat({ ...WOMAN, hipCm: 80 } as Girths, 120)).toBeLessThan(fat(WOMAN, 18));
  }
});

test("takes the ends of its ranges: girths, heights and what they give", () => {
  const fine: readonly Girths[] = [
    { sex: "man", heightCm: 120, neckCm: 38, abdomenCm: 70 },
    { sex: "man", heightCm: 230, neckCm: 38, abdomenCm: 130 },
    { sex: "man", heightCm: 178, neckCm: 20, abdomenCm: 60 },
    { sex: "man", heightCm: 178, neckCm: 70, abdomenCm: 220 },
    { sex: "woman", heightCm: 170, neckCm: 33, waistCm: 80, hipCm: 90 },
  ];
  for (const girths of fine) {
    const fat = tapeFat(girths, 18);
    expect(fat >= 2 && fat <= 70).toBe(true);
  }
  // 2.1 % is taken and 1.7 % is not: a girth was read wrong.
  expect(tapeFat({ ...MAN, abdomenCm: 70 } as Girths, 30).toFixed(1)).toBe("2.1");
  expect(() => tapeFat({ ...MAN, abdomenCm: 69.6 } as Girths, 30)).toThrow(/what the girths give/);
});

test("a height out of range is told as such", () => {
  expect(() => tapeFat({ ...MAN, heightCm: 231 }, 30)).toThrow(/height in cm/);
  expect(() => tapeFatByDensity({ ...MAN, heightCm: 119 }, 30)).toThrow(/height in cm/);
});

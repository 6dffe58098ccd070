import { expect, test } from "vitest";
import { readLoad, readLoadRun } from "./load-text.ts";
import type { Slipped } from "./slip.ts";

function slip(read: Slipped<unknown>): string {
  if (read.ok) return `read ${JSON.stringify(read.value)}`;
  const { code, offset, found, allowed, maybe } = read.slip;
  return `${code} ${offset} ${[found, allowed, maybe ?? ""].join("|")}`;
}

const values = (text: string) => {
  const read = readLoadRun(text);
  return read.ok ? read.value.map(({ value }) => value) : slip(read);
};

test("a load keeps the unit and the number that were written", () => {
  expect(readLoad("12 kg")).toEqual({ ok: true, value: { value: 12, unit: "kg" } });
  expect(readLoad(" 12,5kg ")).toEqual({ ok: true, value: { value: 12.5, unit: "kg" } });
  expect(readLoad("0.125 kg")).toEqual({ ok: true, value: { value: 0.125, unit: "kg" } });
  expect(readLoad("45 lb")).toEqual({ ok: true, value: { value: 45, unit: "lb" } });
  expect(readLoad("0 kg")).toEqual({ ok: true, value: { value: 0, unit: "kg" } });
});

for (const [text, problem] of [
  ["heavy", "load/form 0 heavy|12 kg, 12.5 kg, 10 lb|"],
  ["", "load/form 0 |12 kg, 12.5 kg, 10 lb|"],
  ["-5 kg", "load/form 0 -5 kg|12 kg, 12.5 kg, 10 lb|"],
  ["12", "load/unit 0 12|kg, lb|12 kg, 12 lb"],
  ["12 lbs", "load/unit 3 12 lbs|kg, lb|12 lb"],
  ["12 Kg", "load/unit 3 12 Kg|kg, lb|12 kg"],
  ["12 stone", "load/unit 3 12 stone|kg, lb|"],
  ["1,000 kg", "load/number 0 1,000|12, 12.5, 12,5|1"],
  ["1.2345 kg", "load/number 0 1.2345|12, 12.5, 12,5|1"],
  [" 1001 kg", "load/size 1 1001|0–1000 kg|"],
  ["2201 lb", "load/size 0 2201|0–2200 lb|"],
] as const) {
  test(`${JSON.stringify(text)} is refused: ${problem}`, () => expect(slip(readLoad(text))).toBe(problem));
}

test("a run names every load once, without the dust of doubles", () => {
  expect(values("1–10 kg by 1")).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
  expect(values("12.5-32.5 kg by 2.5 kg")).toEqual([12.5, 15, 17.5, 20, 22.5, 25, 27.5, 30, 32.5]);
  expect(values("0,1 to 0,7 kg by 0,1")).toEqual([0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7]);
  expect(values("5 lb – 15 lb by 5")).toEqual([5, 10, 15]);
  expect(values("4 kg")).toEqual([4]);
});

for (const [text, problem] of [
  ["1–10 kg", "load/range 0 1–10 kg|1–10 kg by 1|"],
  ["1–10 by 1", "load/range 0 1–10 by 1|1–10 kg by 1|"],
  ["10–1 kg by 1", "load/reversed 0 10–1|> 10|1–10"],
  ["5–5 kg by 1", "load/reversed 0 5–5|> 5|5 kg"],
  ["1–10 kg by 2", "load/step 11 2|(10 − 1) ÷ n|"],
  ["1–10 kg by 0", "load/step 11 0|(10 − 1) ÷ n|"],
  ["1–10 kg by 1 lb", "load/units 0 1–10 kg by 1 lb|kg|"],
  ["1–1000 kg by 1", "load/count 13 1000|1–200|"],
  ["0–10 kg by 1", "load/size 0 0|0–1000 kg|"],
  ["1–2000 kg by 1", "load/size 2 2000|0–1000 kg|"],
  ["0 kg", "load/size 0 0 kg|0–1000 kg|"],
  ["12", "load/unit 0 12|kg, lb|12 kg, 12 lb"],
] as const) {
  test(`${JSON.stringify(text)} is no run: ${problem}`, () => expect(slip(readLoadRun(text))).toBe(problem));
}

import { expect, test } from "vitest";
import { readSpan } from "./span-text.ts";

function told(text: string): string {
  const read = readSpan(text, 60);
  if (read.ok) return `${read.value.from} to ${read.value.to}`;
  const { code, offset, found, maybe } = read.slip;
  return `${code} ${offset} [${found}]${maybe ? ` ${maybe}` : ""}`;
}

const CASES: readonly (readonly [written: string, told: string])[] = [
  ["4–10", "4 to 10"],
  ["4-10", "4 to 10"],
  [" 4 to 10 ", "4 to 10"],
  ["6", "6 to 6"],
  ["0–6", "0 to 6"],
  ["4,5–10.25", "4.5 to 10.25"],
  ["10–4", "span/reversed 0 [10–4] 4–10"],
  [" 4–61", "span/size 1 [4–61]"],
  ["4.1–6", "span/step 0 [4.1–6]"],
  ["many", "span/form 0 [many]"],
  ["-3", "span/form 0 [-3]"],
  ["4–", "span/form 0 [4–]"],
  ["4–6–8", "span/form 0 [4–6–8]"],
  ["", "span/form 0 []"],
];

for (const [written, answer] of CASES) test(`"${written}": ${answer}`, () => expect(told(written)).toBe(answer));

import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";

const TOKENS = readFileSync(new URL("tokens.css", import.meta.url), "utf8");

/** Relative luminance of an sRGB colour. Source: WCAG 2.2, definition of relative luminance. */
function luminance(hex: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => {
    const channel = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
}

/** Contrast ratio. Source: WCAG 2.2, definition of contrast ratio. */
function contrast(one: string, other: string): number {
  const [dark, light] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light! + 0.05) / (dark! + 0.05);
}

function palette(css: string): ReadonlyMap<string, string> {
  return new Map([...css.matchAll(/--([\w-]+): (#[0-9a-f]{6});/g)].map(([, name, value]) => [name!, value!]));
}

test("the measure agrees with printed ratios: black on white 21, and two that culori 4.0.2 printed", () => {
  expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 5);
  expect(contrast("#0b5d57", "#ffffff")).toBeCloseTo(7.73, 2);
  expect(contrast("#6b7280", "#ffffff")).toBeCloseTo(4.83, 2);
});

describe.each([
  ["light", palette(TOKENS.slice(0, TOKENS.indexOf("@media")))],
  ["dark", palette(TOKENS.slice(TOKENS.indexOf("@media")))],
])("%s", (_, colours) => {
  const of = (name: string) => colours.get(name)!;
  test("holds every role", () => {
    expect([...colours.keys()].sort()).toEqual(
      ["correction", "edge", "ink", "link", "paper", "rule", "sheet", "soft-ink"].sort(),
    );
  });
  for (const ground of ["paper", "sheet"]) {
    for (const text of ["ink", "soft-ink", "correction", "link"]) {
      test(`${text} on ${ground} can be read: at least 4.5 to 1`, () => {
        expect(contrast(of(text), of(ground))).toBeGreaterThanOrEqual(4.5);
      });
    }
    test(`edge on ${ground} can be seen: at least 3 to 1`, () => {
      expect(contrast(of("edge"), of(ground))).toBeGreaterThanOrEqual(3);
    });
  }
  test("paper on ink and on correction can be read, as on a pressed control", () => {
    expect(contrast(of("paper"), of("ink"))).toBeGreaterThanOrEqual(4.5);
    expect(contrast(of("paper"), of("correction"))).toBeGreaterThanOrEqual(4.5);
  });
});

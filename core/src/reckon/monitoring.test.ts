import { describe, expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { reckon } from "./reckon.ts";

const asked = (line: string) => {
  const [name, ...answers] = line.split("; ") as [string, ...string[]];
  return reckon(name, answers);
};
const figure = (line: string, what: string) => () => {
  const reckoned = asked(line);
  return reckoned.ok ? (reckoned.value.figures.find((each) => each.what === what)?.value as number) : Number.NaN;
};
const RISE = "recent-load; earlier=200; recent=350";

published("williams2017", "21 days of 200, then 7 of 350, as a coach types it", [
  ["worked", "7 days over the 21 before", figure(RISE, "recent-over-earlier"), 1.75, 0],
  ["worked", "where older days fade", figure(RISE, "recent-fading"), 1.2738, 0.00005],
]);
published("gattHeartRate", "16480004 without blanks", [
  ["worked", "s between beats", figure("pulse-message; bytes=16480004", "between-beats"), 1, 0],
]);

describe("what cannot be taken", () => {
  test.each([
    ["recent-load; earlier=0; recent=0", "reckon/refused"],
    ["activity-for-record; days=8; time=40 min", "reckon/refused"],
    ["pulse-message; bytes=16", "reckon/refused"],
    ["pulse-message; bytes=164", "reckon/bytes-form"],
    ["pulse-message; bytes=0x16", "reckon/bytes-form"],
    [`pulse-message; bytes=${"00".repeat(25)}`, "reckon/bytes-form"],
  ])("%s: %s", (line, code) => {
    const reckoned = asked(line);
    expect(reckoned.ok ? [] : reckoned.problems.map((problem) => problem.code)).toEqual([code]);
  });
});

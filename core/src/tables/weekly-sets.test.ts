import { expect, test } from "vitest";
import { MUSCLES, STATUSES } from "../model/index.ts";
import { published } from "../testing/index.ts";
import { WEEKLY_SETS, weeklyBand } from "./weekly-sets.ts";

published("pelland2024", "least weekly sets with a growth that can be told, as reported", [
  ["printed", "practical points", () => weeklyBand("novice", "chest").from, 4, 0],
]);
published("pelland2024", "upper end of the effective 5–10 weekly sets, as reported", [
  ["printed", "practical points", () => weeklyBand("novice", "chest").to, 10, 0],
]);
published("iusca2021", "general least of weekly sets", [
  ["printed", "stand", () => weeklyBand("advanced", "chest").from, 10, 0],
]);
published("bazValle2022", "upper end of 12–20 weekly sets for trained young men", [
  ["printed", "conclusion", () => weeklyBand("advanced", "chest").to, 20, 0],
]);

test("common practice, no source: 8 to 16 for intermediates", () => {
  expect(weeklyBand("intermediate", "lats")).toEqual({ from: 8, to: 16 });
  expect([WEEKLY_SETS.intermediate.from.source, WEEKLY_SETS.intermediate.to.source]).toEqual(["practice", "practice"]);
});

test("calves and forearms may stand at nothing, all others not", () => {
  const free = MUSCLES.filter((muscle) => weeklyBand("novice", muscle).from === 0);
  expect(free).toEqual(["forearm", "calf"]);
});

test("both ends rise with training status", () => {
  const bands = STATUSES.map((status) => weeklyBand(status, "lats"));
  bands.slice(1).forEach((band, i) => {
    expect(band.from).toBeGreaterThan(bands[i]!.from);
    expect(band.to).toBeGreaterThan(bands[i]!.to);
  });
});

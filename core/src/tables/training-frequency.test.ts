import { expect, test } from "vitest";
import type { Status } from "../model/index.ts";
import { published } from "../testing/index.ts";
import { TRAINING_FREQUENCY } from "./training-frequency.ts";

const days = (row: 0 | 1, status: Status, end: "from" | "to") => () => TRAINING_FREQUENCY[row]!.days[status][end];

published("acsm2009", "sessions a week", [
  ["printed", "novice, from", days(0, "novice", "from"), 2, 0],
  ["printed", "novice, to", days(0, "novice", "to"), 3, 0],
  ["printed", "intermediate, from", days(0, "intermediate", "from"), 3, 0],
  ["printed", "intermediate, to", days(0, "intermediate", "to"), 4, 0],
  ["printed", "advanced, from", days(0, "advanced", "from"), 4, 0],
  ["printed", "advanced, to", days(0, "advanced", "to"), 5, 0],
]);
published("haffTriplett2016", "sessions a week, restated", [
  ["printed", "advanced, to", days(1, "advanced", "to"), 7, 0],
]);

test("sources disagree: advanced lifters 4 to 5 or 4 to 7 sessions; each row keeps its source", () => {
  expect(TRAINING_FREQUENCY.map(({ source, days: { advanced } }) => [source, advanced.to])).toEqual([
    ["acsm2009", 5],
    ["haffTriplett2016", 7],
  ]);
  expect(TRAINING_FREQUENCY[0]!.days.novice).toEqual(TRAINING_FREQUENCY[1]!.days.novice);
});

import { expect, test } from "vitest";
import { madeUpCatalogue, madeUpExercise, reps, sets } from "../testing/index.ts";
import { minutesOf } from "./minutes-of.ts";

const timing = { secondsPerRep: 4, setupS: 60, moveS: 0, changeS: 0 };
const catalogue = madeUpCatalogue([madeUpExercise({ id: "squat", ...timing })]);
const session = (count: number) => ({
  warmup: [],
  blocks: [{ kind: "straight" as const, slots: [{ exercise: "squat", dose: sets(count, reps(10), { restS: 120 }) }] }],
  conditioning: [],
});

// By hand: 60 s of set-up, 40 s a set, 120 s between sets; a tenth less and a quarter more (ours, no source).
test("whole minutes, the lower end down and the upper one up", () => {
  // 60 + 3 * 40 + 2 * 120 = 420 s: 378 to 525 s
  expect(minutesOf(session(3), catalogue)).toEqual({ low: 6, high: 9 });
  // 60 + 40 = 100 s: 90 to 125 s
  expect(minutesOf(session(1), catalogue)).toEqual({ low: 1, high: 3 });
});

test("a session of nothing takes no time", () => {
  expect(minutesOf({ warmup: [], blocks: [], conditioning: [] }, catalogue)).toEqual({ low: 0, high: 0 });
});

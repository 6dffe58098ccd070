import { expect, test } from "vitest";
import { madeUpCatalogue, madeUpExercise, reps, sets } from "../testing/index.ts";
import type { AskedSession } from "./asked-session.ts";
import { exposures } from "./exposures.ts";

const CATALOGUE = madeUpCatalogue([
  madeUpExercise({ id: "squat", muscles: { "front thigh": 1, "low back": 0.5 } }),
  madeUpExercise({ id: "curl", pattern: "upper isolation", muscles: { biceps: 1 } }),
]);

function session(...work: readonly (readonly [string, number, number?])[]): AskedSession {
  return {
    warmup: [],
    blocks: work.map(([exercise, count, reserve]) => ({
      kind: "straight",
      slots: [
        {
          exercise,
          dose: sets(count, reps(8, reserve === undefined ? {} : { reserve: { from: reserve, to: reserve } })),
        },
      ],
    })),
    conditioning: [],
  };
}

test("hours run from start to start, muscle by muscle, and from the last hard one", () => {
  const found = exposures(
    [
      { startsAtHour: 9, session: session(["squat", 3, 1]) },
      { startsAtHour: 33, session: session(["curl", 2, 1]) },
      { startsAtHour: 57, session: session(["squat", 1, 1]) },
      { startsAtHour: 81, session: session(["squat", 3, 1], ["curl", 3, 1]) },
    ],
    CATALOGUE,
  );
  expect(found.get("front thigh")).toEqual([
    { session: 0, direct: 3, hard: true },
    { session: 2, direct: 1, hard: false, hoursSince: 48, hoursSinceHard: 48 },
    { session: 3, direct: 3, hard: true, hoursSince: 24, hoursSinceHard: 72 },
  ]);
  expect(found.get("biceps")?.map((each) => each.hoursSince)).toEqual([undefined, 48]);
  expect(found.has("low back")).toBe(false);
});

test("a start that is not known gives a gap that is not a number, so that it alarms", () => {
  const found = exposures(
    [
      { startsAtHour: 0, session: session(["squat", 3]) },
      { startsAtHour: Number.NaN, session: session(["squat", 3]) },
    ],
    CATALOGUE,
  );
  const gap = found.get("front thigh")?.[1]?.hoursSince;
  expect(gap).toBeNaN();
  expect(!((gap ?? 0) >= 48)).toBe(true);
});

test("two sets near the limit are no hard session, and the hours since a hard one go on", () => {
  const found = exposures(
    [
      { startsAtHour: 0, session: session(["squat", 3, 3]) },
      { startsAtHour: 24, session: session(["squat", 3, 4]) },
      { startsAtHour: 72, session: session(["squat", 2, 1]) },
    ],
    CATALOGUE,
  ).get("front thigh")!;
  expect(found.map(({ hard }) => hard)).toEqual([true, false, false]);
  expect(found[2]).toMatchObject({ hoursSince: 48, hoursSinceHard: 72, direct: 2 });
});

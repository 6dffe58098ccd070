import { describe, expect, test } from "vitest";
import { madeUpExercise, reps, type SlotTrained, setDone, slotTrained } from "../testing/index.ts";
import { morningAfter } from "./mornings.ts";

const squat = madeUpExercise({ id: "squat", loadMeaning: "body only" });
type Answer = number | undefined | readonly [howMuch: number, daysOn: number];

/** What the last morning says, of a pain in every session, a week apart, and the answers the mornings after. */
const after = (answers: readonly Answer[], where: readonly string[] = [], more: Partial<SlotTrained> = {}) => {
  const said = answers.flatMap((answer, at) => {
    if (answer === undefined) return [];
    const pair: readonly [number, number] = typeof answer === "number" ? [answer, 1] : answer;
    return [[at, pair] as const];
  });
  const input = slotTrained({
    exercise: squat,
    set: reps(8),
    sets: 1,
    place: {},
    did: answers.map((_, at) => [7 * at, { ...setDone(8), load: "none" }]),
    hurts: Object.fromEntries(answers.map((_, at) => [at, { where: where[at] ?? "knee", howMuch: 3 }])),
    mornings: Object.fromEntries(said),
    today: 7 * answers.length,
    ...more,
  });
  const last = input.record.hurts.find(({ id }) => id === `hurt-${answers.length - 1}`)!;
  return morningAfter(input, last);
};
const says = (...answers: readonly Answer[]) => after(answers).says;

describe("without an answer in time nobody knows", () => {
  test("not asked, or not answered", () => {
    expect(after([undefined])).toEqual({
      says: "unknown",
      because: [{ code: "progress/morning-unanswered", data: { where: "knee", on: "2027-03-01", days: 2 } }],
    });
    expect(says(3, undefined)).toBe("unknown");
  });

  test("two days later is still the morning after, three are too late", () => {
    expect(says([2, 2])).toBe("normal");
    expect(after([[2, 3]])).toMatchObject({ says: "unknown", because: [{ code: "progress/morning-late" }] });
  });
});

// At most one over the usual pain and at most 5 of 10: ours, on the pain monitoring model (silbernagel2007).
describe("at most one over the usual, at most 5", () => {
  test("the first answer is its own usual: 5 is normal, 6 is not", () => {
    expect(after([5])).toEqual({
      says: "normal",
      because: [
        {
          code: "progress/morning-normal",
          data: { where: "knee", on: "2027-03-01", morning: 5, usual: 5, most: 5, rising: false },
        },
      ],
    });
    expect(after([6])).toMatchObject({ says: "above", because: [{ code: "progress/morning-above" }] });
  });

  test("one over the usual is normal, two are not", () => {
    expect(says(2, 3)).toBe("normal");
    expect(after([2, 4])).toMatchObject({ says: "above", because: [{ data: { morning: 4, usual: 2, most: 3 } }] });
    expect(says(3, 1)).toBe("normal");
  });

  test("5 is the most, however usual", () => {
    expect(says(5, 5)).toBe("normal");
    expect(after([5, 6])).toMatchObject({ says: "above", because: [{ data: { usual: 5, most: 5 } }] });
  });

  test("the usual is the middle of the last three answers", () => {
    expect(after([4, 1, 2, 2]).because[0]!.data).toMatchObject({ usual: 2, most: 3 });
    expect(after([5, 5, 1, 1, 1]).because[0]!.data).toMatchObject({ usual: 1 });
    expect(says(5, 5, 5, 1, 1, 3)).toBe("above");
  });

  test("an answer that came too late says nothing of what is usual", () => {
    expect(after([[5, 3], 1, 3]).because[0]!.data).toMatchObject({ usual: 1, most: 2 });
  });

  test("another place has a usual of its own", () => {
    expect(after([5, 1], ["elbow", "knee"]).because[0]!.data).toMatchObject({ usual: 1 });
    expect(after([1, 3], ["elbow", "knee"]).says).toBe("normal");
  });
});

describe("rising twice running is too much, though each is only one more", () => {
  test("1, 2, 3", () => {
    expect(after([1, 2, 3])).toMatchObject({ says: "above", because: [{ data: { rising: true } }] });
  });
  test.each([
    ["once", [2, 2, 3]],
    ["up and then the same", [1, 2, 2]],
    ["down and up", [2, 1, 2]],
    ["long ago", [1, 2, 2, 2]],
  ])("its neighbour, %s", (_, answers) => expect(after(answers)).toMatchObject({ says: "normal" }));
});

test("answers are taken in the order of their days, and of their saying on one day", () => {
  const input = slotTrained({
    exercise: squat,
    set: reps(8),
    sets: 1,
    place: {},
    did: [0, 7, 14].map((on) => [on, { ...setDone(8), load: "none" }] as const),
    hurts: { 0: { where: "knee", howMuch: 3 }, 1: { where: "knee", howMuch: 3 }, 2: { where: "knee", howMuch: 3 } },
    mornings: { 0: [1, 1], 1: [2, 1], 2: [3, 1] },
    today: 21,
  });
  const { hurts, mornings } = input.record;
  const told = (record: Partial<typeof input.record>) =>
    morningAfter({ ...input, record: { ...input.record, ...record } }, hurts[2]!).because[0]!.data;
  const rising = { where: "knee", on: "2027-03-15", morning: 3, usual: 2, most: 3, rising: true };
  expect(told({})).toEqual(rising);
  expect(told({ mornings: mornings.toReversed() })).toEqual(rising);
  const { at } = hurts[2]!;
  const oneDay = { hurts: hurts.map((each) => ({ ...each, at })), mornings: mornings.map((each) => ({ ...each, at })) };
  expect(told({ ...oneDay, mornings: oneDay.mornings.toReversed() })).toEqual(rising);
  const turned = mornings.map((each, index) => ({ ...each, n: 9 - index }));
  expect(told({ mornings: turned })).toEqual(rising);
});

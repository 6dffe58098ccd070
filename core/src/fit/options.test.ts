import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import type { Dose, Exercise, Phase, Place, Slot } from "../model/index.ts";
import {
  madeUpCatalogue,
  madeUpExercise,
  madeUpPerson,
  madeUpPhase,
  madeUpPlace,
  madeUpSlot,
  reps,
  sets,
} from "../testing/index.ts";
import { admitFor, choicesFor } from "./candidates.ts";
import { type BlockChoices, blockTask, doseWithSets, fullWeek } from "./options.ts";
import type { Option } from "./task.ts";

/** 3 s a repetition, 30 s to set up, 5 s between sets, 20 s to get there. */
const timed = { secondsPerRep: 3, setupS: 30, changeS: 5, moveS: 20 } as const;
const squat = madeUpExercise({ id: "squat", ...timed, muscles: { "front thigh": 1, buttocks: 0.5 } });
const row = madeUpExercise({ id: "row", ...timed, pattern: "horizontal pull", muscles: { lats: 1 } });
const plank = madeUpExercise({ id: "plank", ...timed, pattern: "carry" });
const ten = sets(3, reps(10), { restS: 90 });

interface Said {
  readonly phase?: Partial<Phase>;
  readonly place?: Partial<Place>;
  readonly block?: Partial<BlockChoices>;
  readonly moves?: boolean;
  readonly pinned?: number;
  readonly exercises?: readonly Exercise[];
}

function tasked(slots: readonly Slot[], said: Said = {}) {
  const input = {
    phase: madeUpPhase([], { weeks: 1, ...said.phase }),
    person: madeUpPerson({ status: "intermediate" }),
    place: madeUpPlace(said.place),
    catalogue: madeUpCatalogue(said.exercises ?? [squat, row, plank]),
    on: day("2027-03-01"),
  };
  const block: BlockChoices = {
    kind: slots.length === 1 ? "straight" : slots.length === 2 ? "pair" : "round",
    slots: slots.map((slot) => choicesFor(input, admitFor(input), slot)),
    ramps: new Map(),
    ...said.block,
  };
  return blockTask(0, input, block, said.moves ?? false, said.pinned);
}
const squats = (dose: Dose = ten, more: Partial<Slot> = {}) => madeUpSlot("squat", "squat", dose, more);
const rows = (dose: Dose = ten) => madeUpSlot("row", "horizontal pull", dose);
const planks = (dose: Dose = ten) => madeUpSlot("plank", "carry", dose);
const only = (slots: readonly Slot[], said: Said = {}) => tasked(slots, said).ways[0]!.steps[0]!;
const withSets = (options: readonly Option[], count: number) => options.find(({ sets: each }) => each === count)!;

describe("the week that stands for the phase", () => {
  const setsIn = (week: number) => [3, 4, 5, 5][week - 1]!;

  test("is the one with most sets, the first of equals, light weeks left out", () => {
    expect(fullWeek(madeUpPhase([], { weeks: 4 }), setsIn)).toBe(3);
    expect(fullWeek(madeUpPhase([], { weeks: 4, light: [3] }), setsIn)).toBe(4);
    expect(fullWeek(madeUpPhase([], { weeks: 4, light: [3, 4] }), setsIn)).toBe(2);
  });

  test("is any, where every week is light", () => {
    expect(fullWeek(madeUpPhase([], { weeks: 2, light: [1, 2] }), setsIn)).toBe(2);
  });

  test("the change that fit makes in it is made in every week, down to one set", () => {
    const doses = [sets(2, reps(8)), sets(4, reps(6)), sets(1, reps(5))];
    const counts = (given: number) => doses.map((_, index) => doseWithSets(doses, index + 1, 2, given).sets.length);
    expect(counts(4)).toEqual([2, 4, 1]);
    expect(counts(3)).toEqual([1, 3, 1]);
    expect(counts(5)).toEqual([3, 5, 2]);
  });
});

describe("a slot by itself", () => {
  test("may have two sets fewer to one more, or stay open, in the stated order", () => {
    const options = only([squats()]);
    expect(options.map(({ exercise, sets: count }) => [exercise, count])).toEqual([
      ["squat", 3],
      ["squat", 2],
      ["squat", 1],
      ["squat", 4],
      [undefined, 0],
    ]);
  });

  test("loses 8 points for each set left out and 20 for one added; its lines are its points", () => {
    const options = only([squats()]);
    const full = withSets(options, 3).want;
    expect([2, 1, 4].map((count) => withSets(options, count).want - full)).toEqual([-8, -16, -20]);
    for (const option of options)
      expect(option.lines.reduce((sum, { points }) => sum + points, 0)).toBe(option.want - option.must);
    expect(withSets(options, 2).lines.at(-1)).toEqual({
      id: "fit/sets-changed",
      level: "want",
      points: -8,
      data: { asked: 3, sets: 2 },
    });
    expect(withSets(options, 3).lines.map(({ id }) => id)).not.toContain("fit/sets-changed");
  });

  test("that stays open costs 10 must points, takes no time and adds nothing", () => {
    expect(only([squats()]).at(-1)).toEqual({
      exercise: undefined,
      sets: 0,
      must: 10,
      want: 0,
      time: 0,
      rows: [],
      stations: [],
      rank: 1,
      lines: [{ id: "fit/open-slot", level: "must", points: -10, data: { slot: "squat" } }],
    });
  });

  test("takes set-up, work, rest and the way there, a quarter more than usual, in units of 5 s", () => {
    // 30 + (3 × 10 × 3 + 2 × 5) + 2 × 90 = 310 s; a quarter more is 387.5 s: 78 units. One set: 30 + 30 = 60 s.
    const options = only([squats()]);
    expect([withSets(options, 3).time, withSets(options, 1).time]).toEqual([78, 15]);
    // With 20 s to get there: 330 s, 412.5 s.
    expect(withSets(only([squats()], { moves: true }), 3).time).toBe(83);
  });

  test("takes the time of its longest week; light weeks do not count", () => {
    const long = squats(ten, { changes: [{ week: 2, dose: sets(3, reps(20), { restS: 90 }) }] });
    // Week 2: 30 + (180 + 10) + 180 = 400 s: 500 s.
    expect(withSets(only([long], { phase: { weeks: 2 } }), 3).time).toBe(100);
    expect(withSets(only([long], { phase: { weeks: 2, light: [2] } }), 3).time).toBe(78);
  });

  test("with lighter sets before it takes these too, where it takes a load", () => {
    const loaded = { ...squat, loadMeaning: "one implement" } as const;
    const ramps = new Map([["squat", 2]]);
    // Two sets of 5: 30 s, 5 s between, 45 s rest, 5 s before the work: 85 s more. 395 s, 493.75 s.
    expect(withSets(only([squats()], { exercises: [loaded], block: { ramps } }), 3).time).toBe(99);
    expect(withSets(only([squats()], { block: { ramps } }), 3).time).toBe(78);
    expect(withSets(only([squats()], { exercises: [loaded], block: { ramps: new Map([["row", 2]]) } }), 3).time).toBe(
      78,
    );
  });

  test("adds its muscles in quarter-sets, and to its balance", () => {
    // Front thigh is muscle 17, buttocks 14; a squat counts for the knee, row 21.
    const of = (count: number) => new Map(withSets(only([squats()]), count).rows);
    expect(of(3)).toEqual(
      new Map([
        [17, 12],
        [14, 6],
        [21, 12],
      ]),
    );
    expect(of(1)).toEqual(
      new Map([
        [17, 4],
        [14, 2],
        [21, 4],
      ]),
    );
    expect(withSets(only([planks()]), 3).rows).toEqual([]);
  });

  test("with sets that the coach pinned has no others, and pays nothing for them", () => {
    const options = only([squats()], { pinned: 5 });
    expect(options.map(({ sets: count }) => count)).toEqual([5, 0]);
    expect(options[0]!.want).toBe(withSets(only([squats()]), 3).want);
  });

  test("names the stations it cannot do without: those that only busy stations of this place can meet", () => {
    const stationsIn = (needs: Exercise["needs"], equipment: Place["equipment"]) => {
      const task = tasked([squats()], { exercises: [{ ...squat, needs }], place: { equipment } });
      return [task.ways[0]!.steps[0]![0]!.stations, [...task.atOnce]] as const;
    };
    expect(stationsIn([["rack"], ["barbell"]], { rack: 2, barbell: 1 })).toEqual([["rack"], [["rack", 2]]]);
    expect(stationsIn([["rack", "straps"]], { rack: 1, straps: 1 })).toEqual([[], []]);
    expect(stationsIn([["rack", "straps"]], { rack: 1 })).toEqual([["rack"], [["rack", 1]]]);
    expect(stationsIn([["row machine", "cable"]], { cable: 1, "row machine": 2 })).toEqual([
      ["cable or row machine"],
      [["cable or row machine", 3]],
    ]);
  });
});

describe("a pair", () => {
  const pair = (said: Said = {}) => tasked([squats(), rows()], { block: { restS: 60, ...said.block }, ...said });
  const filled = (steps: readonly (readonly Option[])[]) => steps.map((options) => options[0]!.exercise !== undefined);

  test("has one number of sets between its slots, or one of them alone, or neither", () => {
    const { ways } = pair();
    expect(ways.map(({ steps }) => filled(steps))).toEqual([
      [true, true],
      [true, true],
      [true, true],
      [true, true],
      [true, false],
      [false, true],
      [false, false],
    ]);
    // The coach's own number of sets first, then the nearer ones.
    expect(
      ways.slice(0, 4).map(({ steps }) => steps.map((options) => options.map(({ sets: count }) => count))),
    ).toEqual([
      [[3], [3]],
      [[2], [2]],
      [[4], [4]],
      [[1], [1]],
    ]);
    expect(ways[4]!.steps[0]!.map(({ sets: count }) => count)).toEqual([3, 2, 1, 4]);
  });

  test("rests once a turn, and walks to the second station; done alone a slot rests as it asks by itself", () => {
    const { ways } = pair();
    // 2 × 60 s between three turns: 150 s with a quarter more. 30 + 100 s of work: 162.5 s. 20 s more to the row: 187.5 s.
    expect(ways[0]!.time).toBe(30);
    expect(ways[0]!.steps.map(([option]) => option!.time)).toEqual([33, 38]);
    expect([ways[3]!.time, ways[4]!.time, ways[5]!.time, ways[6]!.time]).toEqual([0, 0, 0, 0]);
    expect(ways[4]!.steps[0]![0]!.time).toBe(78);
    expect(ways[5]!.steps[1]![0]!.time).toBe(78);
    expect(pair({ moves: true }).ways[5]!.steps[1]![0]!.time).toBe(83);
  });

  test("without a rest of its own rests as long as the slot that asks for most", () => {
    const { ways } = tasked([squats(), rows(sets(3, reps(10), { restS: 120 }))]);
    expect(ways[0]!.time).toBe(60);
  });

  test("with a slot that nothing may fill has only the other alone", () => {
    const { ways } = tasked([squats(), rows()], { exercises: [squat] });
    expect(ways.map(({ steps }) => filled(steps))).toEqual([
      [true, false],
      [false, false],
    ]);
  });
});

describe("a round", () => {
  test("has every choice of slots that are filled, the most first", () => {
    const { ways } = tasked([squats(), rows(), planks()], { block: { restS: 60 } });
    const filled = ways.map(({ steps }) => steps.map(([option]) => (option!.exercise === undefined ? 0 : 1)).join(""));
    expect([...new Set(filled)]).toEqual(["111", "110", "101", "011", "100", "010", "001", "000"]);
    expect(filled).toHaveLength(4 * 4 + 3 + 1);
  });

  test("of six slots with thirty forms each stays small enough to hold", () => {
    const forms = Array.from({ length: 30 }, (_, index) => madeUpExercise({ id: `f${index}`, ...timed }));
    const six = Array.from({ length: 6 }, (_, at) => ({ ...madeUpSlot("f0", "squat", ten), slot: `s${at}` }));
    const { ways } = tasked(six, { exercises: forms });
    expect(ways).toHaveLength(57 * 4 + 6 + 1);
  });
});

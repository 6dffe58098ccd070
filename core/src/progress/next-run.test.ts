import { describe, expect, test } from "vitest";
import type { RunRecord } from "../measures/index.ts";
import type { RunEnd } from "../model/index.ts";
import { runWalkDose } from "../tables/index.ts";
import { madeUpExercise, reps, SLOT_START, setDone, slotTrained } from "../testing/index.ts";
import { runsNext } from "./next-run.ts";

const DAY_MS = 86_400_000;
const squat = madeUpExercise({ id: "squat" });
const run = madeUpExercise({ id: "run-walk", pattern: "locomotion", amounts: "time", mode: "cyclic" });
interface Told {
  readonly level: number;
  /** So many days after the start, at which level, and what ended it. */
  readonly runs: readonly (readonly [on: number, level: number, end: RunEnd])[];
  readonly today: number;
  /** Minutes of the session and of the person. */
  readonly minutes?: number;
  readonly own?: number;
  /** Bouts that the plan has room for. */
  readonly bouts?: number;
}
const inputOf = ({ level, runs, today, minutes = 60, own = 60, bouts }: Told) => {
  const input = slotTrained({
    exercise: squat,
    set: reps(8),
    sets: 1,
    place: {},
    did: [[0, setDone(8)]],
    today,
    harder: [run],
    person: { minutes: own },
  });
  const whole = runWalkDose(level);
  const dose = { ...whole, sets: whole.sets.slice(0, bouts ?? whole.sets.length) };
  const [phase] = input.plan.phases;
  const weeks = phase!.weeks.map((week) => ({
    ...week,
    sessions: week.sessions.map((session) => ({
      ...session,
      blocks: [],
      conditioning: [{ exercise: "run-walk", dose, effort: "easy" as const, run: { slot: "runs", level } }],
    })),
  }));
  const [part] = input.programme.phases;
  const sessions = part!.sessions.map((session) => ({ ...session, minutes }));
  const record = runs.map(
    ([on, of, end], n): RunRecord => ({
      session: `base/${n + 1}/a`,
      slot: "runs",
      level: of,
      end,
      at: (SLOT_START + on) * DAY_MS,
      n: n + 10,
    }),
  );
  return {
    ...input,
    plan: { ...input.plan, phases: [{ ...phase!, weeks }] },
    programme: { ...input.programme, phases: [{ ...part!, sessions }] },
    record: { ...input.record, runs: record },
  };
};
const next = (told: Told) => runsNext(inputOf(told))[0]!;
const good = (level: number, ...on: readonly number[]) => on.map((day) => [day, level, "done"] as const);
const levelIn = ({ next: { patch } }: ReturnType<typeof next>) =>
  patch?.change === "run-walk" ? patch.level : undefined;

// Three good runs of a level, and levels back after days away: common practice, no source.
describe("three good runs lead on", () => {
  test("to the next level, with their days", () => {
    const up = next({ level: 3, runs: good(3, 0, 2, 4), today: 5 });
    expect(up).toMatchObject({
      slot: { key: "runs", exercise: "run-walk" },
      exercise: { id: "run-walk" },
      stop: false,
      next: { kind: "up", patch: { slot: "runs", change: "run-walk", level: 4 }, refused: [], others: [], since: 10 },
    });
    expect(up.next.evidence).toEqual([
      {
        code: "progress/runs-good",
        data: { level: 3, sessions: [{ on: "2027-03-01" }, { on: "2027-03-03" }, { on: "2027-03-05" }] },
      },
    ]);
  });

  test("of four the last three are told", () => {
    const { evidence } = next({ level: 3, runs: good(3, 0, 2, 4, 6), today: 7 }).next;
    expect(evidence[0]!.data["sessions"]).toEqual([{ on: "2027-03-03" }, { on: "2027-03-05" }, { on: "2027-03-07" }]);
  });

  test("its neighbours: two, one that ended otherwise between them, runs of another level, none at all", () => {
    expect(next({ level: 3, runs: good(3, 0, 2), today: 3 }).next.kind).toBe("stay");
    const between = [...good(3, 0, 2), [3, 3, "legs"] as const, ...good(3, 4, 6)];
    expect(next({ level: 3, runs: between, today: 7 }).next.kind).toBe("stay");
    expect(next({ level: 4, runs: good(3, 0, 2, 4), today: 5 }).next).toMatchObject({ kind: "stay", refused: [] });
    expect(next({ level: 3, runs: [...good(2, 0), ...good(3, 2, 4)], today: 5 }).next.kind).toBe("stay");
    expect(next({ level: 3, runs: [], today: 5 })).toMatchObject({ stop: false, next: { kind: "stay", refused: [] } });
  });

  test("the last level is the last", () => {
    expect(next({ level: 9, runs: good(9, 0, 2, 4), today: 5 }).next).toMatchObject({ kind: "stay", refused: [] });
  });
});

describe("what gave out", () => {
  test("breath or legs: the same again, and it is said what ended the run", () => {
    for (const end of ["breath", "legs"] as const) {
      const { next: said, stop } = next({ level: 3, runs: [...good(3, 0, 2), [4, 3, end]], today: 5 });
      expect([said.kind, stop]).toEqual(["stay", false]);
      expect(said.refused).toEqual([{ code: "progress/run-ended", data: { level: 3, end, on: "2027-03-05" } }]);
    }
  });

  test("pain: two levels back and a stop, a pause beside it", () => {
    const pain = next({ level: 5, runs: [...good(5, 0), [2, 5, "pain"]], today: 3 });
    expect([levelIn(pain), pain.stop, pain.next.kind, pain.next.since]).toEqual([3, true, "down", 11]);
    expect(pain.next.others).toEqual([{ slot: "runs", change: "pause" }]);
    expect(pain.next.evidence).toEqual([
      { code: "progress/run-ended", data: { level: 5, end: "pain", on: "2027-03-03" } },
    ]);
  });

  test("at the first level there is no level back: a pause", () => {
    const pain = next({ level: 1, runs: [[0, 1, "pain"]], today: 1 });
    expect(pain.next).toMatchObject({ kind: "down", patch: { slot: "runs", change: "pause" }, others: [] });
    expect(levelIn(next({ level: 2, runs: [[0, 2, "pain"]], today: 1 }))).toBe(1);
  });

  test("pain at a level that is asked no more stops nothing", () => {
    expect(next({ level: 2, runs: [[0, 4, "pain"]], today: 1 })).toMatchObject({ stop: false, next: { kind: "stay" } });
  });
});

describe("days away", () => {
  test("a week takes one level back, two weeks two, with how many and since when", () => {
    const away = (today: number) => next({ level: 4, runs: good(4, 0), today });
    expect([6, 7, 13, 14].map((today) => levelIn(away(today)))).toEqual([undefined, 3, 3, 2]);
    expect(away(13).next).toMatchObject({
      kind: "down",
      evidence: [{ code: "progress/runs-away", data: { days: 7, since: "2027-03-01" } }],
      since: 10,
    });
    expect(away(14).next.evidence[0]!.data).toMatchObject({ days: 14 });
  });

  test("however many good runs there were before; after runs of another level too", () => {
    expect(levelIn(next({ level: 4, runs: good(4, 0, 2, 4), today: 11 }))).toBe(3);
    expect(levelIn(next({ level: 4, runs: good(3, 0), today: 7 }))).toBe(3);
  });
});

describe("room for the next level", () => {
  const up = (more: Partial<Told>) => next({ level: 5, runs: good(5, 0, 2, 4), today: 5, ...more }).next;
  // Level 6 is 4 × 6 min with 3 min of walks: 27 min, and a quarter more at the upper end.
  test("within the minutes of the session and of the person, at the upper estimate", () => {
    expect([up({ minutes: 34 }).kind, up({ own: 34 }).kind]).toEqual(["up", "up"]);
    const none = up({ minutes: 30 });
    expect(none.kind).toBe("stay");
    expect(none.refused.map(({ code }) => code)).toEqual(["progress/runs-good", "progress/run-no-room"]);
    expect(none.refused[1]!.data).toMatchObject({ level: 6 });
    expect(up({ own: 30 }).kind).toBe("stay");
  });

  test("where bouts of this level were cut already, the next one has no room", () => {
    const cut = up({ bouts: 4 });
    expect([cut.kind, cut.refused.at(-1)]).toEqual(["stay", { code: "progress/run-cut", data: { level: 5 } }]);
  });
});

test("only runs of the phase that runs, and none of a movement that nobody knows", () => {
  const input = inputOf({ level: 3, runs: good(3, 0, 2, 4), today: 5 });
  expect(runsNext({ ...input, plan: { ...input.plan, firmTo: { phase: "later" } } })).toEqual([]);
  expect(runsNext({ ...input, catalogue: { ...input.catalogue, exercises: new Map() } })).toEqual([]);
});

test("runs of another name say nothing of this one", () => {
  const input = inputOf({ level: 3, runs: good(3, 0, 2, 4), today: 5 });
  const runs = input.record.runs.map((each) => ({ ...each, slot: "others" }));
  expect(runsNext({ ...input, record: { ...input.record, runs } })[0]!.next).toMatchObject({
    kind: "stay",
    refused: [],
  });
});

test("how many minutes are missing is told, whole ones up", () => {
  const { refused } = next({ level: 5, runs: good(5, 0, 2, 4), today: 5, minutes: 30 }).next;
  // Four times six minutes and three of walking are 27; a quarter more is 33 min 45 s.
  expect(refused[1]!.data).toEqual({ level: 6, more: 4 });
});

describe("a run in more than one session, and beside another", () => {
  const told = { level: 5, runs: good(5, 0, 2, 4), today: 5 } as const;
  type Input = ReturnType<typeof inputOf>;
  /** A second session of the week with the same run, and so many minutes for each. */
  const twice = (minutes: readonly [number, number], bouts: readonly number[] = []) => {
    const input = inputOf(told);
    const [phase] = input.plan.phases;
    const whole = runWalkDose(5);
    const weeks = phase!.weeks.map((week, at) => {
      const [session] = week.sessions;
      const cut = { ...whole, sets: whole.sets.slice(0, bouts[at] ?? whole.sets.length) };
      const conditioning = session!.conditioning.map((item) => ({ ...item, dose: cut }));
      return { ...week, sessions: [session!, { ...session!, key: "b", conditioning }] };
    });
    const [part] = input.programme.phases;
    const [session] = part!.sessions;
    const sessions = ["a", "b"].map((key, at) => ({ ...session!, key, minutes: minutes[at]! }));
    return {
      ...input,
      plan: { ...input.plan, phases: [{ ...phase!, weeks }] },
      programme: { ...input.programme, phases: [{ ...part!, sessions }] },
    };
  };
  const refused = (input: Input) => runsNext(input)[0]!.next.refused.slice(1);

  test("the one with least room decides", () => {
    expect(runsNext(twice([60, 60]))).toMatchObject([{ next: { kind: "up" } }]);
    const none = [{ code: "progress/run-no-room", data: { level: 6, more: 4 } }];
    expect(refused(twice([30, 60]))).toEqual(none);
    expect(refused(twice([60, 30]))).toEqual(none);
    expect(refused(twice([60, 60], [3]))).toEqual([{ code: "progress/run-cut", data: { level: 5 } }]);
  });

  test("each session counts as it comes next, not as it comes later", () => {
    expect(runsNext(twice([60, 60], [99, 3]))).toMatchObject([{ next: { kind: "up" } }]);
  });

  test("minutes are those of the phase that runs; of a session that nobody knows there are none", () => {
    const input = inputOf(told);
    const [part] = input.programme.phases;
    const short = { ...part!, key: "before", sessions: part!.sessions.map((each) => ({ ...each, minutes: 1 })) };
    expect(refused({ ...input, programme: { ...input.programme, phases: [short, part!] } })).toEqual([]);
    // 33 min 45 s of no minute at all.
    expect(refused({ ...input, programme: { ...input.programme, phases: [] } })).toEqual([
      { code: "progress/run-no-room", data: { level: 6, more: 34 } },
    ]);
  });

  test("another run in the session takes its time, and is judged by itself", () => {
    const input = inputOf(told);
    const [phase] = input.plan.phases;
    const weeks = phase!.weeks.map((week) => ({
      ...week,
      sessions: week.sessions.map((session) => {
        const [item] = session.conditioning;
        const other = { ...item!, dose: runWalkDose(9), run: { slot: "others", level: 9 } };
        return { ...session, conditioning: [item!, other] };
      }),
    }));
    const both = { ...input, plan: { ...input.plan, phases: [{ ...phase!, weeks }] } };
    const [run, other] = runsNext(both);
    // One bout of the other is fewer than this one asks, and is not this one's.
    expect(run!.next.refused.map(({ code }) => code)).toEqual(["progress/runs-good", "progress/run-no-room"]);
    expect(other).toMatchObject({ slot: { key: "others" }, next: { kind: "stay", refused: [] } });
  });
});

describe("to the second", () => {
  const up = (own: number) => next({ level: 5, runs: good(5, 0, 2, 4), today: 5, own }).next;
  // 27 min and a quarter more: 33 min 45 s.
  test("just enough is enough", () => {
    expect(up(33.75).kind).toBe("up");
    expect([up(33.7).kind, up(33.7).refused[1]!.data]).toEqual(["stay", { level: 6, more: 1 }]);
    expect(up(32.74).refused[1]!.data).toEqual({ level: 6, more: 2 });
  });
});

test("a run that a clock puts after today is no time away", () => {
  expect(next({ level: 3, runs: good(3, 0, 2, 4), today: 3 }).next.kind).toBe("up");
});

test("what ended a run of another level is not said of this one", () => {
  expect(next({ level: 2, runs: [[0, 4, "legs"]], today: 1 }).next).toEqual({
    kind: "stay",
    evidence: [],
    refused: [],
    others: [],
  });
});

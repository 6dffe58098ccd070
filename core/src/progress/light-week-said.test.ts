import { describe, expect, test } from "vitest";
import { addDays, type Day, printDay } from "../day.ts";
import { type Decided, occurrencesOf } from "../measures/index.ts";
import type { Patch, Status } from "../model/index.ts";
import { madeUpCatalogue, madeUpExercise, reps, type SlotTrained, setDone, slotTrained } from "../testing/index.ts";
import { lightWeek } from "./index.ts";

const DAY_MS = 86_400_000;
const kg = (value: number) => ({ value, unit: "kg" }) as const;
const press = madeUpExercise({ id: "press", loadMeaning: "stack", needs: [["leg press"]] });
const pull = madeUpExercise({ id: "pull", loadMeaning: "stack", needs: [["leg press"]] });
/** Six sessions as asked and then two, every three days, of four sets each. */
const trained = (exercise: typeof press, last: SlotTrained["did"][number][1]) =>
  slotTrained({
    exercise,
    set: reps({ from: 5, to: 6 }, { reserve: { from: 2, to: 2 } }),
    sets: 4,
    load: 100,
    place: { equipment: { "leg press": 1 } },
    did: [...Array(6).fill(setDone(6, 2)), last, last].map((each, at) => [3 * at, { ...each, load: kg(100) }] as const),
    today: 24,
  });
const FELL = { press: trained(press, setDone(3, 0)), pull: trained(pull, setDone(3, 0)) };
const BASE = FELL.press;
const SESSION = BASE.record.sessions[0]!;

interface Told {
  /** Sets done in each week, of four. */
  readonly did: readonly number[];
  /** Weeks that are over; those that `did` tells of where nothing is said. */
  readonly over?: number;
  readonly weeks?: number;
  /** Numbers of the weeks that are light, and of the weeks of which days are away. */
  readonly light?: readonly number[];
  readonly away?: readonly { readonly week: number; readonly days: number; readonly waits?: true }[];
  /** Days into the week that runs. */
  readonly daysOn?: number;
  /** Days into its week on which each session stands. */
  readonly sessionOn?: number;
  readonly status?: Status;
  readonly decisions?: readonly Decided[];
  /** Movements that fell short. */
  readonly fell?: readonly (keyof typeof FELL)[];
  /** The week that asks for nothing. */
  readonly empty?: number;
}
/** The first day of a week, counted from 1. */
const firstOf = ({ did, over = did.length, daysOn = 0 }: Told, week: number): Day =>
  addDays(BASE.today, 7 * (week - 1 - over) - daysOn);
const first = (told: Told, week: number) => printDay(firstOf(told, week));

function inputOf(told: Told) {
  const {
    did,
    weeks = 14,
    light = [],
    away = [],
    status = "intermediate",
    decisions = [],
    fell = [],
    empty,
    sessionOn = 0,
  } = told;
  const [phase] = BASE.plan.phases;
  const [session] = phase!.weeks[0]!.sessions;
  const [slot] = session!.blocks[0]!.slots;
  const numbers = Array.from({ length: weeks }, (_, at) => at + 1);
  const plan = {
    ...BASE.plan,
    phases: [
      {
        ...phase!,
        weeks: numbers.map((week) => {
          const blocks = [{ kind: "straight" as const, slots: [{ ...slot!, load: kg(week) }] }];
          const sessions = [{ ...session!, blocks: week === empty ? [] : blocks }];
          return { week, light: light.includes(week), sessions };
        }),
      },
    ],
  };
  const sessions = did.flatMap((count, at) => {
    const slots = SESSION.slots.map((each) => ({ ...each, sets: each.sets.slice(0, count) }));
    return count === 0 ? [] : [{ ...SESSION, session: `base/${at + 1}/a`, at: firstOf(told, at + 1) * DAY_MS, slots }];
  });
  const days = away.map(({ week, days: count, waits }) => {
    const from = firstOf(told, week);
    return { from, to: addDays(from, count - 1), ...(waits === undefined ? {} : { waits }) };
  });
  return {
    ...BASE,
    plan,
    person: { ...BASE.person, status, away: days },
    catalogue: madeUpCatalogue([press, pull]),
    record: { ...BASE.record, sessions, ratings: [], decisions },
    log: fell.flatMap((each) => FELL[each].log),
    spans: numbers.map((week) => ({ first: firstOf(told, week), last: addDays(firstOf(told, week), 6) })),
    days: occurrencesOf(plan).map((occurrence) => ({
      occurrence,
      day: addDays(firstOf(told, occurrence.week), sessionOn),
    })),
  };
}
const says = (told: Told) => lightWeek(inputOf(told));
const hard = (count: number) => Array<number>(count).fill(4);
const codes = (reasons: readonly { readonly code: string }[]) => reasons.map(({ code }) => code.slice(9));
const told = (said: ReturnType<typeof says>) => [said.kind, codes(said.evidence), codes(said.refused)];
const ran = (week: string, weeks: number, ended: string | null = null, on: string | null = null) => ({
  code: "progress/hard-weeks",
  data: { week, weeks, ended, on },
});
const lightOf = (week: string, more: object = {}) => ({ slot: "it", change: "light week", week, ...more });

describe("when nothing can be said", () => {
  test("no record, and no week left but the last", () => {
    const none = (kind: string, code: string) => ({ kind, evidence: [{ code, data: {} }], refused: [], others: [] });
    expect(says({ did: [] })).toEqual(none("unknown", "progress/light-no-record"));
    expect(says({ did: hard(5), weeks: 5 })).toEqual(none("none", "progress/light-no-week"));
    expect(says({ did: hard(5), weeks: 6 })).toEqual(none("none", "progress/light-no-week"));
    expect(says({ did: hard(5), weeks: 7 })).toMatchObject({ kind: "light", patch: { week: "base/6" } });
  });
});

// Five: the mean of 5.6 weeks from one light week to the next; eight: mean and SD of it (rogerson2024).
describe("after so many hard weeks running", () => {
  const rule = {
    code: "progress/light-rule",
    data: { rule: "every sixth week", weeks: 5, other: "when it shows", otherWeeks: 8 },
  };
  test("five: the next is light, and a lighter one stands beside it", () => {
    const said = says({ did: hard(5) });
    expect(said).toEqual({
      kind: "light",
      patch: lightOf("base/6"),
      evidence: [ran("base/6", 5), rule, { code: "progress/light-not-measured", data: {} }],
      refused: [],
      others: [lightOf("base/6", { lighter: true })],
      slot: expect.objectContaining({ key: "it", load: kg(6) }),
    });
  });

  test("four: none, with the rule", () => {
    expect(says({ did: hard(4) })).toEqual({
      kind: "none",
      evidence: [ran("base/5", 4), rule],
      refused: [],
      others: [],
    });
  });

  test("a novice after eight", () => {
    const seven = says({ did: hard(7), status: "novice" });
    expect([seven.kind, seven.evidence[1]!.data]).toEqual([
      "none",
      { rule: "when it shows", weeks: 8, other: "every sixth week", otherWeeks: 5 },
    ]);
    expect(says({ did: hard(8), status: "novice" })).toMatchObject({ kind: "light", patch: { week: "base/9" } });
  });

  test("a week has begun with its first set, or when a day of it went by; it counts from half of it on", () => {
    const runs = (sets: number) => says({ did: [...hard(5), sets], over: 5 });
    const since = first({ did: hard(5) }, 6);
    expect(runs(1).evidence).toEqual([ran("base/7", 0, "runs", since)]);
    expect(runs(2)).toMatchObject({ kind: "light", patch: { week: "base/7" }, evidence: [ran("base/7", 6), {}, {}] });
    const late = { did: hard(5), daysOn: 1 };
    expect(says(late).evidence).toEqual([ran("base/7", 0, "runs", first(late, 6))]);
    expect(says({ did: hard(5), daysOn: 0 }).patch).toEqual(lightOf("base/6"));
    expect(says({ did: hard(5), daysOn: 6, sessionOn: 6 }).patch).toEqual(lightOf("base/6"));
  });

  test("three of eight sets are less than half of the week that runs, four are half", () => {
    const evidence = (done: number) => {
      const input = inputOf({ did: [...hard(5), done], over: 5 });
      const [phase] = input.plan.phases;
      const weeks = phase!.weeks.map((week) => ({
        ...week,
        sessions: week.sessions.map((session) => ({ ...session, blocks: [...session.blocks, ...session.blocks] })),
      }));
      const plan = { ...input.plan, phases: [{ ...phase!, weeks: [...phase!.weeks.slice(0, 5), ...weeks.slice(5)] }] };
      return lightWeek({ ...input, plan }).evidence[0];
    };
    expect(evidence(3)).toEqual(ran("base/7", 0, "runs", first({ did: hard(5) }, 6)));
    expect(evidence(4)).toEqual(ran("base/7", 6));
  });

  test("what ended the run before them, and when", () => {
    const run = (more: Partial<Told>) => {
      const all = { did: hard(5), ...more };
      return [says(all).evidence[0]!.data, first(all, 2)] as const;
    };
    const ended = (weeks: number, cause: string, [data, on]: ReturnType<typeof run>) =>
      expect(data).toEqual({ week: "base/6", weeks, ended: cause, on });
    ended(3, "light", run({ light: [2] }));
    ended(3, "nothing recorded", run({ did: [4, 0, 4, 4, 4] }));
    ended(3, "little done", run({ did: [4, 1, 4, 4, 4] }));
    ended(3, "away", run({ away: [{ week: 2, days: 5 }] }));
    ended(4, "away", run({ away: [{ week: 2, days: 5, waits: true }] }));
    expect(run({ away: [{ week: 2, days: 4, waits: true }] })[0]).toEqual(ran("base/6", 5).data);
    expect(run({ did: [4, 2, 4, 4, 4] })[0]).toEqual(ran("base/6", 5).data);
  });

  test("none where the next is light, or is rest, or nothing hard came before, or it asks for nothing", () => {
    expect(says({ did: hard(5), light: [6] })).toMatchObject({
      kind: "none",
      evidence: [ran("base/6", 5), { code: "progress/light-planned", data: { week: "base/6" } }],
      refused: [],
    });
    const on = first({ did: hard(5) }, 6);
    expect(says({ did: hard(5), away: [{ week: 6, days: 5 }] }).evidence).toEqual([
      ran("base/6", 5),
      { code: "progress/week-off", data: { week: "base/6", because: "away", on } },
    ]);
    const still = (days: number) => says({ did: hard(5), away: [{ week: 6, days, waits: true }] });
    expect(still(5).evidence).toEqual([
      ran("base/6", 5),
      { code: "progress/stood-still", data: { week: "base/6", days: 5, on } },
    ]);
    expect(still(4).kind).toBe("light");
    const off = [...hard(4), 0];
    expect(told(says({ did: off }))).toEqual(["none", ["hard-weeks"], []]);
    expect(told(says({ did: [...off, 4] }))).toEqual(["none", ["hard-weeks", "light-rule"], []]);
    expect(told(says({ did: hard(5), empty: 6 }))).toEqual(["none", ["hard-weeks"], []]);
  });
});

// Sooner than three weeks after a rest is one too many: mean less SD is 3.3 (rogerson2024).
describe("where tiredness shows", () => {
  const SIGNS = ["fell-short", "fell-short", "effort-unrated", "light-not-recorded"];
  const tired = (did: readonly number[], more: Partial<Told> = {}) => says({ did, fell: ["press", "pull"], ...more });
  test("three hard weeks are enough, two are too few", () => {
    const three = tired(hard(3));
    expect(told(three)).toEqual(["light", ["hard-weeks", ...SIGNS, "light-not-measured"], []]);
    expect(three.patch).toEqual(lightOf("base/4"));
    const two = tired(hard(2));
    expect(told(two)).toEqual(["none", ["hard-weeks"], [...SIGNS, "light-too-soon"]]);
    expect(two.refused.at(-1)!.data).toEqual({ apart: 3 });
  });

  test("when it is due as well, both are said", () => {
    expect(told(tired(hard(5)))).toEqual(["light", ["hard-weeks", "light-rule", ...SIGNS, "light-not-measured"], []]);
  });

  test("one movement shows nothing, and is said", () => {
    expect(told(tired(hard(3), { fell: ["press"] }))).toEqual(["none", ["hard-weeks", "light-rule"], ["fell-short"]]);
  });

  test("it does not wait for a light week to come, and takes its place up to three weeks on", () => {
    const patch = (light: number) => tired(hard(5), { light: [light] }).patch;
    expect([8, 9, 10].map(patch)).toEqual([
      lightOf("base/6", { instead: "base/8" }),
      lightOf("base/6", { instead: "base/9" }),
      lightOf("base/6"),
    ]);
    expect(tired(hard(5), { away: [{ week: 8, days: 7 }] }).patch).toEqual(lightOf("base/6"));
  });
});

describe("where a rest comes by itself", () => {
  test("before the longest run is over, it is the light week", () => {
    const rest = (count: number, light: number) => {
      const { kind, refused, patch } = says({ did: hard(count), light: [light] });
      return kind === "none" ? refused : patch;
    };
    const planned = (week: string) => [{ code: "progress/light-planned", data: { week } }];
    expect([8, 9].map((light) => rest(5, light))).toEqual([planned("base/8"), planned("base/9")]);
    expect(rest(5, 10)).toEqual(lightOf("base/6"));
    expect(rest(6, 9)).toEqual(planned("base/9"));
    expect(rest(6, 10)).toEqual(lightOf("base/7", { instead: "base/10" }));
    expect(told(says({ did: hard(5), light: [8] }))[1]).toEqual(["hard-weeks", "light-rule"]);
  });

  test("days away are one as well, whether the plan stands still or not", () => {
    const on = first({ did: hard(5) }, 8);
    expect(says({ did: hard(5), away: [{ week: 8, days: 5 }] }).refused).toEqual([
      { code: "progress/week-off", data: { week: "base/8", because: "away", on } },
    ]);
    expect(says({ did: hard(5), away: [{ week: 8, days: 5, waits: true }] }).refused).toEqual([
      { code: "progress/stood-still", data: { week: "base/8", days: 5, on } },
    ]);
    expect(says({ did: hard(5), away: [{ week: 8, days: 4, waits: true }] }).kind).toBe("light");
  });
});

describe("a coach's no", () => {
  const no = (
    week: string,
    more: Partial<Decided> = {},
    change: "light week" | "full week" = "light week",
  ): Decided => {
    const patch: Patch = { slot: "it", change, week };
    const proposal = { proposal: "p", patch, evidence: [], cut: {}, engine: "1" };
    return { id: "no", n: 1, at: 0, by: "Imke", kind: "refused", proposal, cut: {}, ...more };
  };
  const after = (count: number, ...decisions: readonly Decided[]) => says({ did: hard(count), decisions });
  const held = (again: number | null) => [{ code: "progress/light-refused", data: { again } }];

  test("holds until the longest run, is asked once more then, and a no then is the last word", () => {
    expect([6, 7].map((count) => after(count, no("base/6")).refused)).toEqual([held(8), held(8)]);
    expect(after(6, no("base/6"))).toMatchObject({ kind: "none", evidence: [{}, { code: "progress/light-rule" }] });
    expect(after(8, no("base/6")).kind).toBe("light");
    expect(after(8, no("base/8")).kind).toBe("light");
    expect(after(9, no("base/6"), no("base/9")).refused).toEqual(held(null));
  });

  test("to the first week of the run counts, to one before it or after it does not", () => {
    expect(after(5, no("base/1")).refused).toEqual(held(8));
    expect(after(5, no("base/6")).kind).toBe("light");
    const early = { did: [4, 4, 0, ...hard(5)], decisions: [no("base/2")] };
    expect(says(early)).toMatchObject({ kind: "light", patch: { week: "base/9" } });
    expect(says({ ...early, decisions: [no("base/3")] }).kind).toBe("light");
    expect(says({ ...early, decisions: [no("base/4")] }).refused).toEqual(held(8));
  });

  test("a yes, and a no to something else, hold nothing", () => {
    expect(after(6, no("base/6", { kind: "accepted" })).kind).toBe("light");
    expect(after(6, no("base/6", {}, "full week")).kind).toBe("light");
    const { proposal: _, ...bare } = no("base/6");
    expect(after(6, bare).kind).toBe("light");
  });
});

describe("a light week to come near a week off", () => {
  const OFF = [...hard(5), 0];
  const moved = (more: Partial<Told> = {}) => says({ did: OFF, light: [8], ...more });
  test("comes after five hard weeks, with both weeks named; as a full one it stands beside", () => {
    const full = { slot: "it", change: "full week", week: "base/8" };
    expect(moved()).toEqual({
      kind: "move",
      patch: lightOf("base/12", { instead: "base/8" }),
      evidence: [
        {
          code: "progress/week-off",
          data: { week: "base/6", because: "nothing recorded", on: first({ did: OFF }, 6) },
        },
        { code: "progress/light-near-rest", data: { light: "base/8", apart: 3 } },
      ],
      refused: [],
      others: [full],
      slot: expect.objectContaining({ key: "it", load: kg(8) }),
    });
    expect(moved({ weeks: 13 }).kind).toBe("move");
    for (const weeks of [11, 12])
      expect(moved({ weeks })).toMatchObject({
        kind: "full",
        patch: full,
        refused: [],
        others: [],
        slot: { key: "it" },
      });
  });

  test("near is up to three weeks, before it or after", () => {
    expect(moved({ light: [9] }).patch).toEqual(lightOf("base/12", { instead: "base/9" }));
    expect(moved({ light: [10] }).kind).toBe("none");
    expect(moved({ light: [7] }).patch).toEqual(lightOf("base/12", { instead: "base/7" }));
    const next = (week: number) => says({ did: hard(4), light: [6], weeks: 20, away: [{ week, days: 5 }] });
    expect([7, 9].map((week) => next(week).patch)).toEqual([
      lightOf("base/13", { instead: "base/6" }),
      lightOf("base/15", { instead: "base/6" }),
    ]);
    expect(next(10).kind).toBe("none");
  });

  test("becomes full where another rest stands within three weeks of the new place", () => {
    const kinds = (...light: readonly number[]) => moved({ weeks: 20, light: [8, ...light] }).kind;
    expect([kinds(9), kinds(15), kinds(16)]).toEqual(["full", "full", "move"]);
    const away = (week: number) => moved({ weeks: 20, away: [{ week, days: 7 }] }).kind;
    expect([away(15), away(16)]).toEqual(["full", "move"]);
  });

  test("days on which the plan stood still are a week off from five on", () => {
    const still = (days: number) => says({ did: hard(4), light: [6], away: [{ week: 4, days, waits: true }] });
    expect(still(5)).toMatchObject({
      kind: "move",
      patch: { week: "base/10" },
      evidence: [{ code: "progress/stood-still", data: { week: "base/4", days: 5 } }, {}],
    });
    expect(still(4).kind).toBe("none");
  });

  test("stays where the rest came before the first week done, or is its own", () => {
    expect(told(says({ did: [0, 4, 4], light: [4] }))).toEqual(["none", ["hard-weeks", "light-planned"], []]);
    expect(says({ did: [0, 0, 4], light: [4] }).kind).toBe("none");
    const began = says({ did: hard(2), light: [3], away: [{ week: 1, days: 5, waits: true }] });
    expect(began.kind).toBe("none");
    const own = (waits?: true) =>
      says({ did: hard(4), light: [6], away: [{ week: 6, days: 5, ...(waits === undefined ? {} : { waits }) }] }).kind;
    expect([own(), own(true)]).toEqual(["none", "none"]);
  });

  test("the first set of all begins it", () => {
    const said = says({ did: [1, 0, 4], light: [4] });
    expect([said.kind, said.evidence[0]!.data["week"]]).toEqual(["move", "base/2"]);
  });

  test("one that is over is not moved", () => {
    expect(says({ did: [4, 4, 4, 0, 4, 4], light: [5] }).kind).toBe("none");
  });
});

import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import type { Person, Plan, PlanSession, PlanSlot } from "../model/index.ts";
import { runWalkDose } from "../tables/index.ts";
import {
  hold,
  madeUpCatalogue,
  madeUpExercise,
  madeUpPerson,
  madeUpPlace,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
  timeOf,
} from "../testing/index.ts";
import { type SheetInput, sheetFor } from "./sheet.ts";
import type { Sheet, SheetRow } from "./sheet-types.ts";

const ON = day("2027-03-01");
const catalogue = madeUpCatalogue([
  madeUpExercise({ id: "squat", name: "Goblet squat", loadMeaning: "one implement", cues: ["Sit", "two", "three"] }),
  madeUpExercise({ id: "push", name: "Wall push-up" }),
  madeUpExercise({ id: "row", name: "Dumbbell row", loadMeaning: "per hand" }),
  madeUpExercise({ id: "plank", name: "Side plank", amounts: "hold", eachSide: true }),
  madeUpExercise({ id: "cycle", name: "Upright cycle", amounts: "time", loadMeaning: "none" }),
]);

const three = sets(3, reps({ from: 8, to: 10 }), { restS: 90 });
function slot(exercise: string, said: Partial<PlanSlot> = {}): PlanSlot {
  return { key: exercise, exercise, dose: three, why: [], offer: [], ...said };
}

function session(said: Partial<PlanSession> = {}): PlanSession {
  const blocks = [{ kind: "straight", slots: [slot("squat")] }] as const;
  return {
    key: "a",
    title: "A",
    warmup: [],
    blocks,
    conditioning: [],
    open: [],
    minutes: { low: 30, high: 40 },
    ...said,
  };
}

function planOf(weeks: readonly PlanSession[], light: readonly number[] = []): Plan {
  return {
    id: "somebody/made-up/1",
    person: "somebody",
    programme: "",
    made: { engine: "", catalogue: "", state: "", decisions: "" },
    firmTo: { phase: "one" },
    notes: [{ code: "offer/ask-limit", data: { who: "Dr Someone" } }],
    phases: [
      {
        key: "one",
        title: "One",
        score: { must: 0, want: 0, bound: 0, proven: true },
        weeks: weeks.map((each, at) => ({ week: at + 1, light: light.includes(at + 1), sessions: [each] })),
      },
    ],
  };
}

const asked = madeUpProgramme([
  madeUpSession("a", 45, [madeUpSlot("squat", "squat", three), madeUpSlot("calf", "lower isolation", three)]),
]);

function answer(plan: Plan, said: Partial<SheetInput> = {}) {
  const person = madeUpPerson({ name: "Dagny Thistlemere" });
  return sheetFor({ plan, programme: asked, person, place: madeUpPlace(), catalogue, paper: "a4", on: ON, ...said });
}

function sheetOf(weeks: readonly PlanSession[], light: readonly number[] = [], said: Partial<SheetInput> = {}): Sheet {
  const made = answer(planOf(weeks, light), said);
  if (!made.ok) throw new Error(made.reason.code);
  return made.sheet;
}

function rowsOf(said: Partial<PlanSession>): readonly SheetRow[] {
  return sheetOf([session(said)]).pages[0]!.rows;
}

describe("a sheet is for somebody whose screening stands", () => {
  const good = {
    outcome: "no reason found",
    on: day("2027-01-01"),
    until: day("2027-12-31"),
    by: "the coach",
  } as const;
  const cases: readonly (readonly [string, Person["screening"] | undefined, string | undefined])[] = [
    ["an outcome that stands", good, undefined],
    ["its first day", { ...good, on: ON }, undefined],
    ["its last day", { ...good, until: ON }, undefined],
    ["none", undefined, "offer/no-screening"],
    ["the day after it ended", { ...good, until: day("2027-02-28") }, "offer/screening-expired"],
    ["one that is still to come", { ...good, on: day("2027-03-02") }, "offer/screening-not-yet"],
    ["stop", { ...good, outcome: "stop" }, "offer/stop"],
    ["ask a doctor first, not yet asked", { ...good, outcome: "ask a doctor first" }, "offer/ask-doctor"],
    [
      "ask a doctor first, agreed",
      { ...good, outcome: "ask a doctor first", agreed: { on: day("2027-02-01"), who: "Dr Someone" } },
      undefined,
    ],
    [
      "ask a doctor first, agreed only tomorrow",
      { ...good, outcome: "ask a doctor first", agreed: { on: day("2027-03-02"), who: "Dr Someone" } },
      "offer/ask-doctor",
    ],
  ];
  test.each(cases)("%s", (_, screening, code) => {
    const { screening: _had, ...rest } = madeUpPerson();
    const person = screening === undefined ? rest : { ...rest, screening };
    const made = answer(planOf([session()]), { person });
    expect(made.ok ? undefined : made.reason.code).toBe(code);
  });

  test("a plan of somebody else is refused", () =>
    expect(() => answer({ ...planOf([session()]), person: "other" })).toThrow(RangeError));
});

describe("the head of a page", () => {
  const sheet = sheetOf(
    [session(), session({ minutes: { low: 32, high: 44 } }), session({ minutes: { low: 10, high: 12 } })],
    [3],
  );
  const [page] = sheet.pages;
  test("says who by first name and initial, what, which weeks, where", () =>
    expect(page!.left).toEqual(["Dagny T.", "Made up, weeks 1 to 3", "Room"]));
  test("says how long a usual week takes, and how long the screening stands", () =>
    expect(page!.right).toEqual(["30–44 min", "screened 1 Jan 2027, until 31 Dec 2027"]));
  test("marks a light week, and leaves a blank for the date", () =>
    expect(page!.weeks).toEqual([
      { label: "Week 1", light: null, day: null },
      { label: "Week 2", light: null, day: null },
      { label: "Week 3", light: "light", day: null },
    ]));
  test("a letter is called a session", () => expect(page!.title).toBe("Session A"));
  test("the plan and the session are named for typing in", () => expect(page!.mark).toBe("somebody/made-up/1 · a"));
  test("the document has a title and a language", () =>
    expect(sheet).toMatchObject({ title: "Training sheet: Dagny T., Made up", lang: "en", paper: "a4" }));

  test("days of the sessions stand in their weeks", () => {
    const dates = {
      sessions: [{ id: "one/2/a", phase: "one", planWeek: 2, session: "a" }],
      placed: { placements: [{ session: "one/2/a", day: day("2027-03-09"), start: 600 }] },
    };
    expect(sheetOf([session(), session()], [], { dates }).pages[0]!.weeks).toEqual([
      { label: "Week 2", light: null, day: "Tue 9 Mar" },
    ]);
  });
});

describe("movements", () => {
  test("name, dose, one cue; a box for each set of each week; only a dose that differs is said again", () => {
    const two = session({
      blocks: [{ kind: "straight", slots: [slot("squat", { dose: sets(2, reps(8), { restS: 90 }) })] }],
    });
    const [row] = sheetOf([session(), session(), two]).pages[0]!.rows;
    expect(row).toMatchObject({ name: "Goblet squat", dose: "3 × 8–10, rest 90 s", note: "Sit", turn: "alone" });
    expect(row!.cells.map(({ boxes, dose }) => [boxes, dose])).toEqual([
      [3, null],
      [3, null],
      [2, "2 × 8"],
    ]);
  });

  test("left and right part a box, unless only one side is trained", () => {
    const dose = sets(2, hold(20, { eachSide: true }));
    const both = rowsOf({ blocks: [{ kind: "straight", slots: [slot("plank", { dose })] }] })[0]!;
    const one = rowsOf({ blocks: [{ kind: "straight", slots: [slot("plank", { dose, side: "right" })] }] })[0]!;
    expect([both.dose, both.cells[0]!.split]).toEqual(["2 × 20 s each side", true]);
    expect([one.dose, one.cells[0]!.split]).toEqual(["2 × 20 s; right side only", false]);
  });

  test("a pair is tied, and says its rest once", () => {
    const rows = rowsOf({ blocks: [{ kind: "pair", restS: 60, slots: [slot("push"), slot("row")] }] });
    expect(rows.map(({ turn, above }) => [turn, above])).toEqual([
      ["first", "in turn, rest 60 s between"],
      ["last", null],
    ]);
  });

  test("a round has a middle; without a rest it says only the turn", () => {
    const rows = rowsOf({ blocks: [{ kind: "round", slots: [slot("push"), slot("row"), slot("squat")] }] });
    expect(rows.map(({ turn }) => turn)).toEqual(["first", "middle", "last"]);
    expect(rows[0]!.above).toBe("in turn");
  });

  test("what is left of a pair is done by itself with the pair's rest", () => {
    const dose = sets(3, reps(8));
    const [row] = rowsOf({ blocks: [{ kind: "pair", restS: 60, slots: [slot("push", { dose })] }] });
    expect(row).toMatchObject({ turn: "alone", above: null, dose: "3 × 8, rest 60 s" });
  });
});

describe("before and after the work", () => {
  const five = sets(1, reps(5));
  test("a warm-up runs over all weeks: easy work, then lighter sets by the slot that they lead to", () => {
    const [row] = rowsOf({
      warmup: [
        { exercise: "cycle", dose: sets(1, timeOf(240)) },
        { exercise: "row", dose: five, load: { value: 4, unit: "kg" }, for: "row" },
        { exercise: "row", dose: five, load: { value: 8, unit: "kg" }, for: "row" },
        { exercise: "squat", dose: sets(2, reps(5)), for: "squat" },
      ],
    });
    expect(row).toMatchObject({ name: "Warm up", dose: "Upright cycle, 4 min", cells: [] });
    expect(row!.note).toBe(
      "Talk in full sentences. Before Dumbbell row: 5 easy repetitions with 2 × 4 kg and 2 × 8 kg. Before Goblet squat: 2 easy sets of 5 with a light load.",
    );
  });

  test("conditioning has a blank for what was done and no boxes", () => {
    const conditioning = [{ exercise: "cycle", dose: sets(1, timeOf(420)), effort: "hard" }] as const;
    expect(rowsOf({ conditioning }).at(-1)).toMatchObject({
      name: "Upright cycle",
      dose: "7 min",
      note: "Short phrases only.",
      cells: [{ boxes: 0, load: { label: "done", text: "" } }],
    });
  });

  test("of a run its level, its bouts and walks, its minutes, and a blank for what ended it", () => {
    const conditioning = [
      { exercise: "cycle", dose: runWalkDose(2), effort: "steady", run: { slot: "run", level: 2 } },
    ] as const;
    expect(rowsOf({ conditioning }).at(-1)).toMatchObject({
      dose: "level 2 of 9: 10 × run 1 min, walk 1 min between; 19 min in all",
      cells: [{ boxes: 0, load: { label: "done, breath, legs or pain", text: "" } }],
    });
  });

  test("the pulse stands after the words, with its interval unless the highest was measured", () => {
    const dose = sets(1, timeOf(420));
    const noteOf = (miss: number) =>
      rowsOf({ conditioning: [{ exercise: "cycle", dose, effort: "steady", pulse: { from: 108, to: 132, miss } }] }).at(
        -1,
      )?.note;
    expect(noteOf(6)).toBe("Talk in full sentences, breathing deeper. 108–132 beats a minute, give or take 6.");
    expect(noteOf(0)).toBe("Talk in full sentences, breathing deeper. 108–132 beats a minute.");
  });

  test("open slots are named in one plain sentence without their reasons", () => {
    const why = [{ code: "offer/ceiling", data: { tag: "sh_overhead", from: ["shoulder"] } }];
    const open = [
      { key: "squat", why },
      { key: "calf", why },
    ];
    const page = sheetOf([session({ open })]).pages[0]!;
    expect(page.open).toBe("Left open: squat and small work for the legs. Ask your coach.");
    expect(JSON.stringify(page)).not.toMatch(/shoulder|overhead|Someone/);
  });

  test("a session in which nothing could be filled still says so", () => {
    const page = sheetOf([session({ blocks: [], open: [{ key: "squat", why: [] }] })]).pages[0]!;
    expect(page.rows).toEqual([]);
    expect(page.open).toBe("Left open: squat. Ask your coach.");
  });
});

describe("the foot", () => {
  const foot = (said: Partial<PlanSession>) => sheetOf([session(said)]).pages[0]!.foot;
  test("begins with when to stop and ends with whose word comes first", () => {
    const lines = foot({});
    expect(lines[0]![0]).toBe("Stop and tell your coach");
    for (const sign of ["chest pain or pressure", "faintness", "unusual breathlessness", "sharp or rising"])
      expect(lines[0]![1]).toContain(sign);
    expect(lines[1]![1]).toContain("0 to 10");
    expect(lines.at(-1)![1]).toMatch(/clinician.*rules.*before this sheet/);
  });
  test("explains the dashed line only where there is one", () => {
    const dose = sets(2, hold(20, { eachSide: true }));
    expect(foot({}).map(([head]) => head)).not.toContain("A box with a dashed line");
    expect(foot({ blocks: [{ kind: "straight", slots: [slot("plank", { dose })] }] })[2]![0]).toBe(
      "A box with a dashed line",
    );
  });
});

describe("more than a page", () => {
  test("eight weeks stand on two pages of four", () => {
    const { pages } = sheetOf(Array.from({ length: 8 }, () => session()));
    expect(pages.map(({ weeks }) => weeks.map(({ label }) => label))).toEqual([
      ["Week 1", "Week 2", "Week 3", "Week 4"],
      ["Week 5", "Week 6", "Week 7", "Week 8"],
    ]);
    expect(pages[1]!.left[1]).toBe("Made up, weeks 5 to 8");
  });

  test("more than eight movements go on another page with the same foot, pairs together, warm-up once", () => {
    const alone = (n: number) => ({ kind: "straight" as const, slots: [slot("squat", { key: `s${n}` })] });
    const pair = { kind: "pair" as const, slots: [slot("push"), slot("row")] };
    const { pages } = sheetOf([
      session({
        warmup: [{ exercise: "cycle", dose: sets(1, timeOf(240)) }],
        blocks: [...[1, 2, 3, 4, 5, 6, 7].map(alone), pair],
        conditioning: [{ exercise: "cycle", dose: sets(1, timeOf(420)), effort: "easy" }],
        open: [{ key: "calf", why: [] }],
      }),
    ]);
    expect(pages.map(({ title }) => title)).toEqual(["Session A", "Session A, continued"]);
    expect(pages.map(({ rows }) => rows.length)).toEqual([8, 3]);
    expect(pages.map(({ open }) => open === null)).toEqual([true, false]);
    expect(pages[1]!.foot).toEqual(pages[0]!.foot);
  });
});

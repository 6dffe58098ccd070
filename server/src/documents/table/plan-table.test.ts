import { day } from "@stave/core/day";
import { CATALOGUE } from "@stave/core/exercises";
import type { Dose, Person, Plan, PlanSession, PlanSlot, Programme } from "@stave/core/model";
import { readDose } from "@stave/core/model";
import { parse } from "csv-parse/sync";
import { describe, expect, test } from "vitest";
import { planTable } from "./plan-table.ts";

function doseOf(text: string): Dose {
  const read = readDose(text);
  if (!read.ok) throw new Error(text);
  return read.value;
}

function slot(exercise: string, dose: string, said: Partial<PlanSlot> = {}): PlanSlot {
  return { key: exercise, exercise, dose: doseOf(dose), why: [{ code: "fit/liked", data: {} }], offer: [], ...said };
}

function session(said: Partial<PlanSession> = {}): PlanSession {
  const blocks = [{ kind: "straight", slots: [slot("goblet-squat", "3 × 8–10, rest 90 s, 2 in reserve")] }] as const;
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

function planOf(...phases: readonly (readonly [key: string, weeks: readonly PlanSession[], light?: number])[]): Plan {
  return {
    firmTo: { phase: phases[0]![0] },
    phases: phases.map(([key, weeks, light]) => ({
      key,
      title: key,
      score: { must: 0, want: 0, bound: 0, proven: true },
      weeks: weeks.map((each, at) => ({ week: at + 1, light: at + 1 === light, sessions: [each] })),
    })),
  } as unknown as Plan;
}

function table(
  plan: Plan,
  said: { name?: string; title?: string; dates?: ReadonlyMap<string, ReturnType<typeof day>> } = {},
) {
  const person = { id: "dagny", name: said.name ?? "Dagny Thistlemere", units: "kg" } as Person;
  const programme = { title: said.title ?? "Harbour steps" } as Programme;
  const dates = said.dates === undefined ? {} : { dates: said.dates };
  return planTable({ plan, person, programme, catalogue: CATALOGUE, ...dates });
}

function rowsOf(text: string): Record<string, string>[] {
  return parse(text, { bom: true, columns: true }) as Record<string, string>[];
}

test("a slot of a week is a row with its numbers", () => {
  const load = { value: 12.5, unit: "kg" } as const;
  const blocks = [
    { kind: "straight", slots: [slot("dumbbell-rdl", "3 × 8–10, rest 90 s, 2 in reserve", { load })] },
  ] as const;
  const dates = new Map([["one/1/a", day("2027-03-02")]]);
  expect(rowsOf(table(planOf(["one", [session({ blocks })]]), { dates }))).toEqual([
    {
      person: "dagny",
      name: "Dagny Thistlemere",
      programme: "Harbour steps",
      phase: "one",
      week: "1",
      date: "2027-03-02",
      session: "A",
      order: "1",
      slot: "dumbbell-rdl",
      movement: CATALOGUE.exercises.get("dumbbell-rdl")!.name,
      sets: "3",
      amount: "8–10, 2 in reserve",
      load: "12.5",
      unit: "kg",
      rest_s: "90",
      note: "2 × 12.5 kg",
    },
  ]);
});

test("warm-up, work and conditioning stand in the order in which they are done; open slots have none", () => {
  const rows = rowsOf(
    table(
      planOf([
        "one",
        [
          session({
            warmup: [
              { exercise: "cycle-upright", dose: doseOf("5 min") },
              {
                exercise: "goblet-squat",
                dose: doseOf("1 × 5, rest 45 s"),
                load: { value: 8, unit: "kg" },
                for: "goblet-squat",
              },
            ],
            conditioning: [{ exercise: "cycle-upright", dose: doseOf("8 min"), effort: "steady" }],
            open: [{ key: "calf", why: [{ code: "offer/ceiling", data: { tag: "ankle_df", from: ["surgery-leg"] } }] }],
          }),
        ],
      ]),
    ),
  );
  expect(rows.map(({ order, slot: key, note }) => [order, key, note])).toEqual([
    ["1", "", "Warm up"],
    ["2", "goblet-squat", "Warm up; 8 kg"],
    ["3", "goblet-squat", "find: begin light"],
    ["4", "", "Talk in full sentences, breathing deeper."],
    ["", "calf", "left open"],
  ]);
  expect(JSON.stringify(rows)).not.toMatch(/ankle|surgery|ceiling|liked/);
});

describe("what is asked", () => {
  const amount = (dose: string) =>
    rowsOf(
      table(planOf(["one", [session({ blocks: [{ kind: "straight", slots: [slot("goblet-squat", dose)] }] })]])),
    )[0]!;
  test.each([
    ["3 × 8", "3", "8"],
    ["1 × 30 s each side", "1", "30 s each side"],
    ["3 × 8, tempo 3-1-1-0", "3", "8, tempo 3-1-1-0"],
    ["5, 3, 1", "3", "5, 3, 1"],
    ["1 × 5 @80 % + 2 × 5 @75 %", "3", "1 × 5 @80 % + 2 × 5 @75 %"],
    ["3 × as many as possible", "3", "as many as possible"],
  ])("%s", (dose, sets, words) => expect(amount(dose)).toMatchObject({ sets, amount: words, rest_s: "" }));
});

test("a load to be found is no number", () => {
  const find = { from: { value: 4, unit: "kg" }, because: { code: "loads/nothing-known", data: {} } } as const;
  const blocks = [{ kind: "straight", slots: [slot("dumbbell-rdl", "3 × 8", { find })] }] as const;
  expect(rowsOf(table(planOf(["one", [session({ blocks })]])))[0]).toMatchObject({
    load: "",
    unit: "",
    note: "find: begin with 2 × 4 kg",
  });
});

test("a pair has its own rest and says that it is done in turn; one side is said", () => {
  const pair = {
    kind: "pair",
    restS: 60,
    slots: [slot("goblet-squat", "3 × 8", { side: "left" }), slot("cable-row-seated", "3 × 8")],
  };
  const rows = rowsOf(table(planOf(["one", [session({ blocks: [pair as PlanSession["blocks"][number]] })]])));
  expect(rows.map(({ rest_s, note }) => [rest_s, note])).toEqual([
    ["60", "in turn; left side only; find: begin light"],
    ["60", "in turn; find: begin light"],
  ]);
});

test("weeks run on over the phases; later phases are a forecast, light weeks are marked", () => {
  const rows = rowsOf(table(planOf(["one", [session(), session()], 2], ["two", [session()]])));
  expect(rows.map(({ phase, week, date, note }) => [phase, week, date, note])).toEqual([
    ["one", "1", "", "find: begin light"],
    ["one", "2", "", "light; find: begin light"],
    ["two", "3", "", "forecast; find: begin light"],
  ]);
});

test.each(["=1+1", "+x", "-x", "@x", "\tx", 'a,"b"\r\nc', "ليان الصفصافي", "Sölve 😀"])(
  "the name and title %j are text",
  (words) => {
    const [row] = rowsOf(table(planOf(["one", [session({ title: words })]]), { name: words, title: words }));
    for (const column of [row!["name"], row!["programme"], row!["session"]]) {
      expect(column).toMatch(/^[^=+\-@\t]/);
      expect(column!.replace(/^'/, "")).toBe(words);
    }
  },
);

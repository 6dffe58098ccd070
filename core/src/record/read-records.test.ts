import { describe, expect, test } from "vitest";
import { addDays, day } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import { foldRecord } from "../measures/index.ts";
import type { Catalogue, Person, StaveEvent } from "../model/index.ts";
import { nextRevision, sessionDays } from "../revise/index.ts";
import { LOOP_PERSON, madeUpSituation, PLAN_START, plainHash } from "../testing/index.ts";
import { type RecordOptions, type RecordPerson, readRecords } from "./index.ts";

const DAY_MS = 86_400_000;

/** A person on their plan, four weeks after its first day. */
function planned(events: readonly StaveEvent[] = [], more: Partial<Person> = {}): RecordPerson {
  const situation = { ...madeUpSituation(CATALOGUE, events, 27), person: { ...LOOP_PERSON, ...more } };
  const plan = nextRevision(situation);
  return {
    person: situation.person,
    place: situation.place,
    plan,
    days: sessionDays({ ...situation, plan }),
    events,
    record: foldRecord(events),
    today: situation.today,
    dayOf: situation.dayOf,
    toInstant: (on, minutes) => on * DAY_MS + minutes * 60_000,
  };
}

const ANA = planned();
const KG: RecordOptions = { unit: "kg", per: "each" };
const on = (days: number) => {
  const at = addDays(PLAN_START, days);
  return new Date(at * DAY_MS).toISOString().slice(0, 10);
};

function read(
  lines: string,
  options: RecordOptions = KG,
  people: readonly RecordPerson[] = [ANA],
  catalogue: Catalogue = CATALOGUE,
) {
  const answer = readRecords(lines, { people, catalogue, file: "log.csv", options, hash: plainHash });
  if (!answer.ok) throw new Error(answer.problems[0]!.code);
  return answer.value;
}
const row = (heading: string, line: string, options?: RecordOptions, people?: readonly RecordPerson[]) => {
  const { rows, events } = read(`${heading}\n${line}`, options, people);
  return {
    asked: rows[0]!.problems.map(({ code }) => code),
    repairs: rows[0]!.repairs.map(({ code }) => code),
    maybe: rows[0]!.problems[0]?.maybe,
    events: events.get("ana") ?? [],
    sets: (events.get("ana") ?? []).filter(({ kind }) => kind === "set-done").map(({ data }) => data),
  };
};
const HEADING = "day;movement;load;result";
const squat = (load: string, result: string, options?: RecordOptions) =>
  row(HEADING, `${on(0)};back squat;${load};${result}`, options);
const goblet = (load: string, result: string) => row(HEADING, `${on(3)};goblet squat;${load};${result}`);

describe("im-09 (open case): a paper log as it was typed", () => {
  test("10/10/8 are three sets of the slot, with the load as it was entered", () => {
    const { sets, asked, events } = squat("60", "10/10/8");
    expect(asked).toEqual([]);
    expect(sets).toMatchObject(
      [10, 10, 8].map((reps) => ({ exercise: "back-squat", reps, load: { value: 60, unit: "kg" } })),
    );
    expect(sets[0]).toMatchObject({ reserve: "not said", written: "60 10/10/8" });
    expect(events.map(({ kind }) => kind)).toEqual(["session-started", "set-done", "set-done", "set-done"]);
    expect(events[1]!.of).toMatchObject({ session: "base/1/a", slot: "squat", set: 0 });
  });
  test("25 on each side of the only bar is the whole bar, and is shown", () => {
    const place = { ...ANA.place, bars: [{ value: 20, unit: "kg" }] as const };
    const told = row(HEADING, `${on(0)};back squat;25/side;8`, KG, [{ ...ANA, place }]);
    expect(told.sets).toMatchObject([{ load: { value: 70, unit: "kg" } }]);
    expect(told.repairs).toContain("record/with-bar");
    const two = { ...place, bars: [...place.bars, { value: 15, unit: "kg" }] as const };
    expect(row(HEADING, `${on(0)};back squat;25/side;8`, KG, [{ ...ANA, place: two }]).asked).toEqual([
      "record/bar-weight",
    ]);
  });
  test("135lb stays pounds for ever", () => {
    expect(squat("135lb", "3x10").sets[2]).toMatchObject({ load: { value: 135, unit: "lb" }, reps: 10 });
  });
  test("60 without a unit is asked, once said it is taken", () => {
    expect(squat("60", "8", {}).asked).toEqual(["record/unit"]);
    expect(row("day;movement;load (lb);result", `${on(0)};back squat;135;8`, {}).sets).toMatchObject([
      { load: { value: 135, unit: "lb" } },
    ]);
  });
  test("bar is the only bar of the place, and shown as such", () => {
    expect(squat("bar", "8")).toMatchObject({
      repairs: ["record/only-bar"],
      sets: [{ load: { value: 20, unit: "kg" } }],
    });
  });
  test("8e belongs to movements with sides", () => {
    const rows = row(HEADING, `${on(0)};one-arm row;15 kg;8e`);
    expect(rows).toMatchObject({ repairs: [], sets: [{ reps: { left: 8, right: 8 } }] });
    expect(row(HEADING, `${on(0)};one-arm row;15 kg;8`)).toMatchObject({ repairs: ["record/each-side"] });
    expect(squat("60", "8e").asked).toEqual(["record/not-sided"]);
  });
  test("AMRAP 14 left nothing in reserve", () => {
    expect(squat("60", "AMRAP 14")).toMatchObject({ repairs: ["record/all-out"], sets: [{ reps: 14, reserve: 0 }] });
  });
  test("sick is a reason and never zero: of one movement, or of the session", () => {
    const { events, sets } = squat("", "sick");
    expect(sets).toEqual([]);
    expect(events.filter(({ kind }) => kind === "set-left-out")).toMatchObject(
      [0, 1, 2].map(() => ({ data: { because: "sick" } })),
    );
    const missed = row("day;result", `${on(0)};sick`);
    expect(missed.events).toMatchObject([{ kind: "missed", data: { because: "sick" }, of: { session: "base/1/a" } }]);
  });
  test("what cannot be read is listed and never becomes 0", () => {
    expect(squat("60", "ten-ish").asked).toEqual(["record/result"]);
    expect(squat("heavy", "8").asked).toEqual(["record/load"]);
    expect(squat("BW+10", "8").asked).toEqual(["record/load-kind"]);
    expect(squat("plate 7", "8").asked).toEqual(["record/load-kind"]);
  });
});

describe("im-01, im-03 (open cases): what spreadsheets do to records", () => {
  test("a result that became a date is asked, with what it may have been", () => {
    expect(squat("60", "12-Aug")).toMatchObject({ asked: ["record/turned"], maybe: "8/12 or 12/8", events: [] });
    expect(squat("60", "46244")).toMatchObject({ asked: ["record/turned"], maybe: "8/10 or 10/8" });
  });
  test("a range that was asked is read back and kept with the set", () => {
    const { repairs, sets } = row("day;movement;asked;load;result", `${on(0)};back squat;12-Aug;60;8`);
    expect(repairs).toEqual(["record/range-read"]);
    expect(sets).toMatchObject([{ written: "8 to 12: 60 8" }]);
  });
  test("decimal commas: what does not follow the column is asked", () => {
    const { rows, events } = read(
      `${HEADING}\n${on(0)};back squat;62,5;8\n${on(7)};back squat;1.250,0;5\n${on(14)};back squat;62.5;10`,
    );
    expect(rows.map(({ problems }) => problems.map(({ code, maybe, line }) => [code, maybe, line]))).toEqual([
      [],
      [["record/load-doubt", "1250", 3]],
      [["record/load-doubt", "62.5", 4]],
    ]);
    expect(events.get("ana")!.filter(({ kind }) => kind === "set-done")).toMatchObject([
      { data: { load: { value: 62.5, unit: "kg" } } },
    ]);
  });
});

describe("im-07 (open case): who it was", () => {
  const zoe = planned([], { id: "zoe", name: "Zoë Nuñez", born: day("1990-05-01") });
  const other = planned([], { id: "zoe-2", name: "Zoë Nuñez", born: day("1994-05-01") });
  const who = (name: string, people: readonly RecordPerson[], born = "") => {
    const line = read(`person;born;${HEADING}\n${name};${born};${on(0)};back squat;60;8`, KG, people).rows[0]!;
    return line.problems[0]?.code ?? line.person;
  };
  test("one spelling in any composition and case is one person; a bare one is offered and not merged", () => {
    const alone = [zoe, ANA];
    expect(who("Zoë Nuñez".normalize("NFD"), alone)).toBe("zoe");
    expect(who(" ZOË NUÑEZ ", alone)).toBe("zoe");
    expect(who("Zoe Nunez", alone)).toBe("record/person-maybe");
    expect(who("Zo Nuñes", alone)).toBe("record/person-unknown");
  });
  test("two people of one name are told apart by id or birth", () => {
    const both = [zoe, other];
    expect(who("Zoë Nuñez", both)).toBe("record/person-two");
    expect(who("Zoë Nuñez", both, "1994-05-01")).toBe("zoe-2");
    expect(who("zoe", both)).toBe("zoe");
    expect(who("", both)).toBe("record/no-person");
  });
});

describe("bad input", () => {
  test("a set before birth", () => {
    expect(row(HEADING, "1979-01-01;back squat;60;8").asked).toEqual(["record/before-birth"]);
  });
  test("a set of tomorrow", () => {
    expect(row(HEADING, `${on(28)};back squat;60;8`).asked).toEqual(["record/in-future"]);
  });
  test("1,000 repetitions; 120 only with a mark that they are meant", () => {
    expect(squat("60", "1000").asked).toEqual(["record/too-many"]);
    expect(squat("60", "120").asked).toEqual(["record/so-many"]);
    expect(squat("60", "120!").sets).toMatchObject([{ reps: 120 }]);
  });
  test("a load ten times too high is a slip until it is said to be meant", () => {
    expect(squat("600", "8").asked).toEqual(["record/load-far"]);
    expect(squat("600!", "8").sets).toMatchObject([{ load: { value: 600, unit: "kg" } }]);
  });
  test("reserve 12", () => {
    expect(row(`${HEADING};rir`, `${on(0)};back squat;60;8;12`).asked).toEqual(["record/reserve"]);
    expect(row(`${HEADING};rir`, `${on(0)};back squat;60;8/8;2/1`).sets).toMatchObject([
      { reserve: 2 },
      { reserve: 1 },
    ]);
  });
  test("two sessions at once: asked, until each has its time", () => {
    const lines = (one: string, two: string) =>
      `day;time;session;movement;load;result\n${on(3)};${one};a;back squat;60;8\n${on(3)};${two};b;goblet squat;16;8`;
    const asked = (text: string) => read(text).rows.map(({ problems }) => problems.map(({ code }) => code));
    expect(asked(lines("", ""))).toEqual([[], ["record/two-at-once"]]);
    expect(asked(lines("09:00", "18:00"))).toEqual([[], []]);
  });
  test("a slot that no longer exists", () => {
    expect(row("day;slot;load;result", `${on(0)};squat-of-old;60;8`).asked).toEqual(["record/slot-gone"]);
    expect(row("day;slot;load;result", `${on(0)};squat;60;8`).sets).toMatchObject([{ exercise: "back-squat" }]);
  });
  test("a renamed machine begins anew, and says so once", () => {
    const line = (machine: string, days: number) => `${on(days)};back squat;60;8;${machine}`;
    const { rows } = read(
      `${HEADING};machine\n${line("Rack by the door", 0)}\n${line("Rack 2", 7)}\n${line("Rack 2", 14)}`,
    );
    expect(rows.map(({ repairs }) => repairs.map(({ code }) => code))).toEqual([
      ["record/new-machine"],
      ["record/new-machine"],
      [],
    ]);
  });
  test("body mass missing: the added load is kept, and nobody is told what was moved in all", () => {
    const catalogue = CATALOGUE;
    const dip = [...catalogue.exercises.values()].find(
      ({ loadMeaning, eachSide }) => loadMeaning === "added to body" && !eachSide,
    )!;
    const { mass: _, ...massless } = LOOP_PERSON;
    const ana = { ...planned(), person: massless as Person };
    const { sets, repairs } = row("day;slot;movement;load;result", `${on(0)};squat;${dip.id};BW+10;8`, KG, [ana]);
    expect(sets).toMatchObject([{ exercise: dip.id, load: { value: 10, unit: "kg" } }]);
    expect(repairs).toEqual(expect.arrayContaining(["record/mass-missing", "record/instead"]));
  });
  test("the morning answer, on time and three days late", () => {
    const lines = (days: number) =>
      `day;movement;load;result;pain;morning\n${on(0)};back squat;60;8;knee 4;\n${on(days)};;;;;5/10`;
    const late = (days: number) => {
      const { rows, events } = read(lines(days));
      const mornings = events.get("ana")!.filter(({ kind }) => kind === "next-morning");
      return [mornings.length, rows[1]!.repairs.map(({ code, data }) => [code, data["days"]])];
    };
    expect(late(1)).toEqual([1, []]);
    expect(late(4)).toEqual([1, [["record/morning-late", 3]]]);
    expect(row("day;morning", `${on(0)};5`).asked).toEqual(["record/no-pain-before"]);
  });
  test("88/150 is refused, not turned (open case mo-08)", () => {
    expect(row("day;pressure;when", `${on(0)};88/150;before`).asked).toEqual(["record/pressure"]);
    expect(row("day;pressure;when", `${on(0)};150/88;before`).events).toMatchObject([
      { kind: "pressure", data: { systolic: 150, diastolic: 88, when: "before" } },
    ]);
  });
});

describe("said once", () => {
  const TEXT = `day;movement;load;result;pain;effort;minutes;ended
${on(0)};back squat;60;10/10/8;knee 2;;;
${on(0)};one-arm row;15;8/8;;7;50;early
${on(1)};;;;;;;`.replace(/\n[^\n]*;;;;;;;$/, "");
  const first = read(TEXT).events.get("ana")!;

  test("the same table again adds nothing, also after a correction", () => {
    const again = read(TEXT, KG, [planned(first)]);
    expect(again.events.size).toBe(0);
    expect(again.rows.map(({ fresh, problems }) => [fresh, problems])).toEqual([
      [0, []],
      [0, []],
    ]);
    const corrected = read(TEXT.replace("10/10/8", "10/10/9"), { ...KG, correct: true }, [planned(first)]);
    const all = [...first, ...corrected.events.get("ana")!];
    expect(read(TEXT, KG, [planned(all)]).events.size).toBe(0);
    expect(foldRecord(all).sessions[0]!.slots[0]!.sets[2]!.reps).toEqual({ both: 9 });
  });
  test("another word on a set that stands is asked, and replaces it only when that is said", () => {
    const other = TEXT.replace("10/10/8", "10/10/9");
    const { rows, events } = read(other, KG, [planned(first)]);
    expect(rows[0]!.problems).toMatchObject([{ code: "record/differs", found: "10/10/9", allowed: "8 with 60 kg" }]);
    expect(events.size).toBe(0);
  });
  test("early without blame, effort with minutes, pain with its place", () => {
    expect(first.map(({ kind }) => kind)).toEqual(expect.arrayContaining(["hurt", "rated", "session-ended"]));
    expect(foldRecord(first).sessions[0]!.ended).toEqual({ early: true });
    expect(foldRecord(first).ratings).toMatchObject([{ data: { effort: 7, minutes: 50 } }]);
  });
  test("two swims on one day are two (open case ot-05: twice by intent keeps two)", () => {
    const swims = `day;outside;minutes;effort\n${on(0)};sport;40;5\n${on(0)};sport;40;5`;
    const { events } = read(swims);
    expect(events.get("ana")).toHaveLength(2);
    expect(read(swims, KG, [planned(events.get("ana"))]).events.size).toBe(0);
  });
});

test("ot-13 (open case): a swap because it was busy keeps a record of its own", () => {
  const { events, repairs } = row(`${HEADING};slot;because`, `${on(0)};goblet squat;20;12/12;squat;busy`);
  expect(repairs).toContain("record/instead");
  expect(events.find(({ kind }) => kind === "swapped")!.data).toEqual({
    from: "back-squat",
    to: "goblet-squat",
    because: "busy",
  });
  const { sets } = foldRecord(events).sessions[0]!.slots[0]!;
  expect(sets.map(({ exercise }) => exercise)).toEqual(["goblet-squat", "goblet-squat"]);
});

test("left and right from two lines are one set", () => {
  const { events } = read(`${HEADING};side\n${on(0)};one-arm row;15;8;left\n${on(0)};one-arm row;15;10;right`);
  const sets = events.get("ana")!.filter(({ kind }) => kind === "set-done");
  expect(sets).toMatchObject([{ data: { reps: { left: 8, right: 10 } } }]);
});

test("both hands together are halved, and shown", () => {
  const line = `${on(0)};;dumbbell bench press;40;8;squat`;
  const text = `day;time;movement;load;result;slot\n${line}`;
  expect(read(text, { unit: "kg" }).rows[0]!.problems.map(({ code }) => code)).toEqual(["record/per-hand"]);
  const { rows, events } = read(text, { unit: "kg", per: "together" });
  expect(rows[0]!.repairs.map(({ code }) => code)).toContain("record/halved");
  expect(events.get("ana")!.find(({ kind }) => kind === "set-done")!.data).toMatchObject({
    load: { value: 20, unit: "kg" },
  });
});

test("a heading that nobody knows is told and left out; two for one thing end it", () => {
  const { repairs } = read(`${HEADING};mood\n${on(0)};back squat;60;8;fine`);
  expect(repairs).toMatchObject([{ code: "record/column-left-out", data: { found: "mood" } }]);
  expect(() => read(`date;day;movement;result\n;${on(0)};back squat;8`)).toThrow("record/heading-twice");
});

test("a day off the plan is the nearest session, and says so", () => {
  const moved = row(HEADING, `${on(1)};back squat;60;8`);
  expect(moved.repairs).toEqual(["record/other-day"]);
  expect(moved.events[1]!.of!.session).toBe("base/1/a");
  expect(
    row(HEADING, `${on(1)};${[...CATALOGUE.exercises.keys()].find((id) => id.includes("plank"))};;30s`).asked,
  ).toEqual(["record/no-session"]);
  expect(goblet("16", "8").events[1]!.of!.session).toBe("base/1/b");
});

/** Tables as coaches keep them for their own eyes. Forms are common practice, no source, unless said. */
import { describe, expect, test } from "vitest";
import { addDays } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import { foldRecord } from "../measures/index.ts";
import { nextRevision, sessionDays } from "../revise/index.ts";
import { LOOP_PERSON, madeUpSituation, PLAN_START, plainHash } from "../testing/index.ts";
import { type RecordPerson, readRecords } from "./index.ts";

const DAY_MS = 86_400_000;
const situation = { ...madeUpSituation(CATALOGUE, [], 27), person: LOOP_PERSON };
const plan = nextRevision(situation);
const ANA: RecordPerson = {
  person: situation.person,
  place: situation.place,
  plan,
  days: sessionDays({ ...situation, plan }),
  events: [],
  record: foldRecord([]),
  today: situation.today,
  dayOf: situation.dayOf,
  toInstant: (on, minutes) => on * DAY_MS + minutes * 60_000,
};
const ON = new Date(addDays(PLAN_START, 0) * DAY_MS).toISOString().slice(0, 10);
const [year, month, date] = ON.split("-") as [string, string, string];

function told(text: string) {
  const read = readRecords(text, {
    people: [ANA],
    catalogue: CATALOGUE,
    file: "log.csv",
    options: { unit: "kg", per: "each", dates: "day first" },
    hash: plainHash,
  });
  if (!read.ok) return { problems: read.problems.map(({ code }) => code), sets: [], asked: [], repairs: [], above: [] };
  const { rows, events, repairs } = read.value;
  return {
    problems: [],
    above: repairs.map(({ code }) => code),
    asked: rows.flatMap(({ problems }) => problems.map(({ code }) => code)),
    repairs: rows.flatMap((row) => row.repairs.map(({ code }) => code)),
    sets: (events.get("ana") ?? [])
      .filter(({ kind }) => kind === "set-done")
      .map(({ data }) => data as { exercise: string; reps: unknown; load: { value: number } }),
  };
}
const repsAndLoads = (text: string) => told(text).sets.map(({ reps, load }) => [reps, load.value]);

describe("a sheet with a title, merged cells and sums", () => {
  const text = `Log of Ana;;;\n;;;\nday;movement;load;result\n${ON};back squat;60;8/8\n;goblet squat;16;10\n;Total;76;26\n`;
  test("the title is passed over, the day goes down, the sums are left out, each shown", () => {
    const { above, asked, repairs, sets } = told(text);
    expect(above).toEqual(["record/title-left-out"]);
    expect(repairs).toEqual(expect.arrayContaining(["record/from-above", "record/sum-left-out"]));
    expect(asked.filter((code) => code !== "record/not-in-session")).toEqual([]);
    expect(sets.slice(0, 2).map(({ reps }) => reps)).toEqual([8, 8]);
  });
  test("a row that says nothing of training takes no day from above", () => {
    expect(told(`day;movement;load;result\n${ON};back squat;60;8\n;;;\n`).asked).toEqual([]);
  });
  test("another person begins without the day of the one before", () => {
    const { asked } = told(`day;person;movement;result\n${ON};ana;back squat;8\n;bo;back squat;8\n`);
    expect(asked).toContain("record/person-unknown");
  });
});

describe("headings in other languages, and sets, repetitions and loads in columns of their own", () => {
  test.each([
    "Date,Exercise,Sets,Reps,Weight (kg)",
    "Fecha,Ejercicio,Series,Repeticiones,Peso (kg)",
    "Date,Exercice,Séries,Répétitions,Charge kg",
    "Datum,Übung,Sätze,Wiederholungen,Gewicht in kg",
    "Data,Esercizio,Serie,Ripetizioni,Carico [kg]",
  ])("%s", (heading) => {
    expect(repsAndLoads(`${heading}\n${ON},back squat,3,8,60\n`)).toEqual([
      [8, 60],
      [8, 60],
      [8, 60],
    ]);
  });
  test("a heading of sets alone holds the results", () => {
    expect(repsAndLoads(`day;movement;load;sets\n${ON};back squat;60;10/8\n`)).toEqual([
      [10, 60],
      [8, 60],
    ]);
  });
  test("no heading that anybody knows, and no line that tells a movement: asked, nothing guessed", () => {
    expect(told("alpha;beta\n;\ngamma;delta\n").problems).toEqual(["record/no-heading"]);
  });
});

describe("loads of sets that differ, and loads written into the result", () => {
  const line = (load: string, result: string) => `day;movement;load;result\n${ON};back squat;${load};${result}\n`;
  test.each([
    [
      "60/65/70",
      "10/8/6",
      [
        [10, 60],
        [8, 65],
        [6, 70],
      ],
    ],
    [
      "60/65/70 kg",
      "3x5",
      [
        [5, 60],
        [5, 65],
        [5, 70],
      ],
    ],
    [
      "",
      "3x5@60",
      [
        [5, 60],
        [5, 60],
        [5, 60],
      ],
    ],
    [
      "",
      "3x5x60",
      [
        [5, 60],
        [5, 60],
        [5, 60],
      ],
    ],
    [
      "",
      "60kg x 10, 62,5kg x 8",
      [
        [10, 60],
        [8, 62.5],
      ],
    ],
    [
      "",
      "10@60/8@65",
      [
        [10, 60],
        [8, 65],
      ],
    ],
  ])("load %s, result %s", (load, result, wanted) => {
    expect(repsAndLoads(line(load, result))).toEqual(wanted);
  });
  test("another number of loads than of sets is asked, and so is 12x60, which may be repetitions or sets", () => {
    expect(told(line("60/65", "10/8/6")).asked).toEqual(["record/loads-of-sets"]);
    expect(told(line("", "12x60")).asked).toEqual(["record/result"]);
  });
  test("a cross is done to one and left out to another: asked; a tick is done, and nothing was entered", () => {
    expect(told(line("60", "x")).asked).toEqual(["record/result"]);
    const done = told(line("", "✓"));
    expect(done.repairs).toContain("record/done-as-asked");
    expect(done.sets.length).toBeGreaterThan(0);
    for (const { reps, load } of done.sets) expect([reps, load]).toEqual(["as asked", "as asked"]);
  });
});

describe("a start and an end typed beside each other (times of a library fault around midnight)", () => {
  const line = (time: string, end: string, minutes = "") =>
    told(`day;movement;load;result;time;end;minutes;effort\n${ON};back squat;60;8;${time};${end};${minutes};7\n`);
  const rated = (time: string, end: string) => {
    const read = readRecords(`day;movement;load;result;start;end;effort\n${ON};back squat;60;8;${time};${end};7\n`, {
      people: [ANA],
      catalogue: CATALOGUE,
      file: "log.csv",
      options: { unit: "kg" },
      hash: plainHash,
    });
    const events = read.ok ? (read.value.events.get("ana") ?? []) : [];
    return events.filter(({ kind }) => kind === "rated").map(({ data }) => (data as { minutes: number }).minutes);
  };
  test.each([
    ["18:00", "18:50", 50],
    ["23:41", "00:36", 55],
    ["23:58", "00:04", 6],
  ])("%s to %s are %d minutes of the day on which it began", (time, end, minutes) => {
    expect(rated(time, end)).toEqual([minutes]);
    expect(line(time, end).repairs).toContain("record/lasted");
  });
  test.each([
    ["18:50", "18:00", "", "record/end-before-start"],
    ["18:00", "18:00", "", "record/end-before-start"],
    ["", "18:50", "", "record/end-alone"],
    ["18:00", "18:50", "45", "record/end-differs"],
  ])("%s to %s with %s minutes is asked: %s", (time, end, minutes, code) => {
    expect(line(time, end, minutes).asked).toContain(code);
  });
});

describe("notes pasted from a message or typed from a notebook", () => {
  test("a day above, then movement, load and result in the usual orders", () => {
    const text = `${date}.${month}.${year}\nBack squat 60kg 3x5, 2 left\n`;
    const { sets, asked } = told(text);
    expect(asked).toEqual([]);
    expect(sets).toMatchObject([5, 5, 5].map((reps) => ({ reps, reserve: 2, load: { value: 60, unit: "kg" } })));
  });
  test("a message with its stamp; what the catalogue does not know is asked", () => {
    const text = `[${date}.${month}.${year}, 18:42] Coach: back squat 3x5 @ 62,5 kg then wobble thing 10\n`;
    const { sets, asked } = told(text);
    expect(asked).toEqual(["record/movement-unknown"]);
    expect(sets.map(({ load }) => load.value)).toEqual([62.5, 62.5, 62.5]);
  });
  test("talk without a movement and a number is no record", () => {
    expect(told("see you tomorrow\nok\n").problems).toEqual(["record/no-heading"]);
  });
});

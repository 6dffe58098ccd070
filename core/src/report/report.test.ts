import { describe, expect, test } from "vitest";
import { addDays, day } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import { highestCounter, type Person, type Plan, type StaveEvent } from "../model/index.ts";
import { nextRevision } from "../revise/index.ts";
import { LOOP_PERSON, madeUpEvent, madeUpSituation, noonOf, PLAN_START, recordedSession } from "../testing/index.ts";
import { type Report, type ReportKind, reportFor } from "./index.ts";

const READINGS = [
  [156, 86],
  [149, 82],
  [153, 84],
  [140, 80],
  [128, 76],
  [124, 72],
  [121, 74],
] as const;
const kg = (value: number) => ({ value, unit: "kg" }) as const;

/** A person with three weeks of squats, a knee that hurt, pressure before sessions, and new tablets. */
function person(more: Partial<Person> = {}, extra: readonly StaveEvent[] = []) {
  const revisions = new Map<string, Plan>();
  let events: readonly StaveEvent[] = [];
  const at = (daysOn: number) => {
    const facts = madeUpSituation(CATALOGUE, events, daysOn);
    const situation = { ...facts, person: { ...facts.person, ...more }, revisionOf: (id: string) => revisions.get(id) };
    const plan = nextRevision(situation);
    revisions.set(plan.id, plan);
    return { ...situation, plan };
  };
  for (const week of [1, 2, 3]) {
    const { plan } = at(7 * (week - 1));
    const squat = Array.from({ length: 3 }, () => ({ reps: 5 + week, reserve: 2, load: kg(57.5 + 2.5 * week) }));
    events = [
      ...events,
      ...recordedSession(plan, `base/${week}/a`, highestCounter(events), noonOf(7 * (week - 1)), { squat }),
    ];
  }
  const n = highestCounter(events);
  const readings = READINGS.map(([systolic, diastolic], i) =>
    madeUpEvent(`pressure-${i}`, n + i + 1, "pressure", { systolic, diastolic, when: "before" }, { at: noonOf(2 * i) }),
  );
  const tablets = madeUpEvent(
    "tablets-1",
    n + 20,
    "noted",
    { about: "medicines", text: "tablets changed" },
    { at: noonOf(7) },
  );
  const hurt = madeUpEvent("hurt-one", n + 21, "hurt", { where: "knee", howMuch: 4 }, { at: noonOf(7) });
  const morning = madeUpEvent("morning-1", n + 22, "next-morning", { hurt: "hurt-one", howMuch: 5 }, { at: noonOf(8) });
  events = [...events, ...readings, tablets, hurt, morning, ...extra];
  return at(16);
}
const of = (kind: ReportKind, more: Partial<Person> = {}): Report => {
  const answer = reportFor({ person: person(more), kind, paper: "a4", coach: "Imke" });
  if (!answer.ok) throw new Error(answer.reason.code);
  return answer.report;
};
const partOf = (report: Report, heading: RegExp) => report.parts.find((part) => heading.test(part.heading))!;

describe("for a clinician", () => {
  const report = of("clinician");

  test("mo-08 (open case): means of the first and last three, all points drawn, medicines marked, no claim of a cause", () => {
    const pressure = partOf(report, /Blood pressure before/);
    expect(pressure.lines).toContain("Mean of the first three readings 152.7/84, of the last three 124.3/74.");
    expect(pressure.lines.join(" ")).toMatch(/tablets changed\. Readings before and after it are not one series/);
    expect(pressure.picture!.svg.split("<circle").length - 1).toBe(2 * READINGS.length);
    expect(pressure.picture!.svg).toContain(">medicines</text>");
    expect(pressure.table!.rows).toHaveLength(READINGS.length);
    expect(report.parts.flatMap(({ lines }) => lines)).toContain("Nothing here says that training caused a change.");
    expect(JSON.stringify(report)).not.toMatch(/because of|thanks to|improved/);
  });

  test("pain with the next morning, limits with who and until when", () => {
    expect(partOf(report, /^Pain/).table!.rows).toEqual([["Mon 8 Mar", "knee", "4", "5"]]);
    const limit = {
      kind: "load",
      atMost: kg(80),
      side: "both",
      from: day("2027-03-01"),
      to: day("2027-06-01"),
      who: "Dr O",
    } as const;
    expect(partOf(of("clinician", { limits: [limit] }), /^Limits/).lines).toEqual([
      "load 80 kg, by Dr O, 2027-03-01 to 2027-06-01",
    ]);
  });

  test("holds nothing of what was decided and no note of the coach", () => {
    expect(report.parts.some(({ heading }) => /decided|calls/.test(heading))).toBe(false);
    expect(JSON.stringify(of("clinician", { note: "pays late" }))).not.toContain("pays late");
  });
});

describe("for the person", () => {
  test("each movement once, from first to last, with its strokes; the name as on a sheet", () => {
    const report = of("person", { name: "Ana Thistlemere" });
    expect(report.title).toBe("Ana T.: what has changed");
    const squat = partOf(report, /^Movement/).strips.find(({ name }) => /squat/i.test(name))!;
    expect(squat.words).toMatch(/^First Mon 1 Mar: 6\/6\/6.* with 60 kg\. Last Mon 15 Mar: 8\/8\/8.* with 65 kg\./);
    expect(squat.svg).toMatch(/^<svg /);
    expect(squat.label).toMatch(/the last 3 sessions, one stroke for each set$/);
  });

  test("none without a screening outcome that stands; the other two are for others", () => {
    const { screening: _, ...unscreened } = LOOP_PERSON;
    const base = { ...person(), person: unscreened as Person };
    const answer = (kind: ReportKind) => reportFor({ person: base, kind, paper: "a4", coach: "Imke" });
    expect(answer("person")).toMatchObject({ ok: false, reason: { code: "offer/no-screening" } });
    expect([answer("clinician").ok, answer("coach").ok]).toEqual([true, true]);
    const over = { ...LOOP_PERSON.screening!, until: addDays(PLAN_START, 3) };
    expect(reportFor({ person: person({ screening: over }), kind: "person", paper: "a4", coach: "Imke" }).ok).toBe(
      false,
    );
  });

  test("neither blame nor cheer, no debt", () => {
    expect(JSON.stringify(of("person"))).not.toMatch(/great|well done|only \d|should have|owe|streak|fail/i);
  });
});

test("for the coach: what calls for a look, figures, what was decided", () => {
  const report = of("coach");
  expect(report.parts.map(({ heading }) => heading)).toEqual([
    "What calls for a look",
    "Figures",
    "Movement by movement",
    "Pain that was noted",
    "What was decided",
  ]);
});

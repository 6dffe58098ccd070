import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { addDays, day } from "@stave/core/day";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { toInstant } from "../documents/calendar/index.ts";
import { PEOPLE, PROGRAMME, stave } from "../testing/run-stave.ts";

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "stave-schedule-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function person(id: string, ...more: readonly string[]) {
  const { exit, out } = await stave(
    "schedule",
    PROGRAMME,
    ...PEOPLE,
    "--person",
    id,
    "--weeks",
    "2",
    "--json",
    ...more,
  );
  expect(exit).toBe(0);
  return JSON.parse(out).result[0];
}
type Stands = { readonly session: string; readonly day: string; readonly start: number };
const days = (sessions: readonly Stands[]) => sessions.map((one) => one.day);

describe("one person's days", () => {
  test("proven, with the number of equal plans, and for each week the next best ways, each as many sessions", async () => {
    const wren = await person("wren");
    expect(days(wren.sessions)).toEqual([
      "2027-01-11",
      "2027-01-13",
      "2027-01-15",
      "2027-01-18",
      "2027-01-20",
      "2027-01-22",
    ]);
    expect(wren).toMatchObject({ proven: true, equalPlans: 1 });
    expect(wren.value).toEqual(wren.bound);
    expect(Object.values(wren.parts).reduce((sum, part) => Number(sum) + Number(part), 0)).toBe(wren.points);
    expect(wren.weeks.map(({ week }: { week: number }) => week)).toEqual([1, 2]);
    const esteban = await person("esteban");
    const [first] = esteban.weeks;
    expect(first.others.length).toBeGreaterThan(0);
    for (const { sessions, dropped, more } of first.others) {
      expect(sessions.length + dropped.length).toBe(3);
      expect(more.points).toBeGreaterThanOrEqual(0);
    }
    expect(first.elsewhere.map(({ session }: Stands) => session)).toHaveLength(3);
  });

  test("in words: sessions a week, how many plans are as good, and the next best of each week", async () => {
    const { out } = await stave("schedule", PROGRAMME, ...PEOPLE, "--person", "esteban", "--weeks", "2");
    expect(out).toMatch(/Sessions a week, weeks from Monday: \d in 2027-W02/);
    expect(out).toMatch(/0 other plans are as good\./);
    const anyDay = await stave("schedule", PROGRAMME, ...PEOPLE, "--person", "bao-linh", "--weeks", "2");
    expect(anyDay.out).toMatch(/64 plans are as good; this one trains first where they differ\./);
    expect(out).toMatch(/Week 1 otherwise: .* on \w+day \d+ January 2027/);
    const sunday = await stave("schedule", PROGRAMME, ...PEOPLE, "--person", "esteban", "--week-begins", "sun");
    expect(sunday.out).toMatch(/weeks from Sunday: \d in the week of Sunday 10 January 2027/);
    expect(sunday.out).not.toMatch(/W\d\d/);
  });

  test("a session without a day has its reason in words, with its week, and every change that would give it one", async () => {
    const { out } = await stave("schedule", PROGRAMME, ...PEOPLE, "--person", "niamh", "--weeks", "2");
    const [first, second] = out.split("\n").filter((line) => line.startsWith("  without a day:"));
    expect(first).toMatch(/ground\/1\/a.*not in the order of the sessions/);
    expect(first).toMatch(/A window of \d+ min on .* would give it a day\./);
    expect(first).toMatch(/In its turn after Fold, reach, carry \(week 1\) it would have a day\.$/);
    expect(second).toMatch(/1 day \(Saturday 23 January 2027\) for 2 sessions: All of it once \(week 2\) and/);
  });

  test("a fixed date, and hours as a must", async () => {
    const wren = await person("wren", "--fixed", "ground/1/b=2027-01-15", "--keep-hours");
    const stands = wren.sessions.find(({ session }: Stands) => session === "ground/1/b");
    expect(stands).toMatchObject({ day: "2027-01-15", why: [{ code: "calendar/own-day" }] });
  });
});

describe("a missed session", () => {
  const ofWren = (because: string, ...more: readonly string[]) =>
    person("wren", "--missed", "2027-01-13", "--because", because, ...more);

  test("ill: skipped, the rest stays, the first one back is eased", async () => {
    const { missed, sessions, weeks } = await ofWren("ill");
    expect(missed).toMatchObject({ because: "ill", answer: "skip", skipped: ["ground/1/b"] });
    expect(missed.why.map(({ code }: { code: string }) => code)).toEqual(["calendar/missed-ill", "calendar/ease-in"]);
    expect(days(sessions)).toEqual(["2027-01-11", "2027-01-15", "2027-01-18", "2027-01-20", "2027-01-22"]);
    expect(weeks).toEqual([]);
  });

  test("tired: skipped, and nothing is eased; named by its id it is the same", async () => {
    const { missed } = await ofWren("tired");
    expect(missed.why.map(({ code }: { code: string }) => code)).toEqual(["calendar/missed-tired"]);
    const byId = await person("wren", "--missed", "ground/1/b", "--because", "tired");
    expect(byId.missed).toEqual(missed);
  });

  test("busy with no other day: skipped, and why", async () => {
    const { missed } = await ofWren("busy");
    expect(missed.answer).toBe("skip");
    expect(missed.why[0].code).toBe("calendar/missed-no-day");
  });

  test("busy on a rota with free days: moved", async () => {
    const plain = await person("esteban");
    const [first] = plain.sessions;
    const { missed, sessions } = await person("esteban", "--missed", first.day, "--because", "busy");
    expect(missed).toMatchObject({ answer: "move", skipped: [] });
    expect(sessions).toHaveLength(plain.sessions.length);
    expect(days(sessions)).not.toContain(first.day);
  });

  test("away until a day: what stood before it is skipped too, and said in words", async () => {
    const { missed } = await ofWren("ill", "--back", "2027-01-19");
    expect(missed.skipped).toEqual(["ground/1/b", "ground/1/c", "ground/2/a"]);
    const args = ["--person", "wren", "--missed", "2027-01-13", "--because", "ill", "--back", "2027-01-19"];
    const { out } = await stave("schedule", PROGRAMME, ...PEOPLE, ...args);
    expect(out).toMatch(/was missed, ill: skipped, and not made up/);
    expect(out).toMatch(/lies before Tuesday 19 January 2027: skipped, and not made up/);
    expect(out).toMatch(/Ask before .* on Wednesday 20 January 2027: .* 9 days after the last session\./);
  });

  test("told in the roster, a miss stays: the days, the words and the calendar file know it", async () => {
    const people = join(folder, "missed.yaml");
    const text = readFileSync(PEOPLE[1]!, "utf8");
    const windows = "    windows: [mon wed 12:00–13:00, fri 17:00–18:00 at ropewalk]\n";
    expect(text).toContain(windows);
    writeFileSync(people, text.replace(windows, `${windows}    missed: [{ on: 2027-01-13, because: ill }]\n`));
    const args = [PROGRAMME, "--people", people, ...PEOPLE.slice(2), "--person", "wren", "--weeks", "2"];
    const { out } = await stave("schedule", ...args);
    expect(out).toMatch(/was missed, ill: skipped, and not made up/);
    expect(out).not.toMatch(/13 January 2027 12:00|plans are as good|otherwise/);
    const ics = join(folder, "told");
    await stave("calendar", PROGRAMME, ...PEOPLE, "--person", "wren", "--weeks", "2", "--out", ics);
    await stave("calendar", ...args, "--out", ics);
    const file = readFileSync(join(ics, "wren/sessions.ics"), "utf8");
    expect(file.match(/STATUS:CANCELLED/g)).toHaveLength(1);
    expect(file.match(/BEGIN:VEVENT/g)).toHaveLength(6);
  });
});

describe("what cannot be read ends with status 2, and says what may stand there", () => {
  test.each<[name: string, args: readonly string[], says: RegExp]>([
    ["no cause", ["--missed", "2027-01-13"], /cause decides.*ill, tired, busy/],
    ["a cause that is none", ["--missed", "2027-01-13", "--because", "lazy"], /ill, tired, busy/],
    [
      "a day without a session",
      ["--missed", "2027-01-14", "--because", "ill"],
      /no such session.*ground\/1\/a \(2027-01-11\)/,
    ],
    ["a slip in the id", ["--missed", "ground/1/z", "--because", "ill"], /ground\/1\/z/],
    [
      "back before it was missed",
      ["--missed", "2027-01-13", "--because", "ill", "--back", "2027-01-13"],
      /2027-01-14 or later/,
    ],
    ["back on no day", ["--missed", "2027-01-13", "--because", "ill", "--back", "2027-02-30"], /2027-02-30/],
    ["a fixed date without its day", ["--fixed", "ground/1/a"], /equals sign.*ground\/1\/a=2027-01-11/],
    ["a fixed date of no session", ["--fixed", "base=2027-01-11"], /no such session/],
    ["a fixed date outside the weeks", ["--fixed", "ground/1/a=2028-01-11"], /2027-01-11 – 2027-02-07/],
  ])("%s", async (_, args, says) => {
    const { exit, err } = await stave("schedule", PROGRAMME, ...PEOPLE, "--person", "wren", ...args);
    expect(exit).toBe(2);
    expect(err).toMatch(says);
  });

  test("a miss is one person's", async () => {
    const { exit, err } = await stave("schedule", PROGRAMME, ...PEOPLE, "--missed", "2027-01-13", "--because", "ill");
    expect([exit, err]).toEqual([2, expect.stringMatching(/--person/)]);
  });
});

describe("weeks in which the clocks change, in zones of every kind", () => {
  // Changes by the IANA time zone database: half an hour, no midnight, two hours, none, a quarter of an hour off.
  const zones = [
    ["Europe/Berlin", "2027-03-22"],
    ["Europe/London", "2027-10-25"],
    ["America/Santiago", "2027-08-30"],
    ["Australia/Lord_Howe", "2027-03-29"],
    ["Antarctica/Troll", "2027-03-22"],
    ["Pacific/Chatham", "2027-09-20"],
    ["Asia/Kathmandu", "2027-03-22"],
    ["Asia/Tokyo", "2027-03-22"],
  ] as const;

  async function scheduled(zone: string, from: string) {
    const people = join(folder, "people.yaml");
    const places = join(folder, "places.yaml");
    writeFileSync(places, `stave: 1\nplaces:\n  - { id: hut, name: Hut, zone: ${zone} }\n`);
    writeFileSync(
      people,
      `stave: 1\npeople:\n  - { id: ada, name: Ada Example, born: 1990-05-01, status: novice, units: kg, place: hut, minutes: 60, windows: [fri sun tue 00:00–01:30] }\n`,
    );
    const files = ["--people", people, "--places", places, "--from", from];
    const { out } = await stave("schedule", PROGRAMME, ...files, "--weeks", "2", "--json");
    return JSON.parse(out).result[0];
  }

  test.each(zones)("%s from %s: no session is lost, doubled or moved to another date", async (zone, from) => {
    const got = await scheduled(zone, from);
    expect(got.zone).toBe(zone);
    const monday = day(from);
    const offset = (text: string) => day(text) - monday;
    expect(days(got.sessions).map(offset)).toEqual([1, 4, 6, 8, 11, 13]);
    // What a clock in that zone shows, by the platform's own calendar.
    const shown = new Intl.DateTimeFormat("sv-SE", { timeZone: zone, dateStyle: "short", timeStyle: "short" });
    for (const { day: on, start } of got.sessions as Stands[]) {
      const text = shown.format(toInstant(day(on), start, zone));
      expect(text.slice(0, 10)).toBe(on);
    }
  });

  test("the same days and wall times in every zone; only the elapsed hours differ", async () => {
    const berlin = await scheduled("Europe/Berlin", "2027-03-22");
    const tokyo = await scheduled("Asia/Tokyo", "2027-03-22");
    expect({ ...berlin, zone: "" }).toEqual({ ...tokyo, zone: "" });
    const hours = (zone: string) => {
      const [friday, sunday] = [day("2027-03-26"), day("2027-03-28")];
      return (toInstant(sunday, 1080, zone) - toInstant(friday, 1080, zone)) / 3_600_000;
    };
    expect([hours("Europe/Berlin"), hours("Asia/Tokyo")]).toEqual([47, 48]);
    expect(addDays(day("2027-03-26"), 2)).toBe(day("2027-03-28"));
  });
});

import { addDays, day, printDay } from "@stave/core/day";
import ICAL from "ical.js";
import { describe, expect, test } from "vitest";
import { dayIn } from "../../practice/day-in.ts";
import { readCalendar } from "./read-calendar.ts";
import { wallTime } from "./to-instant.ts";
import { type CalendarInput, type CalendarSession, writeCalendar } from "./write-calendar.ts";

const NOW = Date.UTC(2027, 0, 4, 9, 30, 15);
const LATER = Date.UTC(2027, 0, 6, 8);

function weekly(first: string, count: number, more: Partial<CalendarSession> = {}): CalendarSession[] {
  return Array.from({ length: count }, (_, week) => ({
    key: `ground/${week + 1}/a`,
    title: "Harbour Steps, session A",
    day: addDays(day(first), 7 * week),
    start: 420,
    minutes: 45,
    zone: "Europe/London",
    ...more,
  }));
}

function file(sessions: readonly CalendarSession[], more: Partial<CalendarInput> = {}): string {
  return writeCalendar({
    practice: "ropewalk",
    person: "p-1",
    programme: "harbour-steps",
    sessions,
    now: NOW,
    ...more,
  });
}

function bytes(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}

interface Shown {
  readonly summary: string;
  readonly start: number;
  readonly end: number;
  readonly sequence: number;
}

/** Another program's calendar: it takes files in one after another, as RFC 5545 asks, by identity and sequence number. */
class Reader {
  readonly shown = new Map<string, Shown>();

  import(text: string): void {
    const events = new ICAL.Component(ICAL.parse(text)).getAllSubcomponents("vevent");
    for (const component of events) {
      const event = new ICAL.Event(component);
      const known = this.shown.get(event.uid);
      if (known !== undefined && event.sequence < known.sequence) continue;
      if (component.getFirstPropertyValue("status") === "CANCELLED") this.shown.delete(event.uid);
      else
        this.shown.set(event.uid, {
          summary: event.summary,
          start: event.startDate.toUnixTime() * 1000,
          end: event.endDate.toUnixTime() * 1000,
          sequence: event.sequence,
        });
    }
  }
}

const utcOf = (reader: Reader) =>
  [...reader.shown.values()].map(({ start }) => new Date(start).toISOString().slice(0, 16));

describe("cf-01: Tuesdays 07:00 in London from 2 March, eleven times", () => {
  const reader = new Reader();
  reader.import(file(weekly("2027-03-02", 11)));

  test("are at 07:00 UTC until the clocks go forward, then at 06:00 UTC", () => {
    expect(utcOf(reader)).toEqual([
      "2027-03-02T07:00",
      "2027-03-09T07:00",
      "2027-03-16T07:00",
      "2027-03-23T07:00",
      "2027-03-30T06:00",
      "2027-04-06T06:00",
      "2027-04-13T06:00",
      "2027-04-20T06:00",
      "2027-04-27T06:00",
      "2027-05-04T06:00",
      "2027-05-11T06:00",
    ]);
  });

  test("show in New York at 02:00, 02:00, 03:00, 03:00, then 02:00", () => {
    const seen = [...reader.shown.values()].map(({ start }) => wallTime(start, "America/New_York").slice(11));
    expect(seen).toEqual([
      "02:00",
      "02:00",
      "03:00",
      "03:00",
      "02:00",
      "02:00",
      "02:00",
      "02:00",
      "02:00",
      "02:00",
      "02:00",
    ]);
  });

  test("there is no repeating rule that a reader could expand in another way", () => {
    const text = file(weekly("2027-03-02", 11));
    expect(text).not.toMatch(/RRULE/);
    expect(text.match(/DTSTART;TZID=Europe\/London:\d{8}T070000\r\n/g)).toHaveLength(11);
    expect(text.match(/BEGIN:VTIMEZONE\r\nTZID:Europe\/London\r\n/g)).toHaveLength(1);
  });

  test("neighbour: in a zone whose clocks stand still, the eleven are at one time in UTC", () => {
    const still = new Reader();
    still.import(file(weekly("2027-03-02", 11, { zone: "Africa/Lagos" })));
    expect(new Set(utcOf(still).map((text) => text.slice(11)))).toEqual(new Set(["06:00"]));
  });
});

describe("cf-03: a file of 36 events imported again after a change", () => {
  const first = weekly("2027-01-12", 36);
  const one = file(first);
  const moved = first.map((session, index) =>
    index === 3
      ? { ...session, day: addDays(session.day, 1) }
      : index === 5
        ? { ...session, title: "Harbour Steps, session A, last time" }
        : session,
  );
  const two = file(moved, { previous: bytes(one), now: LATER });
  const three = file(moved, { previous: bytes(two), now: LATER + 86_400_000 });

  test("still has 36: one moved, one renamed", () => {
    const reader = new Reader();
    reader.import(one);
    const before = new Map(reader.shown);
    reader.import(two);
    expect(reader.shown.size).toBe(36);
    const changed = [...reader.shown].filter(
      ([uid, shown]) => JSON.stringify(shown) !== JSON.stringify(before.get(uid)),
    );
    expect(
      changed.map(([, { summary, start, sequence }]) => [
        summary,
        new Date(start).toISOString().slice(0, 10),
        sequence,
      ]),
    ).toEqual([
      ["Harbour Steps, session A", "2027-02-03", 1],
      ["Harbour Steps, session A, last time", "2027-02-16", 1],
    ]);
  });

  test("unchanged events keep every byte; the third file is the second", () => {
    const events = (text: string) => text.split("BEGIN:VEVENT").slice(1);
    const same = events(two).filter((event) => events(one).includes(event));
    expect(same).toHaveLength(34);
    expect(three).toBe(two);
  });

  test("neighbour: without the earlier file nothing is known to have changed", () => {
    const reader = new Reader();
    reader.import(one);
    reader.import(file(moved, { now: LATER }));
    expect([...reader.shown.values()].every(({ sequence }) => sequence === 0)).toBe(true);
  });

  test("two plans, and two people, never share an identity", () => {
    const uids = (text: string) => [...text.replaceAll("\r\n ", "").matchAll(/UID:(.*)\r/g)].map(([, uid]) => uid);
    const all = [
      one,
      file(first, { programme: "slipway" }),
      file(first, { person: "p-2" }),
      file(first, { practice: "other" }),
    ].flatMap(uids);
    expect(new Set(all).size).toBe(4 * 36);
  });

  test("identities hold no name and no address", () => {
    expect(file(first, { person: "dagny@example.org" })).not.toMatch(/dagny|example/);
  });

  test("a session that is gone is cancelled, stays cancelled, and can come back", () => {
    const reader = new Reader();
    reader.import(one);
    const fewer = file(first.slice(0, 35), { previous: bytes(one), now: LATER });
    reader.import(fewer);
    expect(reader.shown.size).toBe(35);
    expect(file(first.slice(0, 35), { previous: bytes(fewer), now: LATER + 5000 })).toBe(fewer);
    reader.import(file(first, { previous: bytes(fewer), now: LATER + 10_000 }));
    expect(reader.shown.size).toBe(36);
  });

  test("one that was missed and fell away is cancelled although its hour has passed, and does not come back", () => {
    const reader = new Reader();
    reader.import(one);
    const afterFirst = Date.UTC(2027, 0, 14);
    const missed = file(first.slice(1), { previous: bytes(one), now: afterFirst, skipped: [first[0]!.key] });
    reader.import(missed);
    expect(reader.shown.size).toBe(35);
    // A later run that knows nothing of the miss lists it again, and it is over.
    const later = file(first, { previous: bytes(missed), now: afterFirst + 1000 });
    expect(later).toBe(missed);
    // Neighbour: cancelled while it was still to come, it may come back.
    const ahead = file(first.slice(0, 35), { previous: bytes(missed), now: afterFirst, skipped: [first[35]!.key] });
    reader.import(file(first, { previous: bytes(ahead), now: afterFirst + 2000 }));
    expect(reader.shown.size).toBe(35);
    expect([...reader.shown.values()].map(({ sequence }) => sequence).filter((n) => n > 0)).toEqual([2]);
  });

  test("a session of the past that is no longer listed is left in peace", () => {
    const afterFirst = Date.UTC(2027, 0, 14);
    expect(file(first.slice(1), { previous: bytes(one), now: afterFirst })).not.toContain("CANCELLED");
  });
});

describe("cf-07: Sunday 31 October 2027, 23:30 to 00:30 in London, on the day when the clocks went back", () => {
  const night = weekly("2027-10-31", 1, { start: 23 * 60 + 30, minutes: 60 });
  const shown = (text: string) => {
    const reader = new Reader();
    reader.import(text);
    return [...reader.shown.values()][0]!;
  };
  const local = (at: number) => wallTime(at, "Europe/London");

  test("begins on Sunday, ends on 1 November, and lasts 60 minutes", () => {
    const { start, end } = shown(file(night));
    expect(local(start)).toBe("2027-10-31T23:30");
    expect(local(end)).toBe("2027-11-01T00:30");
    expect(end - start).toBe(60 * 60_000);
  });

  test("recorded from 23:41 to 00:36, and from 23:58 to 00:04: of Sunday, 55 and 6 minutes", () => {
    for (const [from, to, minutes] of [
      ["2027-10-31T23:41Z", "2027-11-01T00:36Z", 55],
      ["2027-10-31T23:58Z", "2027-11-01T00:04Z", 6],
    ] as const) {
      expect((Date.parse(to) - Date.parse(from)) / 60_000).toBe(minutes);
      expect(printDay(dayIn("Europe/London", Date.parse(from)))).toBe("2027-10-31");
    }
  });

  test("neighbour: the same hours in the night itself, 00:30 to 01:30, are 60 minutes of summer time on that Sunday", () => {
    const { start, end } = shown(file(weekly("2027-10-31", 1, { start: 30, minutes: 60 })));
    expect([new Date(start).toISOString(), new Date(end).toISOString()]).toEqual([
      "2027-10-30T23:30:00.000Z",
      "2027-10-31T00:30:00.000Z",
    ]);
  });

  test("others that night are not cut to make room for it", () => {
    const both = file([...night, ...weekly("2027-11-01", 1, { start: 15, minutes: 45, key: "ground/1/b" })]);
    const reader = new Reader();
    reader.import(both);
    expect([...reader.shown.values()].map(({ start, end }) => (end - start) / 60_000)).toEqual([60, 45]);
  });
});

describe("cf-05: a long title in another script, with marks", () => {
  const title = "Тренировка ног — Мария Иванова: приседания и тяга 🏋️";
  const place = "Hall, left; upstairs\n• second door \\ bell";
  const text = file(weekly("2027-01-12", 1, { title, place }));

  test("has lines of at most 75 bytes, none cut inside a character", () => {
    for (const line of text.split("\r\n")) {
      expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
      expect(line).not.toContain("�");
      expect(!/[\uD800-\uDBFF]$|^ ?[\uDC00-\uDFFF]/.test(line)).toBe(true);
    }
    expect(Buffer.byteLength(`SUMMARY:${title}`)).toBe(107);
  });

  test("comes back as it was, commas, semicolons, backslashes and line breaks too", () => {
    const event = new ICAL.Event(new ICAL.Component(ICAL.parse(text)).getFirstSubcomponent("vevent")!);
    expect(event.summary).toBe(title);
    expect(event.location).toBe(place);
  });

  test("a file whose lines were cut inside a character is read too", () => {
    const unfolded = text.replaceAll("\r\n ", "");
    const cut: number[] = [];
    for (const line of unfolded.split("\r\n")) {
      const raw = [...bytes(line)];
      while (raw.length > 60) cut.push(...raw.splice(0, 60), 13, 10, 32);
      cut.push(...raw, 13, 10);
    }
    const known = [...readCalendar(Uint8Array.from(cut))!.values()];
    expect(known[0]!.body).toContain(`SUMMARY:${title}`);
  });

  test("neighbour: a short Latin title is one line", () => {
    expect(file(weekly("2027-01-12", 1))).toContain("SUMMARY:Harbour Steps\\, session A\r\n");
  });
});

describe("an earlier file that is not ours", () => {
  test.each([
    ["nothing", ""],
    ["no calendar", "hello"],
    ["half a calendar", "BEGIN:VCALENDAR\r\nBEGIN:VEVENT\r\nUID:x@stave\r\nSEQUENCE:-4\r\n"],
    [
      "a sequence that is no number",
      "BEGIN:VCALENDAR\r\nBEGIN:VEVENT\r\nUID:x@stave\r\nSEQUENCE:1e99\r\nDTSTAMP:20270101T000000Z\r\nDTSTART:20280101T000000Z\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n",
    ],
  ])("changes nothing: %s", (_, text) => {
    expect(file(weekly("2027-01-12", 2), { previous: bytes(text) })).toBe(file(weekly("2027-01-12", 2)));
  });

  test("somebody else's events are not taken over", () => {
    const theirs =
      "BEGIN:VCALENDAR\r\nBEGIN:VEVENT\r\nUID:party@elsewhere\r\nSEQUENCE:0\r\nDTSTAMP:20270101T000000Z\r\nDTSTART:20280101T000000Z\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n";
    expect(file(weekly("2027-01-12", 1), { previous: bytes(theirs) })).not.toContain("party");
  });
});

import { createHash } from "node:crypto";
import type { Day } from "@stave/core/day";
import ical, { ICalCalendarMethod, type ICalEventData, ICalEventStatus } from "ical-generator";
import { type KnownEvent, readCalendar } from "./read-calendar.ts";
import { toInstant } from "./to-instant.ts";

/** A dated session as a calendar shows it. Titles name the session and the programme, and nothing about health. */
export interface CalendarSession {
  /** The occurrence within its programme: phase, week and session. It stays when the day moves. */
  readonly key: string;
  readonly title: string;
  readonly day: Day;
  readonly start: number;
  readonly minutes: number;
  readonly zone: string;
  readonly place?: string;
}

export interface CalendarInput {
  /** Whose and which: together with a session's key they make an identity. */
  readonly practice: string;
  readonly person: string;
  readonly programme: string;
  readonly sessions: readonly CalendarSession[];
  /** Keys of sessions that were missed and fell away: cancelled although their hour may have passed. */
  readonly skipped?: readonly string[];
  /** The file written before, which remembers sequence numbers and times of change. */
  readonly previous?: Uint8Array;
  /** Epoch milliseconds. */
  readonly now: number;
}

const SECOND = 1000;

/** An identity that says nothing: no name, no address, the same at every export. */
function uidOf({ practice, person, programme }: CalendarInput, key: string): string {
  const hash = createHash("sha256")
    .update(JSON.stringify([practice, person, programme, key]))
    .digest("hex");
  return `${hash.slice(0, 40)}@stave`;
}

function plainEvent(session: CalendarSession): ICalEventData {
  const start = toInstant(session.day, session.start, session.zone);
  return {
    start: new Date(start),
    end: new Date(start + session.minutes * 60 * SECOND),
    summary: session.title,
    ...(session.place === undefined ? {} : { location: session.place }),
    status: ICalEventStatus.CONFIRMED,
  };
}

function fileOf(events: readonly ICalEventData[]): string {
  const calendar = ical({ prodId: { company: "Stave", product: "Sessions" }, method: ICalCalendarMethod.PUBLISH });
  for (const event of events) calendar.createEvent(event);
  return `${calendar.toString().replace(/(?:\r\n)+$/, "")}\r\n`;
}

/** What a reader of our own file would see of an event: its body, to be compared with what stood there before. */
function bodyOf(event: ICalEventData): string {
  const known = readCalendar(new TextEncoder().encode(fileOf([{ ...event, id: "x", stamp: new Date(0) }])));
  return known?.get("x")?.body ?? "";
}

/** Stamps an event: as before when nothing about it has changed, else one sequence number up, changed now. */
function stamped(event: ICalEventData, uid: string, before: KnownEvent | undefined, now: number): ICalEventData {
  const same = before !== undefined && !before.cancelled && before.body === bodyOf(event);
  const changed = new Date(same ? before.changed : now);
  const sequence = before === undefined ? 0 : same ? before.sequence : before.sequence + 1;
  return { ...event, id: uid, sequence, stamp: changed, lastModified: changed };
}

function valueIn(body: string, name: string): string | undefined {
  return body
    .split("\n")
    .find((line) => line.startsWith(`${name}:`))
    ?.slice(name.length + 1);
}

function unescaped(text: string): string {
  return text.replace(/\\([\\;,nN])/g, (_, mark: string) => (mark.toLowerCase() === "n" ? "\n" : mark));
}

/** A session that is no longer there: cancelled once, and kept so that a reader that sleeps long still hears of it. */
function cancelled(before: KnownEvent, now: number): ICalEventData {
  const changed = new Date(before.cancelled ? before.changed : now);
  const place = valueIn(before.body, "LOCATION");
  const end = /^(\d{4})(\d{2})(\d{2})T(\d{2})(\d{2})(\d{2})Z$/.exec(valueIn(before.body, "DTEND") ?? "");
  const [year, month, date, hour, minute, second] = (end?.slice(1) ?? []).map(Number);
  return {
    id: before.uid,
    start: new Date(before.start),
    end: end ? new Date(Date.UTC(year!, month! - 1, date!, hour!, minute!, second!)) : new Date(before.start),
    summary: unescaped(valueIn(before.body, "SUMMARY") ?? ""),
    ...(place === undefined ? {} : { location: unescaped(place) }),
    status: ICalEventStatus.CANCELLED,
    sequence: before.cancelled ? before.sequence : before.sequence + 1,
    stamp: changed,
    lastModified: changed,
  };
}

/**
 * A calendar file of dated sessions: one event a session, start and end as instants in UTC, so that every reader shows
 * the right wall time across changes of the clocks.
 *
 * Written again over an earlier file, unchanged events keep every byte; changed ones get a higher sequence number and
 * time of change; those that are gone and still to come, or that were missed and fell away, are cancelled and stay so.
 *
 * @returns the text of the file, lines of at most 75 bytes
 * @source rfc5545
 */
export function writeCalendar(input: CalendarInput): string {
  const now = Math.floor(input.now / SECOND) * SECOND;
  const previous = input.previous === undefined ? undefined : readCalendar(input.previous);
  const skipped = new Set(input.skipped?.map((key) => uidOf(input, key)));
  const uids = new Set<string>();
  const current = input.sessions.flatMap((session) => {
    const uid = uidOf(input, session.key);
    const before = previous?.get(uid);
    const event = plainEvent(session);
    // What was cancelled and is over stays so: nothing in the past comes back.
    if (before?.cancelled && Number(event.start) <= now) return [];
    uids.add(uid);
    return [stamped(event, uid, before, now)];
  });
  const gone = [...(previous?.values() ?? [])]
    .filter(({ uid }) => !uids.has(uid) && uid.endsWith("@stave"))
    .filter((event) => event.cancelled || event.start > now || skipped.has(event.uid))
    .map((event) => cancelled(event, now));
  return fileOf([...current, ...gone]);
}

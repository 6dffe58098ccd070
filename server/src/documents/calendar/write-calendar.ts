import { createHash } from "node:crypto";
import type { Day } from "@stave/core/day";
import ical, { ICalCalendarMethod, type ICalEventData, ICalEventStatus } from "ical-generator";
import { type KnownEvent, readCalendar } from "./read-calendar.ts";
import { toInstant } from "./to-instant.ts";
import { instantOf, zoneBlock, zoneTime } from "./zone-block.ts";

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

/** An event with the zone in which its times are written. */
type ZonedEvent = ICalEventData & { readonly zone: string };

function plainEvent(session: CalendarSession): ZonedEvent {
  const start = toInstant(session.day, session.start, session.zone);
  return {
    start: new Date(start),
    end: new Date(start + session.minutes * 60 * SECOND),
    summary: session.title,
    ...(session.place === undefined ? {} : { location: session.place }),
    status: ICalEventStatus.CONFIRMED,
    zone: session.zone,
  };
}

const UTC_TIME = /^(DTSTART|DTEND):(\d{8}T\d{6})Z$/;
const INSTANT = "UTC";

/** The text with its times as wall times of each event's zone, and a block for every zone before the first event. */
function fileOf(events: readonly ZonedEvent[]): string {
  const calendar = ical({ prodId: { company: "Stave", product: "Sessions" }, method: ICalCalendarMethod.PUBLISH });
  for (const { zone: _, ...event } of events) calendar.createEvent(event);
  let at = -1;
  const lines = calendar
    .toString()
    .replace(/(?:\r\n)+$/, "")
    .split("\r\n")
    .flatMap((line) => {
      const blocks = line === "BEGIN:VEVENT" && ++at === 0 ? blocksFor(events) : [];
      const { zone = INSTANT } = events[at] ?? {};
      const [, name, utc = ""] = UTC_TIME.exec(line) ?? [];
      if (name === undefined || zone === INSTANT) return [...blocks, line];
      return [`${name};TZID=${zone}:${zoneTime(instantOf(utc, INSTANT), zone)}`];
    });
  return `${lines.join("\r\n")}\r\n`;
}

function blocksFor(events: readonly ZonedEvent[]): readonly string[] {
  const zones = [...new Set(events.map(({ zone }) => zone))].filter((zone) => zone !== INSTANT).sort();
  return zones.flatMap((zone) => {
    const times = events.filter((each) => each.zone === zone).map(({ start, end }) => [Number(start), Number(end)]);
    return zoneBlock(zone, Math.min(...times.map(([start]) => start!)), Math.max(...times.map(([, end]) => end!)));
  });
}

/** What a reader of our own file would see of an event: its body, to be compared with what stood there before. */
function bodyOf(event: ZonedEvent): string {
  const known = readCalendar(new TextEncoder().encode(fileOf([{ ...event, id: "x", stamp: new Date(0) }])));
  return known?.get("x")?.body ?? "";
}

/** Stamps an event: as before when nothing about it has changed, else one sequence number up, changed now. */
function stamped(event: ZonedEvent, uid: string, before: KnownEvent | undefined, now: number): ZonedEvent {
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
function cancelled(before: KnownEvent, now: number): ZonedEvent {
  const changed = new Date(before.cancelled ? before.changed : now);
  const place = valueIn(before.body, "LOCATION");
  return {
    id: before.uid,
    start: new Date(before.start),
    end: new Date(before.end),
    summary: unescaped(valueIn(before.body, "SUMMARY") ?? ""),
    ...(place === undefined ? {} : { location: unescaped(place) }),
    status: ICalEventStatus.CANCELLED,
    sequence: before.cancelled ? before.sequence : before.sequence + 1,
    stamp: changed,
    lastModified: changed,
    zone: before.zone,
  };
}

/**
 * A calendar file of dated sessions: one event a session, start and end as wall times of the place's zone, with a block
 * that tells when its clocks change, so that every reader shows the right time, and the same hour stays should a country
 * change its rules.
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

import { instantOf } from "./zone-block.ts";

/** Longest file that is read, in bytes. A year of daily sessions is about 150,000. */
export const MOST_BYTES = 5_000_000;

/** What an earlier file says of one event: enough to tell whether it has changed. */
export interface KnownEvent {
  readonly uid: string;
  readonly sequence: number;
  /** Epoch milliseconds of its last change. */
  readonly changed: number;
  /** Epoch milliseconds of its start. */
  readonly start: number;
  readonly end: number;
  /** The zone in which its times are written; "UTC" for instants. */
  readonly zone: string;
  readonly cancelled: boolean;
  /** Every other property as written, unfolded, in order. */
  readonly body: string;
}

/** Joins folded lines before the bytes become text, so that a line cut inside a character comes together again. */
function unfold(bytes: Uint8Array): string {
  const kept = new Uint8Array(bytes.length);
  let length = 0;
  for (let i = 0; i < bytes.length; i++) {
    const newline = bytes[i] === 0x0a ? 1 : bytes[i] === 0x0d && bytes[i + 1] === 0x0a ? 2 : 0;
    const next = bytes[i + newline];
    if (newline > 0 && (next === 0x20 || next === 0x09)) i += newline;
    else kept[length++] = bytes[i]!;
  }
  return new TextDecoder("utf-8").decode(kept.subarray(0, length));
}

/** A date and time in UTC as RFC 5545 writes it; NaN for anything else. */
function utc(text: string | undefined): number {
  const match = /^(\d{4})(\d{2})(\d{2})T(\d{2})(\d{2})(\d{2})Z$/.exec(text ?? "");
  if (!match) return Number.NaN;
  const [year, month, date, hour, minute, second] = match.slice(1).map(Number);
  return Date.UTC(year!, month! - 1, date!, hour!, minute!, second!);
}

/** A start or an end: an instant, or a wall time with its zone. */
function timeIn(lines: readonly string[], name: string): { readonly at: number; readonly zone: string } {
  const line = lines.find((each) => each.startsWith(`${name}:`) || each.startsWith(`${name};`)) ?? "";
  const [, zone, local] = /^[A-Z]+;TZID="?([^":;]{1,64})"?:(\d{8}T\d{6})$/.exec(line) ?? [];
  if (zone !== undefined && local !== undefined) return { at: instantOf(local, zone), zone };
  return { at: utc(line.slice(line.indexOf(":") + 1)), zone: "UTC" };
}

/** Properties that say when something was written and not what. */
const BOOKKEEPING = ["UID", "SEQUENCE", "DTSTAMP", "CREATED", "LAST-MODIFIED", "STATUS"];

function eventOf(lines: readonly string[]): KnownEvent | undefined {
  const value = (name: string) => lines.find((line) => line.startsWith(`${name}:`))?.slice(name.length + 1);
  const uid = value("UID");
  const sequence = Number(value("SEQUENCE") ?? "0");
  const changed = utc(value("LAST-MODIFIED") ?? value("DTSTAMP"));
  const { at: start, zone } = timeIn(lines, "DTSTART");
  const { at: end } = timeIn(lines, "DTEND");
  if (
    uid === undefined ||
    uid === "" ||
    !Number.isSafeInteger(sequence) ||
    sequence < 0 ||
    Number.isNaN(changed) ||
    Number.isNaN(start)
  )
    return undefined;
  const body = lines.filter((line) => !BOOKKEEPING.some((name) => line.startsWith(`${name}:`))).join("\n");
  return {
    uid,
    sequence,
    changed,
    start,
    end: Number.isNaN(end) ? start : end,
    zone,
    cancelled: value("STATUS") === "CANCELLED",
    body,
  };
}

/**
 * The events of a calendar file that we wrote earlier. It also reads files whose lines were cut inside a character.
 *
 * Events that it cannot make sense of are left out: they are somebody else's, and nothing of ours depends on them.
 *
 * @returns undefined when this is no calendar, or longer than MOST_BYTES
 * @source rfc5545
 */
export function readCalendar(bytes: Uint8Array): ReadonlyMap<string, KnownEvent> | undefined {
  if (bytes.length > MOST_BYTES) return undefined;
  const lines = unfold(bytes).split(/\r?\n/);
  if (lines[0]?.replace(/^\uFEFF/, "").trim() !== "BEGIN:VCALENDAR") return undefined;
  const events = new Map<string, KnownEvent>();
  let open: string[] | undefined;
  for (const line of lines) {
    if (line === "BEGIN:VEVENT") open = [];
    else if (line === "END:VEVENT") {
      const event = open === undefined ? undefined : eventOf(open);
      if (event !== undefined) events.set(event.uid, event);
      open = undefined;
    } else open?.push(line);
  }
  return events;
}

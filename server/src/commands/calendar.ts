import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { namesFrom, sayReason } from "@stave/core/text";
import { type CalendarSession, writeCalendar } from "../documents/calendar/index.ts";
import { LOCAL_PRACTICE } from "../local-practice.ts";
import { type Answer, failed, type Io } from "./answer.ts";
import { type Days, daysAsked, missedIn, titlesOf } from "./days.ts";
import { type PeopleOptions, type Planned, type Plans, readPlans, unserved } from "./plans.ts";
import type { Asked } from "./schedule-wishes.ts";
import { placeOf } from "./world.ts";
import { type OutFile, writeFiles } from "./write-files.ts";

export interface CalendarOptions extends PeopleOptions, Asked {
  readonly out: string;
  readonly weeks: number;
}

/** Dated sessions as a calendar shows them: their title, the programme's, the place; nothing about health. */
function sessionsOf(
  { person, programme, plan }: Planned,
  { dated, missed }: Days,
  { roster }: Plans,
): readonly CalendarSession[] {
  const { placed, task } = missed ?? dated;
  const titles = titlesOf(plan);
  return placed.placements.map(({ session, day, start, place }) => {
    const at = roster.places.find(({ id }) => id === place) ?? placeOf(person, roster);
    return {
      key: session,
      title: `${programme.programme.title}: ${titles.get(session) ?? session}`,
      day,
      start,
      minutes: task.sessions.find(({ id }) => id === session)!.minutes,
      zone: at.zone,
      place: at.name,
    };
  });
}

/** The file that an earlier run left, which remembers sequence numbers. */
async function earlier(path: string): Promise<Uint8Array | undefined> {
  return await readFile(path).catch(() => undefined);
}

/** A calendar file for one person, taking on the one that stands in the folder. */
export async function calendarFile(
  planned: Planned,
  days: Days,
  plans: Plans,
  folder: string,
  now: number,
): Promise<OutFile> {
  const path = `${planned.person.id}/sessions.ics`;
  const previous = await earlier(join(folder, path));
  const content = writeCalendar({
    practice: LOCAL_PRACTICE,
    person: planned.person.id,
    programme: planned.programme.programme.id,
    sessions: sessionsOf(planned, days, plans),
    skipped: [...days.dated.skipped, ...(days.missed?.skipped ?? [])],
    ...(previous === undefined ? {} : { previous }),
    now,
  });
  return { path, content };
}

/** Writes a calendar file for each person, after a miss with what follows it. */
export async function calendar(paths: readonly string[], options: CalendarOptions, io: Io): Promise<Answer> {
  const command = "calendar";
  const read = await readPlans(paths, options, io.today);
  if (!read.ok) return failed(command, read.problems);
  const files: OutFile[] = [];
  const after: { readonly missed: NonNullable<Days["missed"]>; readonly words: readonly string[] }[] = [];
  for (const planned of read.value.plans) {
    const days = daysAsked(planned, read.value, options.weeks, options);
    if (!days.ok) return failed(command, days.problems);
    files.push(await calendarFile(planned, days.value, read.value, options.out, io.now));
    const { missed } = days.value;
    if (missed === undefined) continue;
    const names = namesFrom(planned.catalogue, { sessions: titlesOf(planned.plan) });
    after.push({ missed, words: missed.why.map((reason) => sayReason(reason, names)) });
  }
  const written = await writeFiles(options.out, files);
  if ("problem" in written) return failed(command, [written.problem]);
  const [miss] = after;
  const lines = [...(miss?.words ?? []), ...written.written.map(({ path }) => `wrote ${path}`)];
  const result = { files: written.written, ...(miss === undefined ? {} : { missed: missedIn(miss.missed, options) }) };
  const words = lines.map((line) => `${line}\n`).join("");
  return { command, result, findings: [], problems: unserved(read.value), words };
}

import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Dated } from "@stave/core/revise";
import { type CalendarSession, writeCalendar } from "../documents/calendar/index.ts";
import { LOCAL_PRACTICE } from "../local-practice.ts";
import { type Answer, failed, type Io } from "./answer.ts";
import { type PeopleOptions, type Planned, type Plans, readPlans, unserved } from "./plans.ts";
import { datesOf } from "./schedule.ts";
import { placeOf } from "./world.ts";
import { type OutFile, writeFiles } from "./write-files.ts";

export interface CalendarOptions extends PeopleOptions {
  readonly out: string;
  readonly weeks: number;
}

/** Dated sessions as a calendar shows them: their title, the programme's, the place; nothing about health. */
function sessionsOf(
  { person, programme, plan }: Planned,
  { placed, task, sessions }: Dated,
  { roster }: Plans,
): readonly CalendarSession[] {
  const titles = new Map<string, string>(
    plan.phases.flatMap((phase) =>
      phase.weeks.flatMap((week) =>
        week.sessions.map((session) => [`${phase.key}/${week.week}/${session.key}`, session.title] as const),
      ),
    ),
  );
  return placed.placements.map(({ session, day, start, place }) => {
    const at = roster.places.find(({ id }) => id === place) ?? placeOf(person, roster);
    return {
      key: session,
      title: `${programme.programme.title}: ${titles.get(session) ?? session}`,
      day,
      start,
      minutes: task.sessions.find(({ id }) => id === session)?.minutes ?? sessions[0]!.minutes,
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
  dated: Dated,
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
    sessions: sessionsOf(planned, dated, plans),
    ...(previous === undefined ? {} : { previous }),
    now,
  });
  return { path, content };
}

/** Writes a calendar file for each person. */
export async function calendar(paths: readonly string[], options: CalendarOptions, io: Io): Promise<Answer> {
  const command = "calendar";
  const read = await readPlans(paths, options, io.today);
  if (!read.ok) return failed(command, read.problems);
  const files: OutFile[] = [];
  for (const planned of read.value.plans) {
    files.push(
      await calendarFile(planned, datesOf(planned, read.value, options.weeks), read.value, options.out, io.now),
    );
  }
  const written = await writeFiles(options.out, files);
  if ("problem" in written) return failed(command, [written.problem]);
  const words = written.written.map(({ path }) => `wrote ${path}\n`).join("");
  return { command, result: { files: written.written }, findings: [], problems: unserved(read.value), words };
}

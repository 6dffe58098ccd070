import { join, relative } from "node:path";
import { printDay } from "@stave/core/day";
import { CATALOGUE } from "@stave/core/exercises";
import { canonicalJson } from "@stave/core/model";
import { type Dated, sessionsPerWeek } from "@stave/core/revise";
import { en, namesFrom, sayReason } from "@stave/core/text";
import { planTable, rosterTable } from "../documents/table/index.ts";
import { type Answer, failed, type Io } from "./answer.ts";
import { calendarFile } from "./calendar.ts";
import { check } from "./check.ts";
import { datesOf } from "./days.ts";
import { DEMO_START, demoFolder } from "./demo-room.ts";
import { progress } from "./fit.ts";
import type { Machine } from "./machine.ts";
import { type Planned, type Plans, readPlans } from "./plans.ts";
import { printSheets } from "./sheet.ts";
import { placeOf } from "./world.ts";
import { type OutFile, writeFiles } from "./write-files.ts";

export interface DemoOptions {
  readonly out: string;
}

const WEEKS = 4;
const NAMES = namesFrom(CATALOGUE);

interface Line {
  readonly planned: Planned;
  readonly dated: Dated;
  readonly noSheet?: string;
}

/** A person in one to three lines: what they train, when, and what a coach must know. */
function lineWords({ planned, dated, noSheet }: Line): string {
  const { person, programme, plan } = planned;
  const { sessions } = plan.phases[0]!.weeks[0]!;
  const slots = sessions.flatMap((session) => session.blocks.flatMap((block) => block.slots));
  const open = sessions.flatMap((session) => session.open);
  const minutes = `${Math.min(...sessions.map((session) => session.minutes.low))}–${Math.max(...sessions.map((session) => session.minutes.high))} min`;
  const first = dated.placed.placements[0];
  const days = first === undefined ? "no day" : `from ${en.print.date(printDay(first.day))}`;
  const dropped = dated.placed.dropped.length;
  const filled = `${slots.length} of ${slots.length + open.length} slots`;
  const head = `${person.name} (${person.id}): ${programme.programme.title}, ${filled}, ${minutes}, ${days}${dropped > 0 ? `, ${en.print.plural(dropped, "session", "sessions")} without a day` : ""}`;
  const unproven = plan.phases.some((phase) => !phase.score.proven) ? ["Not proven best."] : [];
  const said = [...plan.notes.map((note) => sayReason(note, NAMES)), ...unproven];
  const gaps = [...new Set(open.flatMap(({ why }) => why.slice(0, 1).map((reason) => sayReason(reason, NAMES))))];
  const sheet = noSheet === undefined || said.includes(noSheet) ? [] : [noSheet];
  return [head, ...[...said, ...sheet, ...gaps].map((text) => `    ${text}`)].join("\n");
}

function filesOf({ planned, dated }: Line): readonly OutFile[] {
  const { person, programme, plan } = planned;
  const dates = new Map(dated.placed.placements.map(({ session, day }) => [session, day]));
  return [
    { path: `${person.id}/plan.json`, content: `${canonicalJson(plan)}\n` },
    {
      path: `${person.id}/plan.csv`,
      content: planTable({ plan, person, programme: programme.programme, catalogue: CATALOGUE, dates }),
    },
  ];
}

function rosterOf(lines: readonly Line[], plans: Plans): string {
  return rosterTable(
    lines.map(({ planned, noSheet }) => {
      const { person, programme, plan } = planned;
      const perWeek = sessionsPerWeek(
        { person, place: placeOf(person, plans.roster), others: plans.roster.places, on: plans.on },
        programme.programme.phases[0]!,
      );
      return { person, programme: programme.programme, plan, perWeek, ...(noSheet === undefined ? {} : { noSheet }) };
    }),
  );
}

/** The whole job on the demo scenario: checks, fits, dates, prints, and says what it did. */
export async function demo(options: DemoOptions, io: Io, machine: Machine): Promise<Answer> {
  const command = "demo";
  const folder = demoFolder();
  const programmes = ["harbour-steps.yaml", "slipway-strength.yaml"].map((name) =>
    relative(process.cwd(), join(folder, name)),
  );
  const checked = await check(programmes, {}, io.today, machine);
  if (checked.problems.length > 0) return failed(command, checked.problems);
  const people = relative(process.cwd(), join(folder, "people.yaml"));
  const places = relative(process.cwd(), join(folder, "places.yaml"));
  const read = await readPlans(programmes, { people, places, from: DEMO_START }, io.today, progress(io));
  if (!read.ok) return failed(command, read.problems);
  const plans = read.value;
  const dates = new Map(plans.plans.map((planned) => [planned, datesOf(planned, plans, WEEKS)]));
  const datedOf = (planned: Planned) => dates.get(planned)!;
  const sheets = await printSheets(plans, plans.plans, "a4", datedOf, (done) =>
    io.err(`printed ${done} of ${plans.plans.length}${done === plans.plans.length ? "\n" : "\r"}`),
  );
  const lines = plans.plans.map((planned): Line => {
    const withheld = sheets.withheld.find(({ person }) => person === planned.person.id);
    return {
      planned,
      dated: datedOf(planned),
      ...(withheld === undefined ? {} : { noSheet: sayReason(withheld.reason, NAMES) }),
    };
  });
  const calendars: OutFile[] = [];
  for (const { planned, dated, noSheet } of lines) {
    if (noSheet === undefined) calendars.push(await calendarFile(planned, { dated }, plans, options.out, io.now));
  }
  const roster = { path: "roster.csv", content: rosterOf(lines, plans) };
  const written = await writeFiles(options.out, [...lines.flatMap(filesOf), ...sheets.files, ...calendars, roster]);
  if ("problem" in written) return failed(command, [written.problem]);
  const words = [
    `The Ropewalk Room, week of ${en.print.date(DEMO_START)}.`,
    checked.words.trim(),
    ...lines.map(lineWords),
    `${en.print.plural(sheets.files.length, "sheet", "sheets")}, ${en.print.plural(calendars.length, "calendar", "calendars")}, ${en.print.plural(lines.length, "plan", "plans")} and the roster are in ${options.out}/ (${written.written.length} files).`,
    `Look at ${join(options.out, sheets.files[0]?.path ?? roster.path)}, then ask: npx stave why ${programmes[0]} ${plans.plans[0]!.plan.phases[0]!.weeks[0]!.sessions[0]!.blocks[0]!.slots[0]!.key} --people ${people} --places ${places} --person ${plans.plans[0]!.person.id} --from ${DEMO_START}`,
  ];
  const result = {
    start: DEMO_START,
    weeks: WEEKS,
    people: lines.length,
    sheets: sheets.files.length,
    withheld: sheets.withheld.map(({ person, reason }) => ({ person, reason })),
    files: written.written,
  };
  return { command, result, findings: checked.findings, problems: [], words: `${words.join("\n\n")}\n` };
}

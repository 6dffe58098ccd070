import { addDays, type Day, parseDay, printDay, WEEKDAYS, weekdayOf } from "@stave/core/day";
import type { Catalogue, Person, Plan, Problem } from "@stave/core/model";
import { nearNames, readDay, slotsOf } from "@stave/core/model";
import { readCatalogue } from "./catalogue.ts";
import { fitPeople } from "./fit-people.ts";
import { withTests } from "./tests.ts";
import { type Got, type ProgrammeFile, type Roster, readPeople, readProgrammes } from "./world.ts";

/** What every command about people is told. */
export interface PeopleOptions {
  readonly people: string;
  readonly places: string;
  readonly person?: string;
  readonly from?: string;
  /** Threads that fit; with 1, or left out, this very one. */
  readonly workers?: number;
  /** Files of test results, which say where people start. */
  readonly tests?: readonly string[];
  /** A file of the coach's own exercises. */
  readonly exercises?: string;
}

/** A person with the plan of their programme. */
export interface Planned {
  readonly person: Person;
  readonly programme: ProgrammeFile;
  readonly plan: Plan;
  readonly catalogue: Catalogue;
}

/** Who was asked for, each with their programme. */
export interface Training {
  readonly roster: Roster;
  readonly programmes: readonly ProgrammeFile[];
  readonly on: Day;
  /** What may be chosen from: the catalogue with the coach's own exercises. */
  readonly catalogue: Catalogue;
  readonly training: readonly Omit<Planned, "plan">[];
  /** People whose roster names a programme that is not among the files. */
  readonly without: readonly Person[];
}

export interface Plans extends Omit<Training, "training"> {
  readonly plans: readonly Planned[];
}

function problem(code: string, file: string, more: Pick<Problem, "found" | "allowed" | "maybe">): Problem {
  return { code, file, at: [], line: 0, column: 0, ...more };
}

/** The Monday after today, or the day that was given. */
export function startDay(from: string | undefined, today: string): Got<Day> {
  if (from === undefined) {
    const now = parseDay(today)!;
    return { ok: true, value: addDays(now, 7 - WEEKDAYS.indexOf(weekdayOf(now))) };
  }
  const read = readDay(from);
  return read.ok ? read : { ok: false, problems: [problem(read.wrong.code, "--from", read.wrong)] };
}

/** Programmes that were named before: the same file twice, or two versions at once. */
function twice(programmes: readonly ProgrammeFile[]): readonly Problem[] {
  return programmes.flatMap(({ file, programme, positions }, index) => {
    const first = programmes.findIndex((other) => other.programme.id === programme.id);
    if (first === index) return [];
    const at = ["id"];
    const place = { file, at, ...positions.at(at) };
    return [{ code: "fit/programme-twice", ...place, found: `${programme.id}, as in ${programmes[first]!.file}` }];
  });
}

/** The programme that the roster names; without a name, or when the coach asks for one person, the only file there is. */
function programmeFor(person: Person, programmes: readonly ProgrammeFile[], asked: boolean): ProgrammeFile | undefined {
  const named = programmes.find(({ programme }) => programme.id === person.programme);
  const only = programmes.length === 1 && (asked || person.programme === undefined);
  return named ?? (only ? programmes[0] : undefined);
}

/** First choices that the catalogue does not know: nobody could be given them, and another form would stand there unasked. */
function unknownIn({ file, programme, positions }: ProgrammeFile, { exercises }: Catalogue): readonly Problem[] {
  const places = programme.phases.flatMap(({ sessions }, phase) =>
    sessions.flatMap(({ work }, session) =>
      work.flatMap((block, index) => {
        const at = ["phases", phase, "sessions", session, "work", index];
        if ("slot" in block) return [{ slot: block, at }];
        const turns = "pair" in block ? "pair" : "round";
        return slotsOf(block).map((slot, turn) => ({ slot, at: [...at, turns, turn] }));
      }),
    ),
  );
  return places.flatMap(({ slot, at }) => {
    if (exercises.has(slot.first)) return [];
    const path = [...at, "first"];
    const maybe = nearNames(slot.first, [...exercises.keys()]).join(", ");
    const found = { file, at: path, ...positions.at(path), found: slot.first };
    return [{ code: "plan/unknown-exercise", ...found, ...(maybe === "" ? {} : { maybe }) }];
  });
}

/** Reads everything and finds the programmes of the people asked for. */
export async function readTraining(
  paths: readonly string[],
  options: PeopleOptions,
  today: string,
): Promise<Got<Training>> {
  const programmes = await readProgrammes(paths);
  const catalogue = await readCatalogue(options.exercises);
  const roster = await readPeople(options.people, options.places, catalogue.ok ? catalogue.value : undefined);
  const on = startDay(options.from, today);
  const problems = [programmes, roster, on, catalogue].flatMap((read) => (read.ok ? [] : read.problems));
  if (programmes.ok) problems.push(...twice(programmes.value));
  if (programmes.ok && catalogue.ok)
    problems.push(...programmes.value.flatMap((file) => unknownIn(file, catalogue.value)));
  if (!programmes.ok || !roster.ok || !on.ok || !catalogue.ok || problems.length > 0) return { ok: false, problems };
  const tested = await withTests(roster.value.people, options.tests ?? [], on.value, catalogue.value);
  if (!tested.ok) return tested;
  const people = tested.value;
  const asked = options.person === undefined ? people : people.filter(({ id }) => id === options.person);
  if (asked.length === 0) {
    const ids = people.map(({ id }) => id);
    const maybe = nearNames(options.person ?? "", ids)[0];
    return {
      ok: false,
      problems: [
        options.person === undefined
          ? problem("person/none", options.people, {})
          : problem("person/unknown", options.people, {
              found: options.person,
              allowed: ids.slice(0, 12).join(", "),
              ...(maybe === undefined ? {} : { maybe }),
            }),
      ],
    };
  }
  const training: Omit<Planned, "plan">[] = [];
  const without: Person[] = [];
  for (const person of asked) {
    const programme = programmeFor(person, programmes.value, options.person !== undefined);
    if (programme === undefined) without.push(person);
    else training.push({ person, programme, catalogue: catalogue.value });
  }
  return {
    ok: true,
    value: {
      roster: { ...roster.value, people },
      programmes: programmes.value,
      on: on.value,
      catalogue: catalogue.value,
      training,
      without,
    },
  };
}

/** Reads everything and fits the people asked for. `onDone` is told how far it is. */
export async function readPlans(
  paths: readonly string[],
  options: PeopleOptions,
  today: string,
  onDone: (done: number, all: number) => void = () => undefined,
): Promise<Got<Plans>> {
  const read = await readTraining(paths, options, today);
  if (!read.ok) return read;
  const { training, ...rest } = read.value;
  const plans = await fitPeople(read.value, options.workers ?? 1, onDone);
  return { ok: true, value: { ...rest, plans } };
}

/** People of whose plan nothing is left, and programmes that nobody has: said as problems, beside what could be done. */
export function unserved({ plans, programmes, roster }: Plans): readonly Problem[] {
  const isEmpty = ({ plan }: Planned) =>
    plan.phases.every((phase) => phase.weeks.every((week) => week.sessions.every(({ blocks }) => blocks.length === 0)));
  const has = (file: ProgrammeFile) =>
    plans.some(({ programme }) => programme === file) ||
    (plans.length > 0 && roster.people.some((person) => person.programme === file.programme.id));
  const nobody = programmes.filter((file) => !has(file));
  return [
    ...plans.filter(isEmpty).map(({ person }) => ({
      code: "fit/nobody-served",
      at: [],
      ...roster.at(person),
      found: `${person.name}: 0 slots filled`,
    })),
    ...nobody.map(({ file, programme, positions }) => ({
      code: "fit/programme-for-nobody",
      file,
      at: ["id"],
      ...positions.at(["id"]),
      found: programme.id,
      allowed: [...new Set(roster.people.flatMap((person) => person.programme ?? []))].join(", "),
    })),
  ];
}

/** @returns the day as the outside writes it */
export function dayText(day: Day): string {
  return printDay(day);
}

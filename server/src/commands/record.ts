import { foldRecord } from "@stave/core/measures";
import type { Problem } from "@stave/core/model";
import { type DateOrder, type RecordPerson, type RecordsRead, readRecords } from "@stave/core/record";
import { type PlannedPerson, sessionDays } from "@stave/core/revise";
import { en, type Names, namesFrom, sayReason } from "@stave/core/text";
import { toInstant } from "../documents/calendar/index.ts";
import { LOCAL_PRACTICE } from "../local-practice.ts";
import { sha256 } from "../made-by.ts";
import { Changes, Practice } from "../practice/index.ts";
import { type Answer, failed } from "./answer.ts";
import { openRecords } from "./data.ts";
import type { Machine } from "./machine.ts";
import { readInput } from "./read-input.ts";

export interface RecordCommandOptions {
  readonly data: string;
  readonly person?: string;
  readonly unit?: "kg" | "lb";
  readonly per?: "each" | "together";
  readonly dates?: DateOrder;
  readonly correct?: true;
  readonly undo?: true;
  readonly take?: true;
  readonly leaveAsked?: true;
}

/** Events of one batch, as the store takes them. */
const BATCH = 100;

/** Reads a table of what people did; shows what was read as what, and takes it into the records when told to. */
export async function record(file: string, options: RecordCommandOptions, machine: Machine): Promise<Answer> {
  const command = "record";
  const input = await readInput(file);
  if (!input.ok) return failed(command, input.problems);
  const data = await openRecords(options.data, machine);
  if ("problem" in data) return failed(command, [data.problem]);
  try {
    const practice = new Practice(data.store, LOCAL_PRACTICE, new Changes());
    const everybody = await practice.everybody(machine.clock());
    const people = everybody.filter(({ person }) => options.person === undefined || person.id === options.person);
    if (people.length === 0) return failed(command, [nobody(options, everybody)]);
    const catalogue = await practice.catalogue();
    const read = readRecords(input.value, {
      people: people.map(recordPerson),
      catalogue,
      file,
      options,
      hash: sha256,
    });
    if (!read.ok) return failed(command, read.problems);
    const asked = read.value.rows.flatMap(({ problems }) => problems);
    const takes =
      (options.take === true || options.undo === true) &&
      (asked.length === 0 || options.leaveAsked === true || options.undo === true);
    if (takes)
      for (const [person, events] of read.value.events)
        for (let from = 0; from < events.length; from += BATCH)
          await practice.append(person, events.slice(from, from + BATCH));
    return answer(read.value, asked, takes, options, file, namesFrom(catalogue));
  } finally {
    await data.store.close();
  }
}

function nobody({ person, data }: RecordCommandOptions, everybody: readonly PlannedPerson[]): Problem {
  const at = { at: [], line: 0, column: 0 };
  if (person === undefined) return { code: "data/nobody", file: data, ...at };
  return {
    code: "person/unknown",
    file: data,
    ...at,
    found: person,
    allowed: everybody.map((each) => each.person.id).join(", "),
  };
}

/** Days are placed only for those whom the file names. */
function recordPerson(planned: PlannedPerson): RecordPerson {
  const { person, place, plan, events, today, dayOf } = planned;
  let days: RecordPerson["days"] | undefined;
  return {
    person,
    place,
    plan,
    events,
    today,
    dayOf,
    record: foldRecord(events),
    get days() {
      days ??= sessionDays(planned);
      return days;
    },
    toInstant: (day, minutes) => toInstant(day, minutes, place.zone),
  };
}

function answer(
  { rows, repairs, events }: RecordsRead,
  asked: readonly Problem[],
  takes: boolean,
  { data, take, leaveAsked, undo }: RecordCommandOptions,
  file: string,
  names: Names,
): Answer {
  const leaves = take === true && leaveAsked === true;
  const people = [...events].map(([person, each]) => ({ person, events: each.length }));
  const result = {
    taken: takes,
    people,
    repairs,
    rows: rows.map(({ line, person, fresh, known, repairs: shown, problems }) => ({
      line,
      person: person ?? null,
      fresh,
      known,
      asked: problems.length,
      repairs: shown,
    })),
    left: leaves ? asked : [],
  };
  const { plural } = en.print;
  const fresh = people.reduce((sum, each) => sum + each.events, 0);
  const known = rows.filter((row) => row.fresh === 0 && row.known > 0).length;
  const questions = rows.filter(({ problems }) => problems.length > 0).length;
  const words = [
    `${file}: ${plural(rows.length, "line", "lines")}, ${plural(fresh, "new event", "new events")} of ${plural(people.length, "person", "people")}, ${plural(known, "line", "lines")} known already, ${plural(questions, "line", "lines")} with a question.`,
    ...repairs.map((each) => sayReason(each, names)),
    ...rows.flatMap(({ line, repairs: shown }) => shown.map((each) => `line ${line}: ${sayReason(each, names)}`)),
    ...(leaves
      ? rows.filter(({ problems }) => problems.length > 0).map(({ line }) => `line ${line} is left out.`)
      : []),
    takes && undo === true
      ? `${plural(fresh, "event", "events")} taken back in ${data}/. Taken again, the table stands as before.`
      : takes
        ? `Taken into ${data}/.`
        : take === true
          ? "Nothing was taken: answer the questions first, or leave their lines out with --leave-asked."
          : "Nothing was taken yet: --take does.",
  ];
  return { command: "record", result, findings: [], problems: leaves ? [] : asked, words: `${words.join("\n")}\n` };
}

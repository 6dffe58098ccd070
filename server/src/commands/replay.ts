import { printDay } from "@stave/core/day";
import { foldRecord, logOf } from "@stave/core/measures";
import type { Catalogue } from "@stave/core/model";
import { type Replayed, type Rule, readRule, replay, TWO_FOR_TWO } from "@stave/core/replay";
import type { PlannedPerson } from "@stave/core/revise";
import { en, namesFrom } from "@stave/core/text";
import { LOCAL_PRACTICE } from "../local-practice.ts";
import { Changes, Practice } from "../practice/index.ts";
import { type Answer, failed, type Io } from "./answer.ts";
import { openRecords } from "./data.ts";
import { openDemo } from "./demo-data.ts";
import type { Machine } from "./machine.ts";
import { readInput } from "./read-input.ts";

export interface ReplayOptions {
  readonly data: string;
  readonly person?: string;
  /** The made-up room with its ten weeks of records, in this folder, instead of the data. */
  readonly demo?: string;
}

/** Runs a rule over the records of a data folder. */
export async function replayRule(
  file: string | undefined,
  options: ReplayOptions,
  io: Pick<Io, "err">,
  machine: Machine,
): Promise<Answer> {
  const command = "replay";
  const text = file === undefined ? undefined : await readInput(file);
  if (text?.ok === false) return failed(command, text.problems);
  const read = text === undefined ? undefined : readRule(text.value, file!);
  if (read?.ok === false) return failed(command, read.problems);
  const rule = read?.value.value ?? TWO_FOR_TWO;
  const data =
    options.demo === undefined ? await openRecords(options.data, machine) : await openDemo(options.demo, io, machine);
  if ("problem" in data) return failed(command, [data.problem]);
  try {
    const practice = new Practice(data.store, LOCAL_PRACTICE, new Changes());
    const everybody = await practice.everybody(machine.clock());
    const people = everybody.filter(({ person }) => options.person === undefined || person.id === options.person);
    if (people.length === 0) return failed(command, [nobody(options, everybody)]);
    return answer(rule, people, machine.clock(), await practice.catalogue());
  } finally {
    await data.store.close();
  }
}

function answer(rule: Rule, people: readonly PlannedPerson[], now: number, catalogue: Catalogue): Answer {
  const records = people.map(({ person, plan, events, revisionOf }) => {
    const record = foldRecord(events);
    return { person: person.id, log: logOf(plan, record, revisionOf), hurts: record.hurts, now };
  });
  const found: Replayed = replay(rule, records, catalogue);
  const dayOf = new Map(people.map((each) => [each.person.id, each.dayOf]));
  const on = (occasion: Replayed["occasions"][number]) => printDay(dayOf.get(occasion.person)!(occasion.at));
  const occasions = found.occasions.map((one) => {
    const { at: _, ...rest } = one;
    return { ...rest, on: on(one) };
  });
  return {
    command: "replay",
    result: { rule, ...found, occasions },
    findings: [],
    problems: [],
    words: `${en.replay(rule, found, namesFrom(catalogue), (one) => en.print.date(on(one)))}\n`,
  };
}

function nobody({ person, data }: ReplayOptions, everybody: readonly PlannedPerson[]) {
  const at = { at: [], line: 0, column: 0 };
  if (person === undefined) return { code: "data/nobody", file: data, ...at };
  const allowed = everybody.map((each) => each.person.id).join(", ");
  return { code: "person/unknown", file: data, ...at, found: person, allowed };
}

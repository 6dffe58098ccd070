import type { Problem } from "@stave/core/model";
import { type LightNext, type NextDoses, nextDoses, type PlannedPerson, type SlotNext } from "@stave/core/revise";
import { en, type Names, namesFrom, sayReason } from "@stave/core/text";
import { LOCAL_PRACTICE } from "../local-practice.ts";
import { Changes, Practice } from "../practice/index.ts";
import { type Answer, failed } from "./answer.ts";
import { openRecords } from "./data.ts";
import type { Machine } from "./machine.ts";

export interface NextOptions {
  readonly data: string;
  readonly person?: string;
}

/** The next dose of every slot, from the records of a data folder: what, with what it rests, how sure, what was refused. */
export async function next(options: NextOptions, machine: Machine): Promise<Answer> {
  const command = "next";
  const data = await openRecords(options.data, machine);
  if ("problem" in data) return failed(command, [data.problem]);
  try {
    const practice = new Practice(data.store, LOCAL_PRACTICE, new Changes());
    const everybody = await practice.everybody(machine.clock());
    const people = everybody.filter(({ person }) => options.person === undefined || person.id === options.person);
    if (people.length === 0) return failed(command, [nobody(options, everybody)]);
    const all = people.map((planned) => ({ planned, doses: nextDoses(planned) }));
    const names = namesFrom(await practice.catalogue());
    const words = all.map(({ planned, doses }) => personWords(planned, doses, names)).join("\n\n");
    const result = { people: all.map(({ planned, doses }) => ({ person: planned.person.id, ...doses })) };
    return { command, result, findings: [], problems: [], words: `${words}\n` };
  } finally {
    await data.store.close();
  }
}

function nobody({ person, data }: NextOptions, everybody: readonly PlannedPerson[]): Problem {
  const at = { at: [], line: 0, column: 0 };
  if (person === undefined) return { code: "data/nobody", file: data, ...at };
  const allowed = everybody.map((each) => each.person.id).join(", ");
  return { code: "person/unknown", file: data, ...at, found: person, allowed };
}

function personWords(
  { person }: PlannedPerson,
  { day, slots, light, notes, session }: NextDoses,
  names: Names,
): string {
  const head = `${person.name} (${person.id}), ${en.print.date(day)}`;
  const tells = session?.tells[0];
  const most =
    session === undefined || tells === undefined
      ? []
      : [`  ${en.print.date(session.day)}, ${session.title}: ${sayReason(tells.because, names)}`];
  const calls = notes.map((note) => `  - ${sayReason(note, names)}`);
  const said = slots.flatMap((slot) => slotWords(slot, names));
  return [head, ...calls, ...said, ...lightWords(light, names), ...most].join("\n");
}

function slotWords(said: SlotNext, names: Names): readonly string[] {
  const carried = said.carried === undefined ? [] : [`      ${sayReason(said.carried, names)}`];
  return [...saidWords(`${names.exercise(said.exercise)}: ${en.next[said.kind]}`, said, names), ...carried];
}

function lightWords(said: LightNext, names: Names): readonly string[] {
  return saidWords(said.kind === "unknown" ? en.next.lightUnknown : en.next.lightNone, said, names);
}

/** @param none what is said where nothing is proposed */
function saidWords(
  none: string,
  { title, evidence, refused, others }: Pick<SlotNext, "title" | "evidence" | "refused" | "others">,
  names: Names,
): readonly string[] {
  return [
    `  ${title === undefined ? none : sayReason(title, names)}`,
    ...evidence.map((each) => `      ${sayReason(each, names)}`),
    ...refused
      .filter((each) => !evidence.includes(each))
      .map((each) => `      ${en.next.refused} ${sayReason(each, names)}`),
    ...others.map((each) => `      ${en.next.other} ${sayReason(each.title, names)}`),
  ];
}

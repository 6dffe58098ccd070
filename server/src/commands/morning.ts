import type { Morning, MorningItem, MorningPerson } from "@stave/core/api";
import { day } from "@stave/core/day";
import { en, type Names, namesFrom, sayReason } from "@stave/core/text";
import { LOCAL_PRACTICE } from "../local-practice.ts";
import { Changes, Practice } from "../practice/index.ts";
import { type Answer, failed, type Io } from "./answer.ts";
import { openRecords } from "./data.ts";
import { openDemo } from "./demo-data.ts";
import { type Machine, todayAt } from "./machine.ts";

export interface MorningOptions {
  readonly data: string;
  /** The made-up room with its ten weeks of records, in this folder, instead of the data. */
  readonly demo?: string;
}

/** Who needs a word today, in the order of their hours, stops first. */
export async function morning(options: MorningOptions, io: Io, machine: Machine): Promise<Answer> {
  const command = "morning";
  const today = todayAt(machine.clock());
  const data =
    options.demo === undefined ? await openRecords(options.data, machine) : await openDemo(options.demo, io, machine);
  if ("problem" in data) return failed(command, [data.problem]);
  const { store } = data;
  try {
    const practice = new Practice(store, LOCAL_PRACTICE, new Changes());
    const list = await practice.morning(day(today), machine.clock());
    return {
      command,
      result: resultOf(list),
      findings: [],
      problems: [],
      words: wordsOf(list, namesFrom(await practice.catalogue())),
    };
  } finally {
    await store.close();
  }
}

function resultOf({ day: on, people, decided }: Morning) {
  return {
    day: on,
    people: people.map(({ person, today, items, notes, figures }) => ({
      person: person.id,
      name: person.name,
      ...(today === undefined ? {} : { today }),
      items: items.map(({ proposal, slot, exercise, title, stop, others }) => ({
        proposal: proposal.proposal,
        slot,
        exercise: exercise.id,
        title,
        stop,
        evidence: proposal.evidence,
        others: others.map((other) => other.title),
      })),
      notes,
      figures,
    })),
    decided: decided.map(({ id, person, kind, title }) => ({ id, person: person.id, kind, title })),
  };
}

function wordsOf({ day: on, people }: Morning, names: Names): string {
  const { plural, date } = en.print;
  const count = people.reduce((sum, { items }) => sum + items.length, 0);
  const waiting = people.filter(({ items }) => items.length > 0).length;
  const head = `${date(on)}: ${plural(count, "decision", "decisions")} for ${plural(waiting, "person", "people")}.`;
  return `${[head, ...people.map((one) => blockOf(one, names))].join("\n\n")}\n`;
}

function blockOf({ person, today, items, notes, figures }: MorningPerson, names: Names): string {
  const when = today === undefined ? "not today" : `${clock(today.from)}, ${today.title}`;
  return [
    `${person.name}: ${when}`,
    ...items.flatMap((item) => itemLines(item, names)),
    ...notes.map((note) => `  - ${sayReason(note, names)}`),
    ...figures.map((figure) => `      ${sayReason(figure, names)}`),
  ].join("\n");
}

function itemLines({ title, stop, proposal, others }: MorningItem, names: Names): readonly string[] {
  return [
    `  ${stop ? "Stop" : "?"} ${sayReason(title, names)}`,
    ...proposal.evidence.map((each) => `      ${sayReason(each, names)}`),
    ...others.map((other) => `      or: ${sayReason(other.title, names)}`),
  ];
}

/** @example clock(465) //=> "07:45" */
function clock(minutes: number): string {
  return `${String(Math.floor(minutes / 60)).padStart(2, "0")}:${String(minutes % 60).padStart(2, "0")}`;
}

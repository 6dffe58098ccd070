import { foldRecord } from "@stave/core/measures";
import { canonicalJson } from "@stave/core/model";
import { wallTime } from "../documents/calendar/index.ts";
import { logTable } from "../documents/table/index.ts";
import { LOCAL_PRACTICE } from "../local-practice.ts";
import { Changes, Practice } from "../practice/index.ts";
import { type Answer, failed } from "./answer.ts";
import { openRecords } from "./data.ts";
import type { Machine } from "./machine.ts";
import { writeFiles } from "./write-files.ts";

export interface ExportOptions {
  readonly data: string;
  readonly out: string;
}

/** Everything that is kept of one person, to read and for programs: facts, plan, every event, and the record as a table. */
export async function exportPerson(person: string, options: ExportOptions, machine: Machine): Promise<Answer> {
  const command = "export";
  const data = await openRecords(options.data, machine);
  if ("problem" in data) return failed(command, [data.problem]);
  try {
    const practice = new Practice(data.store, LOCAL_PRACTICE, new Changes());
    const planned = await practice.planned(person, machine.clock());
    if (planned === undefined) {
      const found = { file: options.data, at: [], line: 0, column: 0, found: person };
      const allowed = (await practice.people(machine.clock())).people.map(({ id }) => id).join(", ");
      return failed(command, [{ code: "person/unknown", ...found, allowed }]);
    }
    const { person: facts, place, programme, plan, events } = planned;
    const wall = (at: number) => {
      const [day = "", time = ""] = wallTime(at, place.zone).split("T");
      return { day, time };
    };
    const all = { stave: 1, facts, place, programme, plan, events };
    const files = [
      { path: `${person}/all.json`, content: `${canonicalJson(JSON.parse(JSON.stringify(all)))}\n` },
      { path: `${person}/log.csv`, content: logTable({ record: foldRecord(events), wall }) },
    ];
    const saved = await writeFiles(options.out, files);
    if ("problem" in saved) return failed(command, [saved.problem]);
    const words = [
      `${facts.name}: everything that is kept here, ${events.length} events.`,
      ...saved.written.map(({ path }) => `wrote ${path}`),
      "Screening answers, and papers outside this folder, are the coach's own files and not in it. Give it to this person alone.",
    ];
    const result = { person, events: events.length, files: saved.written };
    return { command, result, findings: [], problems: [], words: `${words.join("\n")}\n` };
  } finally {
    await data.store.close();
  }
}

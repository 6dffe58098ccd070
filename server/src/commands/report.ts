import { type ReportKind, reportFor } from "@stave/core/report";
import { namesFrom, sayReason } from "@stave/core/text";
import { Press } from "../documents/sheet/index.ts";
import { LOCAL_PRACTICE } from "../local-practice.ts";
import { Changes, Practice } from "../practice/index.ts";
import { type Answer, failed } from "./answer.ts";
import { openRecords } from "./data.ts";
import type { Machine } from "./machine.ts";
import { paperOf } from "./sheet.ts";
import { writeFiles } from "./write-files.ts";

export interface ReportOptions {
  readonly data: string;
  readonly for: ReportKind;
  readonly out?: string;
  readonly paper: string;
}

/** A report on one person for one reader, as data, and as PDF where a folder is named. */
export async function report(person: string, options: ReportOptions, machine: Machine): Promise<Answer> {
  const command = "report";
  const paper = paperOf(options.paper);
  const nowhere = { at: [], line: 0, column: 0 };
  if (paper === undefined)
    return failed(command, [
      { code: "sheet/paper", file: "--paper", ...nowhere, found: options.paper, allowed: "a4, letter" },
    ]);
  const data = await openRecords(options.data, machine);
  if ("problem" in data) return failed(command, [data.problem]);
  const press = new Press();
  try {
    const practice = new Practice(data.store, LOCAL_PRACTICE, new Changes());
    const planned = await practice.planned(person, machine.clock());
    if (planned === undefined) {
      const all = (await practice.people(machine.clock())).people.map(({ id }) => id).join(", ");
      return failed(command, [{ code: "person/unknown", file: options.data, ...nowhere, found: person, allowed: all }]);
    }
    const answer = reportFor({ person: planned, kind: options.for, paper, coach: await practice.coachOf(person) });
    if (!answer.ok) {
      const result = { report: null, withheld: answer.reason, files: [] };
      const words = `no report for ${planned.person.name}: ${sayReason(answer.reason, namesFrom(planned.catalogue))}\n`;
      return { command, result, findings: [], problems: [], words };
    }
    const content = options.out === undefined ? undefined : await press.print("report.typ", answer.report);
    const path = `${person}/report-${options.for}.pdf`;
    const written = content === undefined ? { written: [] } : await writeFiles(options.out!, [{ path, content }]);
    if ("problem" in written) return failed(command, [written.problem]);
    const result = { report: answer.report, withheld: null, files: written.written };
    const told = answer.report.parts.flatMap(({ heading, lines, strips, table }) => [
      `\n${heading}`,
      ...lines,
      ...strips.map((strip) => `${strip.name}. ${strip.words}`),
      ...(table === null ? [] : [table.columns, ...table.rows].map((row) => row.join(" | "))),
    ]);
    const files = written.written.map((file) => `wrote ${file.path}`);
    const head = [answer.report.title, answer.report.about.join(" · ")];
    return { command, result, findings: [], problems: [], words: `${[...head, ...told, "", ...files].join("\n")}\n` };
  } finally {
    press.close();
    await data.store.close();
  }
}

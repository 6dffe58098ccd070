import { type Reason, writtenAlike } from "@stave/core/model";
import { sheetFor } from "@stave/core/report";
import type { Dated } from "@stave/core/revise";
import { namesFrom, sayReason } from "@stave/core/text";
import { Press } from "../documents/sheet/index.ts";
import { type Answer, failed, type Io } from "./answer.ts";
import { datesOf } from "./days.ts";
import { type PeopleOptions, type Planned, type Plans, readPlans, unserved } from "./plans.ts";
import { placeOf } from "./world.ts";
import { type OutFile, writeFiles } from "./write-files.ts";

export interface SheetOptions extends PeopleOptions {
  readonly out: string;
  readonly paper: string;
}

export interface Sheets {
  readonly files: readonly OutFile[];
  /** People without a sheet, with the reason. */
  readonly withheld: readonly { readonly person: string; readonly name: string; readonly reason: Reason }[];
}

export function paperOf(name: string): "a4" | "us-letter" | undefined {
  return { a4: "a4", letter: "us-letter" }[name.toLowerCase()] as "a4" | "us-letter" | undefined;
}

/** Prints the sheets of everybody who may have one. `dates` tells whose session stands on which day. */
export async function printSheets(
  plans: Plans,
  planned: readonly Planned[],
  paper: "a4" | "us-letter",
  dates: (planned: Planned) => Dated,
  onDone: (done: number) => void = () => undefined,
): Promise<Sheets> {
  const press = new Press();
  const alike = writtenAlike(plans.roster.people);
  const files: OutFile[] = [];
  const withheld: { person: string; name: string; reason: Reason }[] = [];
  try {
    for (const [index, each] of planned.entries()) {
      const { person, programme, plan } = each;
      const answer = sheetFor({
        plan,
        programme: programme.programme,
        person,
        place: placeOf(person, plans.roster),
        catalogue: plans.catalogue,
        paper,
        on: plans.on,
        dates: dates(each),
        alike,
      });
      if (answer.ok)
        files.push({ path: `${person.id}/sheet.pdf`, content: await press.print("sheet.typ", answer.sheet) });
      else withheld.push({ person: person.id, name: person.name, reason: answer.reason });
      onDone(index + 1);
    }
  } finally {
    press.close();
  }
  return { files, withheld };
}

/** Prints a sheet for each person, to be filled in by pencil. */
export async function sheet(paths: readonly string[], options: SheetOptions, io: Io): Promise<Answer> {
  const command = "sheet";
  const paper = paperOf(options.paper);
  if (paper === undefined)
    return failed(command, [
      { code: "sheet/paper", file: "--paper", at: [], line: 0, column: 0, found: options.paper, allowed: "a4, letter" },
    ]);
  const read = await readPlans(paths, options, io.today);
  if (!read.ok) return failed(command, read.problems);
  const { files, withheld } = await printSheets(read.value, read.value.plans, paper, (planned) =>
    datesOf(planned, read.value, planned.plan.phases[0]!.weeks.length),
  );
  const written = await writeFiles(options.out, files);
  if ("problem" in written) return failed(command, [written.problem]);
  const names = namesFrom(read.value.catalogue);
  const words = [
    ...written.written.map(({ path }) => `wrote ${path}`),
    ...withheld.map(({ name, reason }) => `no sheet for ${name}: ${sayReason(reason, names)}`),
  ];
  return {
    command,
    result: { files: written.written, withheld },
    findings: [],
    problems: unserved(read.value),
    words: `${words.join("\n")}\n`,
  };
}

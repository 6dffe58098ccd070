import { checkProgramme } from "@stave/core/checks";
import { printDay } from "@stave/core/day";
import { type Catalogue, editProgramme, readBrought } from "@stave/core/model";
import { en, sayFinding, sayRemedy, saySources } from "@stave/core/text";
import { type Answer, failed, type PlacedFinding } from "./answer.ts";
import { readCatalogue } from "./catalogue.ts";
import { type About, type AboutAsked, readAbout } from "./check-about.ts";
import type { Machine } from "./machine.ts";
import { type ProgrammeFile, readProgrammes } from "./world.ts";
import { writeFiles } from "./write-files.ts";

export interface CheckOptions extends AboutAsked {
  /** Number of the remedy to apply, as printed, counted from 1. */
  readonly apply?: number;
  /** A file of the coach's own exercises. */
  readonly exercises?: string;
}

function placed(
  file: ProgrammeFile,
  about: About,
  catalogue: Catalogue,
): {
  readonly findings: readonly PlacedFinding[];
  readonly silenced: readonly { finding: PlacedFinding; reason: string }[];
} {
  const place = (finding: Omit<PlacedFinding, "file" | "line" | "column">): PlacedFinding => ({
    ...finding,
    file: file.file,
    ...file.positions.at(finding.at),
  });
  const { findings, silenced } = checkProgramme({
    programme: file.programme,
    catalogue,
    ...about,
    ...(file.unsaid === undefined || file.unsaid.length === 0 ? {} : { unsaid: file.unsaid }),
  });
  return {
    findings: findings.map(place),
    silenced: silenced.map(({ finding, reason }) => ({ finding: place(finding), reason })),
  };
}

const MARK = { stop: "Stop", warn: "Warning", note: "Note" } as const;

/** Findings in words, remedies numbered through so that one can be applied by its number. */
function words(
  files: readonly ProgrammeFile[],
  checked: readonly ReturnType<typeof placed>[],
  { place, person }: About,
): string {
  let number = 0;
  const about = `${person === undefined ? "" : ` for ${person.name}`}${place === undefined ? "" : ` at ${place.name}`}`;
  const blocks = files.map((file, index) => {
    const { findings, silenced } = checked[index]!;
    const lines = findings.flatMap((finding) => [
      `${MARK[finding.severity]}, line ${finding.line}: ${sayFinding(finding)}`,
      `    ${saySources(finding.check)} [${finding.check}]`,
      ...finding.remedies.map((remedy) => `    ${++number}. ${sayRemedy(remedy)}`),
    ]);
    const quiet = silenced.map(({ finding, reason }) => `${en.frames.silenced(reason)} (${sayFinding(finding)})`);
    const head = `${file.programme.title} (${file.file})${about}: ${en.print.plural(findings.length, "finding", "findings")}${silenced.length > 0 ? `, ${silenced.length} silenced` : ""}`;
    return [head, ...lines, ...quiet].join("\n");
  });
  return `${blocks.join("\n\n")}\n${number > 0 ? "\nstave check FILE --apply NUMBER carries a remedy out.\n" : ""}`;
}

/** Checks programme files, for a place or a person where one is named; with `apply`, carries one numbered remedy out in its file and checks again. */
export async function check(
  paths: readonly string[],
  options: CheckOptions,
  today: string,
  machine: Machine,
): Promise<Answer> {
  const command = "check";
  const read = await readProgrammes(paths, readBrought);
  if (!read.ok) return failed(command, read.problems);
  const about = await readAbout(options, today, machine);
  if (!about.ok) return failed(command, about.problems);
  const catalogue = await readCatalogue(options.exercises);
  if (!catalogue.ok) return failed(command, catalogue.problems);
  const checked = read.value.map((file) => placed(file, about.value, catalogue.value));
  if (options.apply !== undefined) {
    const remedies = checked.flatMap(({ findings }, index) =>
      findings.flatMap((finding) => finding.remedies.map((remedy) => ({ remedy, file: read.value[index]! }))),
    );
    const chosen = remedies[options.apply - 1];
    if (chosen === undefined) {
      const problems = [
        {
          code: "check/no-such-remedy",
          file: paths.join(", "),
          at: [],
          line: 0,
          column: 0,
          found: String(options.apply),
          allowed: `1–${remedies.length}`,
        },
      ];
      return failed(command, problems);
    }
    const edited = editProgramme(chosen.file.text, chosen.remedy.edits);
    const written = edited.ok
      ? await writeFiles(folderOf(chosen.file.file), [{ path: nameOf(chosen.file.file), content: edited.value }])
      : { problem: edited.problems[0]! };
    if ("problem" in written) return failed(command, [{ ...written.problem, file: chosen.file.file }]);
    const { apply: _, ...same } = options;
    return await check(paths, same, today, machine);
  }
  const { place, person, on } = about.value;
  const result = read.value.map((file, index) => ({
    file: file.file,
    programme: file.programme.id,
    version: file.programme.version,
    hash: file.hash,
    ...(place === undefined ? {} : { place: place.id }),
    ...(person === undefined ? {} : { person: person.id }),
    ...(on === undefined ? {} : { from: printDay(on) }),
    silenced: checked[index]!.silenced,
  }));
  return {
    command,
    result,
    findings: checked.flatMap(({ findings }) => findings),
    problems: [],
    words: words(read.value, checked, about.value),
  };
}

function folderOf(path: string): string {
  const at = path.lastIndexOf("/");
  return at < 0 ? "." : path.slice(0, at) || "/";
}

function nameOf(path: string): string {
  return path.slice(path.lastIndexOf("/") + 1);
}

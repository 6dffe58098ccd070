import {
  type Judged,
  readResults,
  returnList,
  type Series,
  type StartingRung,
  seriesOf,
  startingRungs,
} from "@stave/core/assess";
import { printDay } from "@stave/core/day";
import { CATALOGUE } from "@stave/core/exercises";
import type { Reason } from "@stave/core/model";
import { en, namesFrom, sayReason } from "@stave/core/text";
import { type Answer, failed } from "./answer.ts";
import { readInput } from "./read-input.ts";

const NAMES = namesFrom(CATALOGUE);

function signed(value: number): string {
  return value > 0 ? `+${value}` : String(value);
}

function resultWords({ test }: Series, { result, score, gap, notes, change }: Judged): readonly string[] {
  const done =
    "value" in score ? `${score.value} ${test.unit}` : `left ${score.left}, right ${score.right} ${test.unit}`;
  const behind =
    gap === undefined || gap.weaker === "none" ? "" : `; ${gap.weaker} weaker by ${gap.gapPercent} %, trained first`;
  const since = change === undefined ? "" : ` since ${en.print.date(printDay(change.since))}`;
  const by =
    change === undefined
      ? ""
      : `; ${"value" in change ? signed(change.value) : `left ${signed(change.left)}, right ${signed(change.right)}`}${since}`;
  const head = `  ${en.print.date(printDay(result.on))}: ${done}${behind}${by}`;
  return [head, ...notes.map((note) => `    ${sayReason(note, NAMES)}`)];
}

function seriesWords(series: Series): string {
  const { test, results } = series;
  return [test.name, ...results.flatMap((judged) => resultWords(series, judged))].join("\n");
}

function startWords(rungs: readonly StartingRung[], open: readonly Reason[]): readonly string[] {
  if (rungs.length + open.length === 0) return [];
  const line = rungs.map(({ ladder, exercise }) => `${ladder}: ${exercise}`).join(", ");
  return [
    "Where to start",
    ...rungs.flatMap(({ because }) =>
      because.map((each, at) => `${at === 0 ? "  " : "    "}${sayReason(each, NAMES)}`),
    ),
    ...open.map((each) => `  ${sayReason(each, NAMES)}`),
    ...(line === "" ? [] : [`  As the roster has it: rungs: { ${line} }`]),
  ];
}

/** What a person's tests say: scores by protocol, norms of their age, the gap of sides, changes like with like. */
export async function assess(file: string): Promise<Answer> {
  const command = "assess";
  const input = await readInput(file);
  const read = input.ok ? readResults(input.value, file) : input;
  if (!read.ok) return failed(command, read.problems);
  const { person } = read.value.value;
  const all = seriesOf(read.value.value);
  const tests = all.map(({ test, results }) => ({
    test: test.id,
    unit: test.unit,
    results: results.map(({ result, change, ...judged }) => ({
      on: printDay(result.on),
      conditions: result.conditions,
      ...judged,
      ...(change === undefined ? {} : { change: { ...change, since: printDay(change.since) } }),
    })),
  }));
  const back = returnList(read.value.value);
  const { rungs, open } = startingRungs(read.value.value, CATALOGUE);
  const parts = [
    person,
    ...all.map(seriesWords),
    ...(back === undefined ? [] : [en.assess.returned(back)]),
    ...[startWords(rungs, open).join("\n")].filter((each) => each !== ""),
  ];
  const words = `${parts.join("\n\n")}\n`;
  const starts = rungs.map(({ on, ...rung }) => ({ ...rung, on: printDay(on) }));
  const told =
    back === undefined
      ? {}
      : { return: { ...back, lines: back.lines.map((line) => ({ ...line, on: printDay(line.on) })) } };
  return { command, result: { person, tests, ...told, rungs: starts, open }, findings: [], problems: [], words };
}

import { readFileSync } from "node:fs";
import { CHECKS, runChecks } from "@stave/core/checks";
import { day } from "@stave/core/day";
import { CATALOGUE } from "@stave/core/exercises";
import { readProgramme, readRoster } from "@stave/core/model";
import { parse } from "yaml";
import { medianTime, RUNS } from "./clock.ts";
import type { Measure } from "./measure.ts";

const ROOM = "examples/ropewalk";
const WEEKS = 16;
const ROUNDS = 100;
const FIRST_DAY = day("2027-01-11");

/** Sixteen weeks: the beginners' eight weeks and then once more, under other keys. */
export function sixteenWeeks(): string {
  const text = readFileSync(`${ROOM}/harbour-steps.yaml`, "utf8");
  const at = text.indexOf("phases:\n") + "phases:\n".length;
  const [head, phases] = [text.slice(0, at), text.slice(at)];
  const again = phases.replaceAll(/(key: |slot: |ramp: )(ground|build)/g, "$1second-$2");
  return `${head}${phases}${again}`;
}

/** Every check, those for one person too, of a 16-week programme against a plain YAML parser reading the same text. */
export const checkRules: Measure = {
  name: "check/36-rules",
  async run() {
    const text = sixteenWeeks();
    const read = readProgramme(text, "sixteen-weeks.yaml");
    if (!read.ok) throw new Error(`The sixteen weeks cannot be read: ${JSON.stringify(read.problems)}`);
    const { programme } = read.value;
    const weeks = programme.phases.reduce((sum, phase) => sum + phase.weeks, 0);
    if (weeks !== WEEKS || CHECKS.length < 36) throw new Error(`${weeks} weeks, ${CHECKS.length} checks`);
    const people = readRoster(readFileSync(`${ROOM}/people.yaml`, "utf8"), "people.yaml");
    const person = people.ok ? people.value.value.find(({ id }) => id === "dagny") : undefined;
    if (person === undefined) throw new Error("The roster cannot be read");
    const input = { programme, catalogue: CATALOGUE, person, on: FIRST_DAY };
    // On every keystroke findings are needed, not the remedies, which are tried when somebody asks.
    const rounds = (job: () => unknown) => () => {
      for (let round = 0; round < ROUNDS; round++) job();
    };
    const value = (await medianTime(rounds(() => runChecks(input, [], "none")))) / ROUNDS;
    const baselineValue = (await medianTime(rounds(() => parse(text)))) / ROUNDS;
    return {
      name: "check/36-rules",
      value,
      unit: "ms",
      baseline: "reading the same 16-week YAML",
      baselineValue,
      ratio: value / baselineValue,
      n: RUNS,
      aim: "at most 0.15",
    };
  },
};

import { readFileSync } from "node:fs";
import { checkProgramme } from "@stave/core/checks";
import { CATALOGUE } from "@stave/core/exercises";
import { readProgramme } from "@stave/core/model";
import { parse } from "yaml";
import { medianTime, RUNS } from "./clock.ts";
import type { Measure } from "./measure.ts";

const FILE = "examples/ropewalk/harbour-steps.yaml";
/** One round is short; many make a time that a clock can tell. */
const ROUNDS = 200;

/** All checks of a programme against a plain YAML parser reading the same text. */
export const checkRead: Measure = {
  name: "check/read",
  async run() {
    const text = readFileSync(FILE, "utf8");
    const read = readProgramme(text, FILE);
    if (!read.ok) throw new Error(`${FILE} cannot be read`);
    const { programme } = read.value;
    const rounds = (job: () => unknown) => () => {
      for (let round = 0; round < ROUNDS; round++) job();
    };
    const value = (await medianTime(rounds(() => checkProgramme({ programme, catalogue: CATALOGUE })))) / ROUNDS;
    const baselineValue = (await medianTime(rounds(() => parse(text)))) / ROUNDS;
    return {
      name: "check/read",
      value,
      unit: "ms",
      baseline: "reading the same YAML",
      baselineValue,
      ratio: value / baselineValue,
      n: RUNS,
      aim: "at most 0.1",
    };
  },
};

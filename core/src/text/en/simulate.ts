import type {
  CertaintyFigures,
  ChangeFigures,
  Estimate,
  OutcomeFigures,
  WayFigures,
  WorldFigures,
} from "../../simulate/index.ts";
import { plural, printNumber } from "./number.ts";

function span({ low, high }: Estimate, decimals: number): string {
  return `${printNumber(low, decimals)} to ${printNumber(high, decimals)}`;
}

/** @example 0.94 (0.92 to 0.96) */
function figure(estimate: Estimate, decimals = 2, unit = ""): string {
  return `${printNumber(estimate.value, decimals)}${unit} (${span(estimate, decimals)})`;
}

function percent({ value, low, high, n }: Estimate): string {
  return figure({ value: 100 * value, low: 100 * low, high: 100 * high, n }, 1, " %");
}

function certain(what: string, levels: readonly CertaintyFigures[]): readonly string[] {
  const line = ({ from, to, said, happened, cases }: CertaintyFigures) =>
    `    said ${printNumber(from)} to ${printNumber(to)}, ${printNumber(said)} on average: came true ${figure(happened)} of ${printNumber(cases)}`;
  return levels.length === 0 ? [] : [`  How sure it was ${what}:`, ...levels.map(line)];
}

function changed({ asked, falseGains, gainsFound }: ChangeFigures): readonly string[] {
  if (asked === 0) return [];
  return [
    `  Changes over six weeks, asked ${plural(asked, "time", "times")}:`,
    ...(falseGains === undefined ? [] : [`    a gain told of those who rose by less than 1 %: ${percent(falseGains)}`]),
    ...(gainsFound === undefined ? [] : [`    a gain told of those who rose by 5 % or more: ${percent(gainsFound)}`]),
  ];
}

function outcome({ weeks, ours, plain, less }: OutcomeFigures): readonly string[] {
  const line = (what: string, name: Exclude<keyof WayFigures, "steps" | "stepsBack">) =>
    `    ${what}: ${figure(ours[name])}; two-for-two ${figure(plain[name])}; difference ${figure(less[name])}`;
  return [
    `  Per person in ${printNumber(weeks, 1)} weeks trained:`,
    `    steps up: ${figure(ours.steps)}; two-for-two ${figure(plain.steps)}`,
    `    steps back: ${figure(ours.stepsBack)}; two-for-two ${figure(plain.stepsBack)}`,
    line("steps up too soon", "tooSoon"),
    line("weeks after the next load was within reach", "late"),
    line("weeks with a load out of reach", "heavy"),
  ];
}

/** The figures of one world, each with its 95 % interval. */
export function sayWorld({
  world,
  people,
  weeks,
  seed,
  forecast,
  coverage,
  certainty,
  changes,
  outcome: came,
}: WorldFigures): string {
  return [
    `${world}: ${plural(people, "person", "people")}, ${plural(weeks, "week", "weeks")}, seed ${seed}`,
    ...(forecast === undefined
      ? ["  Cannot judge forecasts: nobody has six sessions and one more."]
      : [
          `  The load of the next session, ${plural(forecast.sessions, "forecast", "forecasts")}: ${figure(forecast.error.ours, 2, " %")} off; six-session average ${figure(forecast.error.average, 2, " %")}; ratio ${figure(forecast.ratio, 3)}`,
          `    on average ${figure(forecast.bias.ours, 2, " %")} too high; six-session average ${figure(forecast.bias.average, 2, " %")}`,
        ]),
    ...(coverage === undefined
      ? ["  Cannot judge intervals: nobody has more than ten forecasts."]
      : [
          `  The 80 % interval after ten forecasts, ${plural(coverage.sessions, "forecast", "forecasts")}: holds ${percent(coverage.covers.ours)}, ${printNumber(coverage.width.ours.value, 1)} % wide; average ${percent(coverage.covers.average)}, ${printNumber(coverage.width.average.value, 1)} % wide; interval score over that of the average ${figure(coverage.score, 3)}`,
        ]),
    ...certain("of repetitions in the last set", certainty.sets),
    ...certain("that a step up is within reach", certainty.steps),
    ...changed(changes),
    ...outcome(came),
  ].join("\n");
}

/** Said under every simulation. */
export const simulationLimits =
  "These people are made up, by published figures where there are any. What holds in every world may still fail in the gym: docs/guide/simulation.md.";

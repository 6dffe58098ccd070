import { OURS, simulateWorld, WORLDS, type World, type WorldFigures } from "@stave/core/simulate";
import type { Measure } from "./measure.ts";

const SIZE = { people: 100, weeks: 40, seed: 20_270_111 };
/** Forecast and interval of a world come from the same people. */
const known = new Map<string, WorldFigures>();

function figuresOf(world: World): WorldFigures {
  const figures = known.get(world.id) ?? simulateWorld(world, SIZE, OURS);
  known.set(world.id, figures);
  return figures;
}

function nameOf({ id }: World): string {
  return id.replaceAll(" ", "-");
}

function percent(share: number): string {
  return `${(100 * share).toFixed(1)} %`;
}

/** How far forecasts lie from the truth, in every world, against the average of six sessions. */
export const forecasts: readonly Measure[] = WORLDS.map((world) => ({
  name: `forecast/${nameOf(world)}`,
  async run() {
    const { forecast } = figuresOf(world);
    if (forecast === undefined) throw new Error(`${world.id} has no forecasts`);
    const { error, ratio, sessions } = forecast;
    return {
      name: `forecast/${nameOf(world)}`,
      value: error.ours.value,
      unit: "%",
      baseline: "average of six sessions",
      baselineValue: error.average.value,
      ratio: ratio.value,
      n: sessions,
      aim: world.id === "matched" ? "at most 0.97" : "at most 1.03",
      note: `95 % ${ratio.low.toFixed(3)} to ${ratio.high.toFixed(3)}, ${SIZE.people} people`,
    };
  },
}));

/** Interval score of the 80 % interval after ten forecasts, and what it holds. */
export const coverages: readonly Measure[] = WORLDS.map((world) => ({
  name: `coverage/${nameOf(world)}`,
  async run() {
    const { coverage } = figuresOf(world);
    if (coverage === undefined) throw new Error(`${world.id} has no intervals`);
    const { covers, width, score, scores, sessions } = coverage;
    const { value, low, high } = covers.ours;
    return {
      name: `coverage/${nameOf(world)}`,
      value: scores.ours.value,
      unit: "%",
      baseline: "average of six sessions",
      baselineValue: scores.average.value,
      ratio: score.value,
      n: sessions,
      aim: "at most 0.97, and the interval holds 75 to 86 %",
      note: `holds ${percent(value)} (${percent(low)} to ${percent(high)}), width ${width.ours.value.toFixed(1)} %; the average's holds ${percent(covers.average.value)}`,
    };
  },
}));

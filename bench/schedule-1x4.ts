import { type CalendarTask, closePoints, placeSessions, type TaskWindow } from "@stave/core/calendar";
import { day } from "@stave/core/day";
import loadHighs from "highs";
import { median, RUNS, timeOnce } from "./clock.ts";
import type { Measure } from "./measure.ts";

/** Tasks in one run; each is solved RUNS times by both. */
const TASKS = 20;
/** More than any week of points: a dropped session is a level of its own. */
const DROPPED = 10_000;

/** Seeded numbers from 0 to below 1: a 32-bit linear congruence, high bits first. */
function numbers(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

/** One week with four sessions for somebody who has a few windows. */
export function weekOfFour(seed: number): CalendarTask {
  const next = numbers(seed);
  const whole = (most: number) => Math.floor(next() * most);
  const windows = Array.from({ length: 7 }, (): readonly TaskWindow[] =>
    next() < 0.25 ? [] : [{ from: 360 + 30 * whole(28), to: 1320, cost: whole(5) }],
  );
  const sessions = Array.from({ length: 4 }, (_, index) => ({
    id: `s${index}`,
    week: 0,
    minutes: 45,
    hard: whole(2 ** 6),
  }));
  return { start: day("2027-01-11"), days: 7, sessions, weekDays: 7, windows, carry: 0, maxInRow: 3, gapHours: 48 };
}

function bits(value: number): number {
  return value === 0 ? 0 : (value & 1) + bits(value >>> 1);
}

/** The same week as a mixed-integer model, the natural way: a binary for each session and day, one for each close pair. */
export function asLp(task: CalendarTask): string {
  const days = [...task.windows.keys()].filter((d) => task.windows[d]!.some(({ from, to }) => to - from >= 45));
  const sessions = [...task.sessions.keys()];
  const x = (i: number, d: number) => `x${i}_${d}`;
  const terms: string[] = [];
  const rows: string[] = [];
  const binaries: string[] = [];
  for (const i of sessions) {
    terms.push(`${DROPPED} y${i}`);
    binaries.push(`y${i}`, ...days.map((d) => x(i, d)));
    for (const d of days) terms.push(`${task.windows[d]![0]!.cost} ${x(i, d)}`);
    rows.push(`${[...days.map((d) => x(i, d)), `y${i}`].join(" + ")} = 1`);
  }
  for (const d of days) rows.push(`${sessions.map((i) => x(i, d)).join(" + ")} <= 1`);
  for (let first = 0; first + task.maxInRow < task.days; first++) {
    const stretch = days.filter((d) => d >= first && d <= first + task.maxInRow);
    if (stretch.length > task.maxInRow)
      rows.push(`${stretch.flatMap((d) => sessions.map((i) => x(i, d))).join(" + ")} <= ${task.maxInRow}`);
  }
  for (const i of sessions) {
    for (const j of sessions.slice(i + 1)) {
      for (const d of days) {
        for (const e of days) {
          if (e < d) rows.push(`${x(i, d)} + ${x(j, e)} <= 1`);
          if (e <= d) continue;
          const minutes = (e - d) * 1440 + task.windows[e]![0]!.from - task.windows[d]![0]!.from;
          const points = closePoints(
            bits(task.sessions[i]!.hard & task.sessions[j]!.hard),
            minutes,
            task.gapHours * 60,
          );
          if (points === 0) continue;
          const z = `z${i}_${j}_${d}_${e}`;
          terms.push(`${points} ${z}`);
          rows.push(`${x(i, d)} + ${x(j, e)} - ${z} <= 1`);
        }
      }
    }
  }
  return `Minimize\n obj: ${terms.join(" + ")}\nSubject To\n${rows.map((row, n) => ` c${n}: ${row}`).join("\n")}\nBinary\n ${binaries.join(" ")}\nEnd\n`;
}

/** One week of four sessions: ours against a general solver on the natural model; both must find the same value. */
export const schedule1x4: Measure = {
  name: "schedule/1x4",
  async run() {
    const highs = await loadHighs();
    const [ours, theirs]: [number[], number[]] = [[], []];
    for (let seed = 1; seed <= TASKS; seed++) {
      const task = weekOfFour(seed);
      const model = asLp(task);
      const found = placeSessions(task);
      const solved = highs.solve(model);
      const value = found.dropped.length * DROPPED + found.cost;
      if (solved.Status !== "Optimal" || Math.round(solved.ObjectiveValue) !== value) {
        throw new Error(
          `Task ${seed}: ours is ${value}, the general solver's ${solved.Status} ${solved.ObjectiveValue}`,
        );
      }
      const [mine, other]: [number[], number[]] = [[], []];
      for (let run = 0; run < RUNS; run++) {
        mine.push(await timeOnce(() => placeSessions(task)));
        other.push(await timeOnce(() => highs.solve(asLp(task))));
      }
      ours.push(median(mine));
      theirs.push(median(other));
    }
    const [value, baselineValue] = [median(ours), median(theirs)];
    return {
      name: "schedule/1x4",
      value,
      unit: "ms",
      baseline: "HiGHS on the natural model",
      baselineValue,
      ratio: baselineValue / value,
      n: TASKS,
      aim: "higher is better",
    };
  },
};

import { type FitTask, rowPoints } from "../fit/index.ts";

/** What a general solver is asked for: the levels one after the other, or all wants with a price on each must point. */
export type ModelGoal =
  | { readonly least: "must" }
  | { readonly most: "want"; readonly must: number }
  | { readonly least: "rank"; readonly must: number; readonly want: number }
  | { readonly most: "want"; readonly mustPrice: number };

type Term = readonly [factor: number, name: string];

function sum(terms: readonly Term[]): string {
  const parts = terms
    .filter(([factor]) => factor !== 0)
    .map(([factor, name]) => `${factor < 0 ? "-" : "+"} ${Math.abs(factor)} ${name}`);
  return parts.length === 0 ? "0 nothing" : parts.join(" ");
}

/**
 * A fit task as the text of a mixed-integer model (LP format), built from what the plain scorer counts: the points of
 * every option are those of its lines, the points of a weekly sum are those of `rowPoints`. It knows nothing of how the
 * search works.
 *
 * x names an option of a step of a way of a block, w a way, s a station of a session, u and v what a row lacks or has
 * too much.
 */
export function fitModel(task: FitTask, goal: ModelGoal): string {
  const rows: string[] = [];
  const binaries: string[] = [];
  const levels = { must: [] as Term[], want: [] as Term[], rank: [] as Term[] };
  const amounts = task.rows.map((): Term[] => []);
  const times = task.capacity.map((): Term[] => []);
  const uses = task.capacity.map(() => new Map<string, Term[]>());
  const stationsOf = task.capacity.map(() => new Set<string>());

  for (const [b, block] of task.blocks.entries()) {
    const together = new Map<string, Term[]>();
    if (block.ways.length !== 1) rows.push(`${sum(block.ways.map((_, w) => [1, `w${b}_${w}`]))} = 1`);
    for (const [w, way] of block.ways.entries()) {
      const chosen = `w${b}_${w}`;
      binaries.push(chosen);
      if (block.ways.length === 1) rows.push(`${chosen} = 1`);
      times[block.session]!.push([way.time, chosen]);
      for (const [s, step] of way.steps.entries()) {
        const names = step.map((_, o) => `x${b}_${w}_${s}_${o}`);
        binaries.push(...names);
        rows.push(`${sum(names.map((name) => [1, name]))} - 1 ${chosen} = 0`);
        for (const [o, option] of step.entries()) {
          const name = names[o]!;
          // A name may stand only once in a sum.
          const points = (level: "must" | "want") =>
            option.lines.reduce((total, line) => (line.level === level ? total + line.points : total), 0);
          levels.must.push([-points("must"), name]);
          levels.want.push([points("want"), name]);
          levels.rank.push([option.rank, name]);
          times[block.session]!.push([option.time, name]);
          for (const [row, amount] of option.rows) amounts[row]!.push([amount, name]);
          if (option.exercise !== undefined) addTo(uses[block.session]!, option.exercise, [1, name]);
          for (const station of option.stations) addTo(together, station, [1, name]);
        }
        for (const station of new Set(step.flatMap((option) => option.stations))) {
          const there = names.filter((_, o) => step[o]!.stations.includes(station));
          const key = `s${block.session}_${station.replaceAll(/\W/g, "_")}`;
          stationsOf[block.session]!.add(key);
          if (task.stations !== undefined) rows.push(`${sum(there.map((name) => [1, name]))} - 1 ${key} <= 0`);
        }
      }
    }
    for (const [station, count] of block.atOnce) {
      const terms = together.get(station);
      if (terms !== undefined) rows.push(`${sum(terms)} <= ${count}`);
    }
  }
  for (const [session, capacity] of task.capacity.entries()) {
    if (times[session]!.length > 0) rows.push(`${sum(times[session]!)} <= ${capacity}`);
    for (const terms of uses[session]!.values()) if (terms.length > 1) rows.push(`${sum(terms)} <= 1`);
    const stations = [...stationsOf[session]!];
    if (task.stations !== undefined && stations.length > 0) {
      binaries.push(...stations);
      rows.push(`${sum(stations.map((name) => [1, name]))} <= ${task.stations}`);
    }
  }
  for (const [r, row] of task.rows.entries()) {
    rows.push(`${sum(amounts[r]!)} + 1 u${r} >= ${row.low}`, `${sum(amounts[r]!)} - 1 v${r} <= ${row.high}`);
    const sign = row.level === "must" ? 1 : -1;
    levels[row.level].push(
      [sign * rowPoints(row, row.low - 1), `u${r}`],
      [sign * rowPoints(row, row.high + 1), `v${r}`],
    );
  }
  if ("must" in goal) rows.push(`${sum(levels.must)} <= ${goal.must}`);
  if ("want" in goal) rows.push(`${sum(levels.want)} >= ${goal.want}`);
  const objective =
    "mustPrice" in goal
      ? [...levels.want, ...levels.must.map(([factor, name]): Term => [-goal.mustPrice * factor, name])]
      : levels["least" in goal ? goal.least : goal.most];
  return [
    "least" in goal ? "Minimize" : "Maximize",
    ` obj: ${sum(objective)}`,
    "Subject To",
    ...rows.map((row, index) => ` c${index}: ${row}`),
    "Bounds",
    " nothing = 0",
    "Binary",
    ` ${binaries.join(" ")}`,
    "End\n",
  ].join("\n");
}

function addTo(map: Map<string, Term[]>, key: string, term: Term): void {
  const known = map.get(key);
  if (known === undefined) map.set(key, [term]);
  else known.push(term);
}

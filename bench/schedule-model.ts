import { type CalendarTask, type Levels, type Placement, score } from "@stave/core/calendar";
import { addDays } from "@stave/core/day";

/**
 * A task as a mixed-integer model, the natural way: a binary for each session that has no day, for each start that a
 * session may take, for each pair of starts that lie too close, and for each pair of training days in a row. All costs come from the plain scorer, one placement
 * or one pair at a time; nothing of the search is used.
 */
export interface Model {
  /** In the LP format that general solvers read. */
  readonly text: string;
  /** @returns the placements that a solution stands for */
  placements(columns: Readonly<Record<string, { readonly Primal: number }>>): readonly Placement[];
}

interface Column {
  readonly name: string;
  readonly session: number;
  readonly dayIndex: number;
  readonly placement: Placement;
  readonly value: Levels;
  readonly nextDay: number;
}

function columnsOf(task: CalendarTask): Column[] {
  return task.sessions.flatMap((session, index) =>
    task.windows.flatMap((windows, dayIndex): Column[] => {
      const day = addDays(task.start, dayIndex);
      const begins = session.week * task.weekDays;
      const home = task.weeks?.[session.week] ?? { first: begins, last: begins + task.weekDays - 1 };
      const may = session.days
        ? session.days.includes(day)
        : dayIndex >= home.first && dayIndex <= home.last + task.carry;
      const starts = new Map<string, Placement>();
      for (const { from, to, place } of may ? windows : []) {
        if (to - from < session.minutes || (place !== undefined && session.lackedAt?.includes(place))) continue;
        const at = { session: session.id, day, start: from };
        starts.set(`${from} ${place}`, place === undefined ? at : { ...at, place });
      }
      return [...starts.values()].map((placement, n) => {
        const { value, parts } = score(task, [placement]);
        const name = `x${index}_${dayIndex}_${n}`;
        return { name, session: index, dayIndex, placement, value, nextDay: parts.nextDay };
      });
    }),
  );
}

export function modelOf(task: CalendarTask): Model {
  const columns = columnsOf(task);
  const rows: string[] = [];
  const sum = (list: readonly Column[]) => list.map(({ name }) => name).join(" + ");
  const at = (dayIndex: number) => columns.filter((column) => column.dayIndex === dayIndex);
  const bySession = task.sessions.map((_, index) => columns.filter(({ session }) => session === index));
  for (const [index, own] of bySession.entries()) rows.push(`${sum(own)}${own.length > 0 ? " + " : ""}y${index} = 1`);
  for (let d = 0; d < task.days; d++) if (at(d).length > 1) rows.push(`${sum(at(d))} <= 1`);
  // Days in a row: of any most + 1 days one is free, the days before the task included.
  const before = task.before?.inRow ?? 0;
  for (let first = -Math.min(before, task.maxInRow); first + task.maxInRow < task.days; first++) {
    const stretch = columns.filter(({ dayIndex }) => dayIndex >= first && dayIndex <= first + task.maxInRow);
    const room = task.maxInRow + Math.min(0, first);
    if (stretch.length > 0) rows.push(`${sum(stretch)} <= ${room}`);
  }
  // Order: on no day may the later session have been done while the earlier is still to come.
  for (const [i, earlier] of bySession.entries()) {
    for (const later of bySession.slice(i + 1)) {
      for (const d of new Set(later.map(({ dayIndex }) => dayIndex))) {
        const [done, toCome] = [
          later.filter(({ dayIndex }) => dayIndex <= d),
          earlier.filter(({ dayIndex }) => dayIndex > d),
        ];
        if (toCome.length > 0) rows.push(`${sum(done)} + ${sum(toCome)} <= 1`);
      }
    }
  }
  const pairs: { readonly name: string; readonly later: number; readonly apart: number; readonly value: Levels }[] = [];
  const reach = Math.max(1, Math.ceil(task.gapHours / 24));
  /** Points for two training days in a row, by the second. */
  const nextDay = new Map<number, number>();
  for (const a of columns) {
    for (const b of columns) {
      if (b.session <= a.session || b.dayIndex <= a.dayIndex || b.dayIndex > a.dayIndex + reach) continue;
      const { value: both, parts } = score(task, [a.placement, b.placement]);
      const inRow = parts.nextDay - a.nextDay - b.nextDay;
      if (inRow > 0) nextDay.set(b.dayIndex, inRow);
      const close = both.close - a.value.close - b.value.close;
      const points = both.points - a.value.points - b.value.points - inRow;
      if (close === 0 && points === 0) continue;
      const name = `z${a.name}${b.name}`;
      const apart = b.dayIndex - a.dayIndex;
      pairs.push({ name, later: b.session, apart, value: { fixed: 0, dropped: 0, close, points } });
      rows.push(`${a.name} + ${b.name} - ${name} <= 1`);
    }
  }
  // Each level weighs 1 + the most that all lower ones can add up to: a session stands once, and no day holds two.
  const most = (level: "close" | "points") => {
    const ofPairs = new Map<string, number>();
    for (const { later, apart, value } of pairs) {
      const key = `${later} ${apart}`;
      ofPairs.set(key, Math.max(ofPairs.get(key) ?? 0, value[level]));
    }
    const ofStarts = bySession.map((own) => Math.max(0, ...own.map(({ value }) => value[level])));
    const ofDays = level === "points" ? nextDay.values() : [];
    return [...ofStarts, ...ofPairs.values(), ...ofDays].reduce((all, points) => all + points, 0);
  };
  for (const d of nextDay.keys()) rows.push(`${sum([...at(d - 1), ...at(d)])} - n${d} <= 1`);
  const close = most("points") + 1;
  const dropped = close * (most("close") + 1);
  const fixed = dropped * (task.sessions.length + 1);
  const weigh = ({ value }: { readonly value: Levels }) => value.points + close * value.close;
  const terms = [
    ...task.sessions.map((session, index) => `${session.fixed ? fixed + dropped : dropped} y${index}`),
    ...[...nextDay].map(([d, points]) => `${points} n${d}`),
    ...[...columns, ...pairs].filter((each) => weigh(each) > 0).map((each) => `${weigh(each)} ${each.name}`),
  ];
  const names = [...task.sessions.map((_, index) => `y${index}`), ...columns.map(({ name }) => name)];
  const days = [...nextDay.keys()].map((d) => `n${d}`);
  const binaries = [...names, ...days, ...pairs.map(({ name }) => name)].join("\n ");
  const text = `Minimize\n obj: ${terms.join("\n + ")}\nSubject To\n${rows.map((row, n) => ` c${n}: ${row}`).join("\n")}\nBinary\n ${binaries}\nEnd\n`;
  return {
    text,
    placements: (solution) =>
      columns.filter(({ name }) => (solution[name]?.Primal ?? 0) > 0.5).map(({ placement }) => placement),
  };
}

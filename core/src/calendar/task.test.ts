import { expect, test } from "vitest";
import { day } from "../day.ts";
import { type CalendarTask, checkTask, type TaskSession } from "./task.ts";

const MONDAY = day("2027-03-01");
const OPEN = { from: 1080, to: 1140, cost: 0 };
const a: TaskSession = { id: "A", week: 0, minutes: 45, hard: 3 };
const b: TaskSession = { id: "B", week: 0, minutes: 45, hard: 3 };

function task(said: Partial<CalendarTask> = {}): CalendarTask {
  return {
    start: MONDAY,
    days: 2,
    weekDays: 7,
    sessions: [a, b],
    windows: [[OPEN], []],
    carry: 0,
    maxInRow: 3,
    gapHours: 48,
    ...said,
  };
}
const session = (said: Partial<TaskSession>) => task({ sessions: [{ ...a, ...said }] });
const window = (said: Partial<typeof OPEN>) => task({ windows: [[{ ...OPEN, ...said }], []] });
const before = (said: object, inRow = 0) =>
  task({ before: { inRow, past: [{ daysAgo: 1, start: 1080, hard: 1, ...said }] } });
const many = (count: number) => task({ sessions: Array.from({ length: count }, (_, n) => ({ ...a, id: `${n}` })) });

test("a task as its types say in words is taken, up to every bound", () => {
  for (const fine of [
    task(),
    task({ days: 0, windows: [], sessions: [] }),
    task({ days: 4000, windows: Array.from({ length: 4000 }, () => []) }),
    task({ weekDays: 1 }),
    task({ weekDays: 366 }),
    task({ carry: 366 }),
    task({ maxInRow: 1 }),
    task({ maxInRow: 4000 }),
    task({ gapHours: 0 }),
    task({ gapHours: 96 }),
    task({ gapHours: 36.5 }),
    task({ windows: [Array.from({ length: 24 }, () => OPEN), []] }),
    task({ weeks: [{ first: 0, last: 0 }] }),
    task({
      weeks: [
        { first: 3, last: 8 },
        { first: 9, last: 9 },
      ],
      sessions: [a, { ...b, week: 1 }],
    }),
    window({ from: 0, to: 1 }),
    window({ from: 1439, to: 1440, cost: 1000 }),
    session({ week: 4000 }),
    session({ minutes: 1 }),
    session({ minutes: 1440, hard: 0 }),
    session({ hard: 2 ** 20 - 1, days: [], announced: { day: MONDAY, start: 0 } }),
    session({ announced: { day: MONDAY, start: 1439 } }),
    before({ start: 0, hard: 2 ** 20 - 1 }),
    before({ daysAgo: 4000, start: 1439, hard: 0 }, 4000),
    many(1000),
  ]) {
    expect(() => checkTask(fine)).not.toThrow();
  }
});

const wrong: readonly (readonly [CalendarTask, RegExp])[] = [
  [task({ start: 0.5 as CalendarTask["start"] }), /first day .* 0\.5$/],
  [task({ start: 2e7 as CalendarTask["start"] }), /first day/],
  [task({ days: -1 }), /days must be .* -1$/],
  [task({ days: 4001 }), /days must be .* 4001$/],
  [task({ days: 1 }), /windows must be given for 1 days: .* 2$/],
  [task({ weekDays: 0 }), /week must have .* 0$/],
  [task({ weekDays: 367 }), /week must have .* 367$/],
  [task({ carry: -1 }), /carry/],
  [task({ carry: 367 }), /carry/],
  [task({ maxInRow: 0 }), /in a row/],
  [task({ maxInRow: Number.NaN }), /in a row .* NaN$/],
  [task({ gapHours: -1 }), /gap must be from 0 to 96/],
  [task({ gapHours: 97 }), /gap must be from 0 to 96/],
  [task({ gapHours: Number.NaN }), /gap must be from 0 to 96/],
  [task({ gapHours: 1 / 7 }), /whole number of minutes/],
  [task({ windows: [Array.from({ length: 25 }, () => OPEN), []] }), /at most 24 windows: .* 25$/],
  [task({ weeks: [{ first: -1, last: 3 }] }), /begin from day 0 .* -1$/],
  [task({ weeks: [{ first: 3, last: 2 }] }), /end from day 3 .* 2$/],
  [
    task({
      weeks: [
        { first: 0, last: 6 },
        { first: 6, last: 9 },
      ],
    }),
    /begin from day 7 .* 6$/,
  ],
  [task({ weeks: [{ first: 0, last: 6 }], sessions: [{ ...a, week: 1 }] }), /home week .* from 0 to 0: .* 1$/],
  [window({ from: -1 }), /open from 0 to 1439/],
  [window({ from: 1440, to: 1441 }), /open from 0 to 1439/],
  [window({ to: 1080 }), /close after it opens/],
  [window({ to: 1441 }), /close after it opens, by 1440/],
  [window({ cost: -1 }), /cost of a window/],
  [window({ cost: 1001 }), /cost of a window/],
  [window({ cost: 0.5 }), /cost of a window/],
  [session({ week: -1 }), /home week .* -1$/],
  [session({ week: 4001 }), /home week/],
  [task({ sessions: [{ ...a, week: 1 }, b] }), /home week must be a whole number from 1 .* 0$/],
  [session({ minutes: 0 }), /last from 1 to 1440/],
  [session({ minutes: 1441 }), /last from 1 to 1440/],
  [session({ hard: -1 }), /20 bits/],
  [session({ hard: 2 ** 20 }), /20 bits/],
  [session({ days: [0.5 as CalendarTask["start"]] }), /own days/],
  [session({ announced: { day: Number.NaN as CalendarTask["start"], start: 0 } }), /announced day/],
  [session({ announced: { day: MONDAY, start: 1440 } }), /announced start/],
  [session({ announced: { day: MONDAY, start: -1 } }), /announced start/],
  [task({ sessions: [a, { ...b, id: "A" }] }), /ids must differ/],
  [before({}, -1), /days in a row before/],
  [before({}, 4001), /days in a row before/],
  [before({ daysAgo: 0 }), /1 day ago or more/],
  [before({ daysAgo: 4001 }), /1 day ago or more/],
  [before({ start: 1440 }), /past start/],
  [before({ start: -1 }), /past start/],
  [before({ hard: 2 ** 20 }), /20 bits/],
  [before({ hard: -1 }), /20 bits/],
  [many(1001), /at most 1000 sessions: .* 1001$/],
];

test.each(wrong.map(([one, told], n) => [n, told, one] as const))("refused, %i: %s", (_, told, one) => {
  expect(() => checkTask(one)).toThrow(RangeError);
  expect(() => checkTask(one)).toThrow(told);
});

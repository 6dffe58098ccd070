import fc from "fast-check";
import { expect, test } from "vitest";
import { addDays, day } from "../day.ts";
import { foldRecord, occurrencesOf } from "../measures/index.ts";
import type { Patch, Plan } from "../model/index.ts";
import { PAIN_RULES } from "../screen/index.ts";
import {
  madeUpCatalogue,
  madeUpEvent,
  madeUpPerson,
  madeUpPlace,
  madeUpProgramme,
  reps,
  sets,
} from "../testing/index.ts";
import { type LightWeekInput, lightWeek } from "./index.ts";

const START = day("2027-03-01");
const DAY_MS = 86_400_000;

/** A plan of one session a week; some weeks light. */
function planOf(light: readonly boolean[]): Plan {
  const slot = { key: "it", exercise: "press", dose: sets(2, reps(8)), why: [], offer: [] };
  const session = { key: "a", title: "A", warmup: [], conditioning: [], open: [], minutes: { low: 5, high: 9 } };
  return {
    id: "plan",
    person: "ana",
    programme: "hash",
    made: { engine: "1", catalogue: "c", state: "s", decisions: "d" },
    firmTo: { phase: "base" },
    notes: [],
    phases: [
      {
        key: "base",
        title: "Base",
        score: { must: 0, want: 0, bound: 0, proven: true },
        weeks: light.map((isLight, at) => ({
          week: at + 1,
          light: isLight,
          sessions: [{ ...session, blocks: [{ kind: "straight", slots: [slot] }] }],
        })),
      },
    ],
  };
}

/** @param did whether each week so far was done; the week that follows has not begun */
function inputOf(light: readonly boolean[], did: readonly boolean[], awayWeeks: readonly number[]): LightWeekInput {
  const plan = planOf(light);
  let n = 0;
  const events = did.flatMap((isDone, week) =>
    !isDone
      ? []
      : [0, 1].map((set) =>
          madeUpEvent(
            `set-${week}-${set}`,
            ++n,
            "set-done",
            { exercise: "press", reps: "as asked", load: "as asked", reserve: "not said" },
            { of: { plan: "plan", session: `base/${week + 1}/a`, slot: "it", set }, at: (START + 7 * week) * DAY_MS },
          ),
        ),
  );
  const away = awayWeeks.map((week) => ({ from: addDays(START, 7 * week), to: addDays(START, 7 * week + 6) }));
  return {
    plan,
    programme: madeUpProgramme([]),
    person: madeUpPerson({ status: "intermediate", away }),
    place: madeUpPlace(),
    catalogue: madeUpCatalogue([]),
    record: foldRecord(events),
    log: [],
    today: addDays(START, 7 * did.length),
    dayOf: (at) => addDays(day("1970-01-01"), Math.floor(at / DAY_MS)),
    edges: PAIN_RULES[0]!,
    engine: "1",
    hash: (text) => text,
    spans: light.map((_, at) => ({ first: addDays(START, 7 * at), last: addDays(START, 7 * at + 6) })),
    days: occurrencesOf(plan).map((occurrence, at) => ({ occurrence, day: addDays(START, 7 * at) })),
  };
}

const weekIn = (name: string) => Number(name.split("/")[1]) - 1;

function applied(light: readonly boolean[], patch: Patch): readonly boolean[] {
  const now = [...light];
  if (patch.change === "full week") now[weekIn(patch.week)] = false;
  if (patch.change === "light week") {
    if (patch.instead !== undefined) now[weekIn(patch.instead)] = false;
    now[weekIn(patch.week)] = true;
  }
  return now;
}

const story = fc.integer({ min: 4, max: 20 }).chain((weeks) =>
  fc.record({
    light: fc
      .array(fc.boolean(), { minLength: weeks, maxLength: weeks })
      .map((all) => all.map((one, at) => one && at % 3 === 0)),
    did: fc
      .array(fc.boolean(), { minLength: 1, maxLength: weeks - 1 })
      .map((all) => all.map((one, at) => one || at % 2 === 0)),
    away: fc.array(fc.integer({ min: 0, max: weeks - 1 }), { maxLength: 2 }),
  }),
);

// Every 5.6 ± 2.3 weeks (rogerson2024): five hard weeks before, never sooner than three after a rest, never over eight.
test("a light week follows five hard weeks, one that moves lies clear of every rest, and what was taken is not said again", () => {
  fc.assert(
    fc.property(story, ({ light, did, away }) => {
      const said = lightWeek(inputOf(light, did, away));
      const { patch } = said;
      if (patch === undefined) return;
      const isOff = (week: number) => away.includes(week) || (week < did.length && did[week] !== true);
      const rests = (from: number, to: number) =>
        Array.from({ length: Math.max(0, to - from) }, (_, at) => from + at).filter(
          (week) => light[week] === true || isOff(week),
        );
      if (patch.change === "light week" && said.kind === "light") {
        const at = weekIn(patch.week);
        expect(at).toBe(did.length);
        expect(rests(at - 5, at)).toEqual([]);
        const [next] = rests(at + 1, light.length);
        if (next !== undefined) expect(next - (rests(0, at).at(-1) ?? -1)).toBeGreaterThan(8);
      } else if (patch.change === "light week") {
        const [to, was] = [weekIn(patch.week), weekIn(patch.instead!)];
        expect(light[was]).toBe(true);
        expect(was).toBeGreaterThanOrEqual(did.length);
        expect(rests(to - 3, Math.min(light.length, to + 4)).filter((week) => week !== was)).toEqual([]);
        expect(to).toBeLessThan(light.length - 1);
      } else if (patch.change === "full week") expect(light[weekIn(patch.week)]).toBe(true);
      const again = lightWeek(inputOf(applied(light, patch), did, away));
      expect(again.patch).not.toEqual(patch);
    }),
    { seed: 5, numRuns: 400 },
  );
});

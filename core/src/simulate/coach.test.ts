import { describe, expect, test } from "vitest";
import { coach } from "./coach.ts";
import { lifter } from "./lifter.ts";
import { instantOf, SESSION_DAYS } from "./recorded.ts";
import { ASKED_ALWAYS, isWithin } from "./start.ts";
import type { Way } from "./ways.ts";
import { WORLDS } from "./world.ts";

const matched = WORLDS[0]!;
const still = { ...matched, gain: [0, 0] as const, missed: 0, away: 0 };
const stay: Way = ({ asked }) => ({ asked });
const upAlways: Way = ({ asked, world }) => ({ asked: { ...asked, loadKg: asked.loadKg + world.stepKg } });
const people = Array.from({ length: 40 }, (_, index) => index);

describe("what is counted", () => {
  test("who never misses trains every week, and a load that stays is late, heavy or neither all along", () => {
    for (const index of people) {
      const { steps, weeks, late, heavy, stepsBack } = coach(still, 4, index, 10, stay);
      expect([steps.length, stepsBack, weeks]).toEqual([0, 0, 10]);
      expect([0, 10]).toContain(late);
      expect([0, 10]).toContain(heavy);
      expect(late * heavy).toBe(0);
    }
  });
  test("going up every time, in somebody who gains nothing, is within until it is not, and then never again", () => {
    for (const index of people) {
      const { steps } = coach(still, 4, index, 10, upAlways);
      expect(steps).toHaveLength(19);
      const said = steps.map(({ within }) => Number(within)).join("");
      expect(said).toMatch(/^1*0*$/);
      expect(said.endsWith("0")).toBe(true);
    }
  });
  test("a way that knows the person is never too soon, and late or heavy for no more than the week it began in", () => {
    for (const index of people) {
      const one = lifter(still, 4, index);
      const knows: Way = ({ asked, day, world }) => {
        const next = { ...asked, loadKg: asked.loadKg + world.stepKg };
        const back = { ...asked, loadKg: asked.loadKg - world.stepKg };
        if (isWithin(one, world, day, { ...ASKED_ALWAYS, loadKg: next.loadKg })) return { asked: next };
        return { asked: isWithin(one, world, day, asked) ? asked : back };
      };
      const { steps, stepsBack, late, heavy } = coach(still, 4, index, 10, knows);
      expect(steps.every(({ within }) => within)).toBe(true);
      expect(late).toBe(0.5 * steps.length);
      expect(heavy).toBe(0.5 * stepsBack);
    }
  });
  test("certainty is kept with the step it was said of", () => {
    const sure: Way = (moment) => ({ ...upAlways(moment), certainty: 0.9 });
    expect(coach(still, 4, 1, 2, sure).steps.map(({ certainty }) => certainty)).toEqual([0.9, 0.9, 0.9]);
    expect("certainty" in coach(still, 4, 1, 2, upAlways).steps[0]!).toBe(false);
  });
});

test("a way sees what was recorded before the day, and nothing of it or later", () => {
  const seen: number[] = [];
  const watch: Way = ({ history, asked, day }) => {
    seen.push(history.length);
    for (const { at } of history) expect(at).toBeLessThan(instantOf(day));
    return { asked };
  };
  coach(still, 4, 1, 5, watch);
  expect(seen).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9]);
  expect(SESSION_DAYS * 10).toBe(35);
});

test("who is coached in another way comes on the same days", () => {
  for (const index of people)
    expect(coach(matched, 4, index, 20, stay).weeks).toBe(coach(matched, 4, index, 20, upAlways).weeks);
});

import { expect, test } from "vitest";
import type { Foretold } from "./forecasts.ts";
import { judgeChanges } from "./judge-changes.ts";

type Kind = NonNullable<Foretold["change"]>["told"];
const told = (person: number, said: Kind, percent: number): Foretold => ({
  person,
  before: 0,
  truth: 100,
  ours: undefined,
  average: undefined,
  sure: undefined,
  change: { told: said, rose: Math.log(1 + percent / 100) },
});

test("gains told of people who rose by less than 1 %, and of those who rose by 5 % or more", () => {
  const all = [
    told(1, "gain", 0),
    told(1, "unclear", 0.9),
    told(2, undefined, -3),
    told(2, "level", 0.5),
    told(2, "gain", 2),
    told(3, "gain", 5.1),
    told(3, "gain", 9),
    told(3, "fall", 9),
    { ...told(3, "gain", 9), change: undefined },
  ];
  const { asked, falseGains, gainsFound } = judgeChanges(all, 1);
  expect(asked).toBe(8);
  expect([falseGains!.value, falseGains!.n]).toEqual([0.25, 2]);
  expect([gainsFound!.value, gainsFound!.n]).toEqual([2 / 3, 1]);
});

test("nobody asked, nothing told", () => expect(judgeChanges([], 1)).toEqual({ asked: 0 }));

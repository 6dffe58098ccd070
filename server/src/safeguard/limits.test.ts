import { expect, test } from "vitest";
import { Limits } from "./limits.ts";
import type { Refusal } from "./problem.ts";

function refusal(limits: Limits, caller: string, now: number): Refusal | undefined {
  try {
    limits.take(caller, now);
    return undefined;
  } catch (error) {
    return error as Refusal;
  }
}

test("so many at once, then as time passes; the answer says when", () => {
  const limits = new Limits({ burst: 3, aMinute: 6 });
  for (let i = 0; i < 3; i++) expect(refusal(limits, "a", 0)).toBeUndefined();
  const refused = refusal(limits, "a", 0)!;
  expect([refused.statusCode, refused.code, refused.headers["retry-after"]]).toEqual([429, "request/too-many", "10"]);
  expect(refusal(limits, "b", 0)).toBeUndefined();
  expect(refusal(limits, "a", 9_999)?.headers["retry-after"]).toBe("1");
  expect(refusal(limits, "a", 10_000)).toBeUndefined();
  expect(refusal(limits, "a", 10_000)?.statusCode).toBe(429);
});

test("asking while refused does not put the time off, and a clock set back gives nothing", () => {
  const limits = new Limits({ burst: 1, aMinute: 60 });
  limits.take("a", 5000);
  for (let now = 5000; now < 6000; now += 100) expect(refusal(limits, "a", now)?.statusCode).toBe(429);
  expect(refusal(limits, "a", 0)?.statusCode).toBe(429);
});

test("callers without number do not fill the memory", () => {
  const limits = new Limits({ burst: 1, aMinute: 1 });
  for (let i = 0; i < 25_000; i++) limits.take(`caller ${i}`, 0);
  expect(refusal(limits, "caller 24999", 0)?.statusCode).toBe(429);
  expect(refusal(limits, "caller 0", 0)).toBeUndefined();
});

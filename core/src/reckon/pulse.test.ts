import { expect, test } from "vitest";
import { PULSE } from "./pulse.ts";

test("heart rates and talking are reckoned by name, each with whom it is about", () => {
  expect(PULSE.map(({ name }) => name)).toEqual(["highest-pulse", "pulse-target", "pulse-share", "talk-test"]);
  for (const { asks } of PULSE) expect(asks.length).toBeGreaterThan(0);
});

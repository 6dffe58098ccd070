import { expect, test } from "vitest";
import { STOP_SIGNS, stopBefore } from "./stop-list.ts";

test.each(STOP_SIGNS)("%s ends the session", (sign) => {
  expect(stopBefore([sign])).toEqual({
    before: "hold",
    because: [{ code: "before/stop-now", data: { signs: [sign] } }],
  });
});

test("no sign, no stop", () => {
  expect(stopBefore([]).before).toBe("go");
});

import { expect, test } from "vitest";
import { type BeforeAnswer, strictest } from "./before.ts";

const answer = (before: BeforeAnswer["before"], code: string): BeforeAnswer => ({
  before,
  because: [{ code, data: {} }],
});

test("the strictest wins and keeps the grounds of all that are not fine, in any order", () => {
  const all = [answer("go", "a"), answer("soften", "b"), answer("hold", "c"), answer("ask", "d")];
  expect(strictest(all).before).toBe("hold");
  expect(strictest(all.toReversed()).before).toBe("hold");
  expect(strictest(all).because.map(({ code }) => code)).toEqual(["b", "c", "d"]);
  expect(strictest([answer("ask", "d"), answer("soften", "b")]).before).toBe("ask");
});

test("all fine keeps what was measured; nothing asked is go", () => {
  expect(strictest([answer("go", "a")])).toEqual(answer("go", "a"));
  expect(strictest([])).toEqual({ before: "go", because: [] });
});

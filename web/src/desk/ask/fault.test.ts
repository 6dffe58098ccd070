import { expect, test } from "vitest";
import { refusal, sayFault } from "./fault.ts";

test("a problem as RFC 9457, section 3 (from memory), shows one is told by its detail", () => {
  const body = {
    type: "https://example.com/probs/out-of-credit",
    title: "You do not have enough credit.",
    detail: "Your current balance is 30, but that costs 50.",
    instance: "/account/12345/msgs/abc",
  };
  expect(sayFault(refusal("morning", 403, body))).toBe("Your current balance is 30, but that costs 50. (morning, 403)");
});

test("without a detail its title, without both the place", () => {
  expect(sayFault(refusal("people", 409, { title: "Stands already" }))).toBe("Stands already (people, 409)");
  for (const body of [undefined, null, "<html>", 5, [], { title: 3 }]) {
    expect(sayFault(refusal("people", 502, body))).toBe("The server gave no answer that can be read at people.");
  }
});

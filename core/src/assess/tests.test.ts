import { expect, test } from "vitest";
import { ASSESSMENT_TESTS } from "./tests.ts";

test("at least twelve tests, each with a protocol, a bound, a source and standard conditions among their choices", () => {
  expect(ASSESSMENT_TESTS.length).toBeGreaterThanOrEqual(12);
  expect(new Set(ASSESSMENT_TESTS.map(({ id }) => id)).size).toBe(ASSESSMENT_TESTS.length);
  for (const { protocol, conditions, most, sources } of ASSESSMENT_TESTS) {
    expect(protocol.length).toBeGreaterThan(0);
    expect(sources.length).toBeGreaterThan(0);
    expect(most).toBeGreaterThan(0);
    for (const { choices, standard } of conditions) if (choices.length > 0) expect(choices).toContain(standard);
  }
});

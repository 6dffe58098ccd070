import { expect, test } from "vitest";
import { day } from "../day.ts";
import type { Person, Screening } from "../model/index.ts";
import { madeUpPerson } from "../testing/index.ts";
import { effortCeiling, mayPrint } from "./screening.ts";

const ON = day("2027-03-01");
const STANDS: Screening = { outcome: "no reason found", on: day("2027-01-01"), until: day("2027-12-31"), by: "Imke" };

function print(said: Partial<Screening>, on = ON) {
  return mayPrint(madeUpPerson({ screening: { ...STANDS, ...said } }), on);
}

test("an outcome that stands lets the sheet be printed, first and last day included", () => {
  expect(print({})).toEqual({ ok: true });
  expect(print({ on: ON, until: ON })).toEqual({ ok: true });
  expect(print({ outcome: "start light to moderate" })).toEqual({ ok: true });
});

test("no dated outcome, no sheet", () => {
  const { screening: _, ...rest } = madeUpPerson();
  const person: Person = rest;
  expect(mayPrint(person, ON)).toEqual({ ok: false, reason: { code: "offer/no-screening", data: {} } });
});

test("an outcome from a later day does not stand yet; one that ran out yesterday no longer", () => {
  expect(print({ on: day("2027-03-02") })).toEqual({
    ok: false,
    reason: { code: "offer/screening-not-yet", data: { on: "2027-03-02", by: "Imke" } },
  });
  expect(print({ until: day("2027-02-28") })).toEqual({
    ok: false,
    reason: { code: "offer/screening-expired", data: { until: "2027-02-28" } },
  });
});

test("ask a doctor first: only with a written agreement, from its day on", () => {
  const outcome = "ask a doctor first" as const;
  const asked = { ok: false, reason: { code: "offer/ask-doctor", data: { on: "2027-01-01", by: "Imke" } } };
  expect(print({ outcome })).toEqual(asked);
  expect(print({ outcome, agreed: { on: day("2027-03-02"), who: "Dr A" } })).toEqual(asked);
  expect(print({ outcome, agreed: { on: ON, who: "Dr A" } })).toEqual({ ok: true });
});

test("stop lets nothing through, agreed or not, run out or not", () => {
  for (const said of [{}, { agreed: { on: ON, who: "Dr A" } }, { until: day("2027-02-01") }]) {
    expect(print({ outcome: "stop", ...said })).toMatchObject({ ok: false, reason: { code: "offer/stop" } });
  }
});

test("effort: the written one, or moderate where the outcome asks for a gentle start", () => {
  const effort = (said: Partial<Screening>) => effortCeiling({ ...STANDS, ...said }, ON);
  const agreed = { on: ON, who: "Dr A" };
  expect(effort({})).toBeUndefined();
  expect(effort({ effort: "vigorous" })).toBeUndefined();
  expect(effort({ effort: "light" })).toBe("light");
  expect(effort({ outcome: "start light to moderate" })).toBe("moderate");
  expect(effort({ outcome: "start light to moderate", effort: "vigorous" })).toBe("moderate");
  expect(effort({ outcome: "ask a doctor first", agreed })).toBe("moderate");
  expect(effort({ outcome: "ask a doctor first", agreed, effort: "vigorous" })).toBeUndefined();
  expect(effort({ outcome: "ask a doctor first", effort: "vigorous" })).toBe("moderate");
  expect(effort({ effort: "light", until: day("2027-02-01") })).toBe("light");
  expect(effortCeiling(undefined, ON)).toBeUndefined();
});

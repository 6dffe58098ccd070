import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import { type Consent, consentFor, consentsOn } from "./consent.ts";

const UK = { country: "GB", age: 13 };
const BORN = day("1990-01-01");
const self = (on: string, given: boolean, purpose: Consent["purpose"] = "use my health answers"): Consent => ({
  purpose,
  on: day(on),
  given,
  by: { who: "self" },
});
const stands = (consents: readonly Consent[], on: string, born = BORN) =>
  consentFor("use my health answers", consents, born, day(on), UK);

describe("one purpose at a time", () => {
  const health = [self("2027-01-01", true), self("2027-03-01", false), self("2027-01-01", true, "photos")];
  test("given, then withdrawn; the photos stay agreed to", () => {
    expect(stands(health, "2026-12-31")).toBe("never asked");
    expect(stands(health, "2027-02-28")).toBe("given");
    expect(stands(health, "2027-03-01")).toBe("withdrawn");
    expect(consentFor("photos", health, BORN, day("2027-03-01"), UK)).toBe("given");
    expect(consentFor("news and offers", health, BORN, day("2027-03-01"), UK)).toBe("never asked");
  });
  test("the order of entering does not matter but on one day", () => {
    expect(stands(health.toReversed(), "2027-03-01")).toBe("withdrawn");
    expect(stands([self("2027-01-01", false), self("2027-01-01", true)], "2027-01-01")).toBe("given");
  });
});

describe("a child (age of consent from local law)", () => {
  const born = day("2015-01-01");
  test("alone under the age needs a guardian; a guardian's word counts; from the age on one's own does", () => {
    expect(stands([self("2027-01-01", true)], "2027-02-01", born)).toBe("needs a guardian");
    const guardian: Consent = { ...self("2027-01-01", true), by: { who: "guardian", name: "Mira" } };
    expect(stands([guardian], "2027-02-01", born)).toBe("given");
    expect(stands([self("2028-01-01", true)], "2028-02-01", born)).toBe("given");
  });
  test("a child may withdraw", () => {
    expect(stands([self("2027-01-01", false)], "2027-02-01", born)).toBe("withdrawn");
  });
});

test.each([12, 19, Number.NaN])("an age of consent of %d is refused", (age) => {
  expect(() => consentFor("photos", [], BORN, day("2027-01-01"), { country: "GB", age })).toThrow(RangeError);
});

test("a statement counts from its own day on", () => {
  const consents = [self("2027-01-05", true)];
  expect([stands(consents, "2027-01-04"), stands(consents, "2027-01-05")]).toEqual(["never asked", "given"]);
});

test("where no country is named the age is 16, the highest in Europe; every purpose is answered for itself", () => {
  const consents = [self("2027-01-05", true)];
  const state = (born: string) => consentsOn({ consents, born: day(born) }, day("2027-01-05"))[1];
  expect(state("2011-01-05")).toEqual({ purpose: "use my health answers", state: "given" });
  expect(state("2011-01-06")?.state).toBe("needs a guardian");
  const states = consentsOn({ consents, born: BORN, consentAge: UK }, day("2027-01-05")).map((each) => each.state);
  expect(states.filter((each) => each === "never asked")).toHaveLength(6);
});

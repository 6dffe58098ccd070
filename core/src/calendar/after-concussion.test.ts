import { describe, expect, test } from "vitest";
import { type Day, day, printDay } from "../day.ts";
import { type AfterConcussion, type HeadStep, type Moment, nextHeadStep } from "./after-concussion.ts";

const at = (text: string, hour: number): Moment => ({ day: day(text), minutes: hour * 60 });
const text = ({ day: on, minutes }: { day: Day; minutes: number }) => `${printDay(on)} ${minutes / 60}:00`;
const known = (said: AfterConcussion) => {
  const got = nextHeadStep(said);
  if (got.kind === "unknown") throw new Error(got.missing);
  return got;
};

describe("ca-05: 17 years old; step 4 on Saturday at 18:00 brings a headache that is gone at 22:00", () => {
  const boy: AfterConcussion = {
    born: day("2010-02-01"),
    done: [
      { step: 3, at: at("2027-05-14", 18) },
      { step: 4, at: at("2027-05-15", 18), symptom: { ended: at("2027-05-15", 22) } },
    ],
    usual: 18 * 60,
  };

  test("back to step 3, not before Monday 22:00, in practice on Tuesday", () => {
    const { step, notBefore, day: on } = known(boy);
    expect([step, text(notBefore), printDay(on)]).toEqual([3, "2027-05-17 22:00", "2027-05-18"]);
  });

  test("contact is locked until a doctor's word, and the match of the 22nd is out in any case", () => {
    const { contact } = known(boy);
    expect(contact.locked).toBe(true);
    expect(text(contact.notBefore)).toBe("2027-05-29 22:00");
    const confirmed = known({ ...boy, confirmed: { on: day("2027-05-17"), who: "Dr Example" } });
    expect(confirmed.contact).toEqual({ locked: false, notBefore: at("2027-05-29", 22) });
    expect(confirmed.contact.notBefore.day).toBeGreaterThan(day("2027-05-22"));
  });

  test("neighbour: an adult waits 24 hours, and for contact no 14 days", () => {
    const adult = known({ ...boy, born: day("2008-05-15") });
    expect([adult.step, text(adult.notBefore), printDay(adult.day)]).toEqual([3, "2027-05-16 22:00", "2027-05-17"]);
    expect(text(adult.contact.notBefore)).toBe("2027-05-16 22:00");
    expect(known({ ...boy, born: day("2008-05-16") }).notBefore).toEqual(at("2027-05-17", 22));
  });

  test("neighbour: without the headache, step 4 is done; contact still waits for the word", () => {
    const clean = { ...boy, done: boy.done.map(({ step, at: when }) => ({ step, at: when })) };
    expect(known(clean)).toMatchObject({ step: 4, notBefore: at("2027-05-17", 18), contact: { locked: true } });
    expect(known({ ...clean, confirmed: { on: day("2027-05-16"), who: "Dr Example" } }).step).toBe(5);
  });

  test("another symptom moves all dates; one that has not ended leaves them unknown", () => {
    const again = known({ ...boy, symptoms: [{ ended: at("2027-05-16", 9) }] });
    expect([text(again.notBefore), text(again.contact.notBefore)]).toEqual(["2027-05-18 9:00", "2027-05-30 9:00"]);
    expect(nextHeadStep({ ...boy, symptoms: [{}] })).toEqual({ kind: "unknown", missing: "the end of a symptom" });
  });
});

test("every step without symptoms leads to the next, every one with them to the one before, from 1 to 6", () => {
  const steps: readonly HeadStep[] = [1, 2, 3, 4, 5, 6];
  const after = (step: HeadStep, symptom: boolean) =>
    known({
      born: day("1990-01-01"),
      done: [{ step, at: at("2027-05-14", 10), ...(symptom ? { symptom: { ended: at("2027-05-14", 12) } } : {}) }],
      confirmed: { on: day("2027-05-01"), who: "Dr Example" },
      usual: 600,
    });
  expect(steps.map((step) => after(step, false).step)).toEqual([2, 3, 4, 5, 6, 6]);
  expect(steps.map((step) => after(step, true).step)).toEqual([1, 1, 2, 3, 4, 5]);
  expect(text(after(2, false).notBefore)).toBe("2027-05-15 10:00");
});

test("nothing done yet: what may come is for a clinician to say", () => {
  expect(nextHeadStep({ born: day("1990-01-01"), done: [], usual: 600 })).toEqual({
    kind: "unknown",
    missing: "a step done",
  });
});

import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import { occurrencesOf, slotsIn } from "../measures/index.ts";
import { canonicalJson, type EventData, type Patch, type Plan, type StaveEvent } from "../model/index.ts";
import { madeUpEvent, madeUpSituation, noonOf, reps, sets } from "../testing/index.ts";
import { massOf } from "../units.ts";
import { madeFor, nextRevision, planFor } from "./index.ts";

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const pinned = (n: number, patch: Patch, id = `pin-${n}`): StaveEvent =>
  madeUpEvent(id, n, "pinned", { patch, by: "Imke" });
const undone = (n: number, decision: string): StaveEvent =>
  madeUpEvent(`undo-${n}`, n, "undone", { decision, by: "Imke" });
const at = (events: readonly StaveEvent[] = [], daysOn = 0) => madeUpSituation(CATALOGUE, events, daysOn);
const slotIn = (plan: Plan, key: string, week = 1) =>
  occurrencesOf(plan)
    .filter((one) => one.week === week)
    .flatMap(({ session }) => slotsIn(session))
    .find((slot) => slot.key === key);
const after = (...events: readonly StaveEvent[]) => nextRevision(at(events));
const load = (value: number, slot = "squat"): Patch => ({ slot, change: "load", load: kg(value) });

describe("a revision", () => {
  test("without record and decisions is the fitted plan", () => {
    const situation = at();
    const fitted = planFor({ ...situation, made: { engine: "1", catalogue: "c", state: "s", decisions: "d" } });
    const { phases, notes } = nextRevision(situation);
    expect({ phases, notes }).toEqual({ phases: fitted.phases, notes: fitted.notes });
  });

  test("of equal facts has equal bytes and one id; of other facts another", () => {
    const plan = nextRevision(at());
    expect(canonicalJson(nextRevision(at()))).toBe(canonicalJson(plan));
    expect(madeFor(at())).toEqual(plan.made);
    const lighter = { ...at(), person: { ...at().person, mass: { load: kg(69), on: day("2027-02-20") } } };
    expect(nextRevision(lighter).id).not.toBe(plan.id);
    expect(after(pinned(1, load(62.5))).id).not.toBe(plan.id);
  });

  test("stays through what is recorded in its phase, and through a night", () => {
    const set: EventData["set-done"] = { exercise: "back-squat", reps: 12, load: "as asked", reserve: 0 };
    const of = { plan: nextRevision(at()).id, session: "base/1/a", slot: "squat", set: 0 };
    const events = [madeUpEvent("set-1", 1, "set-done", set, { of, at: noonOf(0) })];
    expect(nextRevision(at(events, 1))).toEqual(nextRevision(at()));
  });

  test("is the same whatever the order in which decisions arrived", () => {
    const words = [pinned(1, load(62.5)), pinned(2, load(65)), pinned(3, { slot: "row", change: "pause" })];
    expect(canonicalJson(after(...words.toReversed()))).toBe(canonicalJson(after(...words)));
    expect(slotIn(after(...words), "squat")!.load).toEqual(kg(65));
  });
});

describe("decisions", () => {
  test("a load stands in every week, leads its lighter sets, and says so", () => {
    const plan = after(pinned(1, load(70)));
    for (const week of [1, 2, 3, 4]) expect(slotIn(plan, "squat", week)!.load).toEqual(kg(70));
    expect(slotIn(plan, "squat")!.why).toContainEqual({ code: "plan/load-decided", data: { load: kg(70) } });
    expect(slotIn(after(), "squat")!.dose.sets[0]!.load).toEqual(kg(60));
    expect(slotIn(plan, "squat")!.dose.sets[0]).not.toHaveProperty("load");
    expect(slotIn(plan, "press")).toEqual(slotIn(after(), "press"));
  });

  test("undone, a load is gone, and the plan is the one before, to the byte", () => {
    expect(canonicalJson(after(pinned(1, load(70)), undone(2, "pin-1")))).toBe(canonicalJson(after()));
  });

  test("a load that does not exist here gives way to the next easier", () => {
    const slot = slotIn(after(pinned(1, load(63))), "squat")!;
    expect(slot.load).toEqual(kg(62.5));
    expect(slot.why.at(-1)).toEqual({ code: "plan/load-beaten", data: { load: kg(63), chosen: kg(62.5) } });
  });

  test("a limit beats a decided load, and says so", () => {
    const situation = at([pinned(1, load(16, "goblet"))]);
    const limit = {
      kind: "load" as const,
      atMost: kg(13),
      side: "both" as const,
      from: day("2027-02-01"),
      to: day("2027-05-01"),
      who: "Dr Okparavere",
    };
    const limited = { ...situation, person: { ...situation.person, limits: [limit] } };
    const slot = slotIn(nextRevision(limited), "goblet");
    expect(massOf(slot!.load!)).toBeLessThanOrEqual(massOf(kg(13)));
    expect(slot!.why.map(({ code }) => code)).toContain("plan/load-beaten");
  });

  test("a limit binds for all of a phase, until it is lifted: from that day the phase is free of it", () => {
    const limit = {
      kind: "load" as const,
      atMost: kg(10),
      side: "both" as const,
      from: day("2027-02-10"),
      to: day("2027-05-01"),
      who: "Dr Okparavere",
      lifted: { on: day("2027-03-10"), who: "Dr Okparavere" },
    };
    const on = (daysOn: number) => {
      const situation = at([], daysOn);
      return nextRevision({ ...situation, person: { ...situation.person, limits: [limit] } });
    };
    expect(massOf(slotIn(on(8), "goblet")?.load ?? kg(0))).toBeLessThanOrEqual(massOf(kg(10)));
    expect(slotIn(on(9), "goblet")!.load).toEqual(slotIn(after(), "goblet")!.load);
    expect(on(20)).toEqual(on(9));
    expect(on(9).id).not.toBe(on(8).id);
  });

  test("a load for one form is not asked of another", () => {
    const swapped: Patch = { slot: "squat", change: "exercise", exercise: "goblet-squat" };
    const forBack: Patch = { slot: "squat", change: "load", load: kg(70), exercise: "back-squat" };
    const plan = after(pinned(1, forBack), pinned(2, swapped));
    expect(slotIn(plan, "squat")).toMatchObject({ exercise: "goblet-squat" });
    expect(slotIn(plan, "squat")!.load).not.toEqual(kg(70));
    expect(slotIn(after(pinned(1, swapped), pinned(2, forBack)), "squat")!.load).not.toEqual(kg(70));
  });

  test("a form that may never be gives way, and says so", () => {
    const situation = at([pinned(1, { slot: "goblet", change: "exercise", exercise: "leg-press-mid" })]);
    const slot = slotIn(nextRevision(situation), "goblet")!;
    expect(slot.exercise).not.toBe("leg-press-mid");
    expect(slot.why.map(({ code }) => code)).toContain("fit/pin-beaten");
  });

  test("a dose stands with its number of sets; a load step takes it back, unless it was set by hand", () => {
    const dose = sets(2, reps({ from: 10, to: 15 }, { reserve: { from: 2, to: 2 } }));
    const widened: Patch = { slot: "squat", change: "reps", dose };
    const proposal = { proposal: "proposal-1", patch: widened, evidence: [], cut: {}, engine: "1" };
    const accepted = madeUpEvent("yes-1", 1, "accepted", { ...proposal, by: "Imke" });
    expect(slotIn(after(accepted), "squat", 3)!.dose).toEqual(dose);
    expect(slotIn(after(accepted), "squat")!.why.map(({ code }) => code)).toContain("plan/dose-decided");
    const back = slotIn(after(accepted, pinned(2, load(62.5))), "squat")!.dose;
    expect(back.sets.map(({ amount }) => amount)).toEqual(
      slotIn(after(), "squat")!.dose.sets.map(({ amount }) => amount),
    );
    expect(slotIn(after(pinned(1, widened), pinned(2, load(62.5))), "squat")!.dose).toEqual(dose);
  });

  test("a pause opens the slot, until its day or until it is taken up", () => {
    const pause: Patch = { slot: "row", change: "pause", until: "2027-03-08" };
    const open = (daysOn: number, ...events: readonly StaveEvent[]) =>
      occurrencesOf(nextRevision(at(events, daysOn)))[0]!.session.open;
    expect(open(6, pinned(1, pause))).toEqual([
      { key: "row", why: [{ code: "plan/paused", data: { exercise: "one-arm-row", until: "2027-03-08" } }] },
    ]);
    expect(open(7, pinned(1, pause))).toEqual([]);
    expect(open(0, pinned(1, pause), pinned(2, { slot: "row", change: "resume" }))).toEqual([]);
    expect(slotIn(nextRevision(at([pinned(1, pause)])), "row")).toBeUndefined();
  });

  test("a decision on a slot that is no more changes nothing that is asked", () => {
    expect(after(pinned(1, load(50, "gone"))).phases).toEqual(after().phases);
  });
});

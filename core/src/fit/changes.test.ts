import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import type { Exercise, Limit, Person, Place, Session } from "../model/index.ts";
import {
  madeUpCatalogue,
  madeUpExercise,
  madeUpPerson,
  madeUpPlace,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
} from "../testing/index.ts";
import { build, type FitInput } from "./build.ts";
import { changesOf, whatHelps, withEquipment, withMinutes } from "./changes.ts";
import { fitPhase } from "./fit.ts";

const on = day("2027-03-01");
const form = (id: string, more: Partial<Exercise> = {}) => madeUpExercise({ id, ...more });
const slot = (key: string, first = key) => ({ ...madeUpSlot(first, "squat", sets(3, reps(10))), slot: key });

function input(
  sessions: readonly Session[],
  forms: readonly Exercise[],
  said: { readonly person?: Partial<Person>; readonly place?: Partial<Place>; readonly perWeek?: number } = {},
): FitInput {
  const programme = madeUpProgramme(sessions);
  return {
    programme,
    phase: { ...programme.phases[0]!, weeks: 1 },
    person: madeUpPerson({ status: "intermediate", minutes: 60, ...said.person }),
    place: madeUpPlace(said.place),
    catalogue: madeUpCatalogue(forms),
    on,
    perWeek: said.perWeek ?? sessions.length,
  };
}
const one = (minutes = 40) => [madeUpSession("s", minutes, [slot("a")])];
const codes = (task: FitInput) =>
  changesOf(task, build(task)).map(({ change: { code, data } }) =>
    [code, data["what"] ?? data["more"] ?? data["tag"]].join(" ").trim(),
  );
const scoreOf = (task: FitInput) => fitPhase(task).solution;

describe("the changes that are tried", () => {
  test("are each thing that some form lacks here, minutes, each caution and each letter of limits, one day more", () => {
    const forms = [form("a"), form("b", { needs: [["rack"], ["barbell"]] }), form("c", { needs: [["cable", "band"]] })];
    const step = (to: string): Limit => ({
      kind: "load",
      atMost: { value: 5, unit: "kg" },
      side: "both",
      from: day("2027-01-01"),
      to: day(to),
      who: "Dr Hale",
    });
    const cautions = (["grip", "floor"] as const).map((tag) => ({
      tag,
      ceiling: 1 as const,
      from: day("2027-01-01"),
      recheck: day("2028-01-01"),
      who: "Dr Hale",
    }));
    const limits = [
      step("2027-04-01"),
      { ...step("2027-05-01"), from: day("2027-04-02") },
      { ...step("2027-04-01"), side: "left" as const },
    ];
    const task = input([...one(), madeUpSession("t", 40, [slot("b")])], forms, {
      person: { cautions, limits },
      place: { equipment: { barbell: 1 } },
      perWeek: 1,
    });
    expect(codes(task)).toEqual([
      "fit/if-equipment rack",
      "fit/if-equipment band",
      "fit/if-equipment cable",
      "fit/if-minutes 5",
      "fit/if-minutes 10",
      "fit/if-caution grip",
      "fit/if-caution floor",
      "fit/if-limit",
      "fit/if-limit",
      "fit/if-day",
    ]);
  });

  test("no day more than the phase has sessions", () => {
    expect(codes(input(one(), [form("a")]))).toEqual(["fit/if-minutes 5", "fit/if-minutes 10"]);
  });

  test("a broken thing may be mended", () => {
    const outages = [{ what: "rack" as const, from: "2027-02-01", to: "2027-04-01" }];
    const task = input(one(), [form("a", { needs: [["rack"]] })], { place: { equipment: { rack: 1 }, outages } });
    expect(codes(task)[0]).toBe("fit/if-equipment rack");
    expect(withEquipment(task, "rack").place).toMatchObject({ equipment: { rack: 1 }, outages: [] });
  });

  test("minutes are given to the person and to every session", () => {
    const task = withMinutes(input(one(40), [form("a")]), 5);
    expect([task.person.minutes, task.phase.sessions[0]!.minutes]).toEqual([65, 45]);
  });
});

describe("what each gains", () => {
  test("is the difference of the two best plans, the most first; what gains nothing is left out", () => {
    // The first choice needs a rack; what is left is a neighbour. Another form needs a cable and is a neighbour too.
    const near = (id: string, more: Partial<Exercise> = {}) => form(id, { pattern: "single leg", ...more });
    const forms = [form("a", { needs: [["rack"]] }), near("b"), near("c", { needs: [["cable"]] })];
    const task = input(one(), forms, { person: { likes: ["c"] } });
    const { now, gains } = whatHelps(task);
    const [before, rack, cable] = [task, withEquipment(task, "rack"), withEquipment(task, "cable")].map(scoreOf);
    expect(now).toEqual({ must: 0, want: before!.want });
    expect(gains).toEqual([
      {
        change: { code: "fit/if-equipment", data: { what: "rack" } },
        must: 0,
        want: rack!.want - before!.want,
        proven: true,
      },
      {
        change: { code: "fit/if-equipment", data: { what: "cable" } },
        must: 0,
        want: cable!.want - before!.want,
        proven: true,
      },
    ]);
    expect(gains[1]!.want).toBe(15);
  });

  test("puts a slot that can be filled before any number of wants", () => {
    const forms = [form("a"), form("b", { setupS: 500 })];
    const task = input([madeUpSession("s", 10, [slot("a"), slot("b")])], forms);
    const long = { ...task, catalogue: madeUpCatalogue([form("a", { setupS: 200 }), form("b", { setupS: 300 })]) };
    const { now, gains } = whatHelps(long);
    expect(now.must).toBe(10);
    expect(gains.map(({ change, must }) => [change.data["more"], must])).toEqual([
      [5, 10],
      [10, 10],
    ]);
  });

  test("a caution that costs points, and nothing where the plan has all it wants", () => {
    const forms = [form("a", { stress: { grip: 3 } }), form("b", { pattern: "single leg" })];
    const cautions = [
      {
        tag: "grip" as const,
        ceiling: 1 as const,
        from: day("2027-01-01"),
        recheck: day("2028-01-01"),
        who: "Dr Hale",
      },
    ];
    const { gains } = whatHelps(input(one(), forms, { person: { cautions } }));
    expect(gains.map(({ change }) => change)).toEqual([
      { code: "fit/if-caution", data: { tag: "grip", who: "Dr Hale" } },
    ]);
    expect(whatHelps(input(one(), [form("a")])).gains).toEqual([]);
  });
});

import { describe, expect, test } from "vitest";
import { day, printDay, weekdayOf } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import { type Plan, type Read, readPlaces, readProgramme, readRoster } from "../model/index.ts";
import { datesFor } from "./dates-for.ts";
import { planFor } from "./plan-for.ts";

function given<T>(read: Read<T>): T {
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
}

const PLACES = `stave: 1
places:
  - id: gym
    name: Gym
    zone: Europe/London
    has: { rack: 1, bench: 1, cable: 1, row machine: 1 }
    bars: [20 kg]
    plates: { 20 kg: 4, 10 kg: 2, 5 kg: 2, 2.5 kg: 2 }
    stacks: { row machine: 5–100 kg by 5 }
  - { id: hotel, name: Hotel room, zone: Europe/London, lacks: [step, stairs, bag, counter, way to walk] }
`;
const places = given(readPlaces(PLACES, "places.yaml")).value;

function person(lines: string) {
  const text = `stave: 1
people:
  - id: man
    name: Man
    born: 1975-06-01
    mass: { load: 84 kg, on: 2027-01-04 }
    status: intermediate
    units: kg
    rungs: { push-up: floor-push-up }
    lifts:
      - { exercise: barbell-deadlift, load: 100 kg, reps: 5, reserve: 2, on: 2027-01-04 }
      - { exercise: cable-row-seated, load: 55 kg, reps: 10, reserve: 2, on: 2027-01-04 }
    screening: { outcome: no reason found, on: 2027-01-04, until: 2027-07-04, by: the coach }
${lines}`;
  return given(readRoster(text, "people.yaml", places, CATALOGUE)).value[0]!;
}

type Slot = readonly [key: string, pattern: string, first: string, dose: string];
function programmeOf(id: string, weeks: number, minutes: number, sessions: Readonly<Record<string, readonly Slot[]>>) {
  const text = `stave: 1
id: ${id}
title: ${id}
version: 1
goal: general
status: intermediate
units: kg
phases:
  - key: all
    title: All
    weeks: ${weeks}
    sessions:${Object.entries(sessions)
      .map(
        ([key, slots]) => `
      - key: ${key}
        title: ${key}
        minutes: ${minutes}
        work:${slots.map(([slot, pattern, first, dose]) => `\n          - { slot: ${slot}, pattern: ${pattern}, first: ${first}, dose: "${dose}" }`).join("")}`,
      )
      .join("")}
`;
  return given(readProgramme(text, `${id}.yaml`)).programme;
}

function planned(programme: ReturnType<typeof programmeOf>, who: ReturnType<typeof person>, on: string, weeks: number) {
  const place = places.find(({ id }) => id === who.place)!;
  const made = { engine: "test", catalogue: "test", state: "test", decisions: "none" };
  const input = { programme, person: who, place, others: places, catalogue: CATALOGUE, on: day(on) };
  const plan = planFor({ ...input, made, programmeHash: programme.id });
  return { plan, ...datesFor({ ...input, plan, weeks }) };
}

const slotsOf = (plan: Plan) =>
  plan.phases.flatMap((phase) =>
    phase.weeks.flatMap((week) => week.sessions.flatMap((session) => session.blocks.flatMap((block) => block.slots))),
  );

describe("pf-08: four weeks into a block of eight, nine days away for work, a hotel room, 25 minutes on four mornings", () => {
  const block = programmeOf("block", 8, 60, {
    a: [["pull", "hinge", "barbell-deadlift", "3 × 5, rest 2 min, 2 in reserve"]],
    b: [["row", "horizontal pull", "cable-row-seated", "3 × 10, rest 90 s, 2 in reserve"]],
    c: [["squat", "squat", "back-squat", "3 × 8, rest 2 min, 2 in reserve"]],
  });
  const gym = (more = "") => person(`    place: gym\n    windows: [mon wed fri 18:00–19:15]\n    minutes: 60\n${more}`);
  const TRIP = { from: "2027-02-01", to: "2027-02-09" };
  const away = (waits: boolean) =>
    gym(`    away: [{ from: ${TRIP.from}, to: ${TRIP.to}${waits ? ", waits: true" : ""} }]\n`);
  const home = planned(block, gym(), "2027-01-04", 8);
  const trip = planned(block, away(true), "2027-01-04", 8);

  test("nothing is missed and nothing is progress: all 24 sessions have a day, and none is among the nine days", () => {
    expect(trip.placed.dropped).toEqual([]);
    expect(trip.placed.placements).toHaveLength(24);
    const days = trip.placed.placements.map((one) => printDay(one.day));
    expect(days.filter((on) => on >= TRIP.from && on <= TRIP.to)).toEqual([]);
    expect(trip.notAsUsual).toMatchObject([{ code: "calendar/waits", data: { ...TRIP, days: 9 } }]);
  });

  test("afterwards it goes on in week 5, where it left, and not in week 6", () => {
    const next = trip.placed.placements.find((one) => printDay(one.day) > TRIP.to);
    expect(next).toMatchObject({ session: "all/5/a" });
    expect([printDay(next!.day), weekdayOf(next!.day)]).toEqual(["2027-02-10", "wed"]);
  });

  test("movements, doses and loads are those of the block without the trip", () => {
    expect(trip.plan.phases).toEqual(home.plan.phases);
    const pull = slotsOf(trip.plan).filter(({ key }) => key === "pull");
    expect(new Set(pull.map(({ load }) => load?.value))).toEqual(new Set([pull[0]!.load?.value]));
    expect(pull[0]!.load!.value).toBeLessThanOrEqual(100);
  });

  test("neighbour: away without waiting, the sessions of those days fall away and the block is in week 6", () => {
    const lost = planned(block, away(false), "2027-01-04", 8);
    expect(lost.placed.dropped.map(({ session }) => session)).toContain("all/5/a");
    const next = lost.placed.placements.find((one) => printDay(one.day) > TRIP.to);
    expect(next!.session).toMatch(/^all\/6\//);
  });

  const small = "2 × 10–15, rest 45 s, 2 in reserve";
  const hotel = programmeOf("hotel", 1, 25, {
    one: [
      ["leg", "squat", "body-squat", small],
      ["push", "horizontal push", "floor-push-up", small],
      ["trunk", "anti-extension", "forearm-plank", "2 × 20–30 s, rest 45 s"],
    ],
    two: [
      ["hinge", "bridge", "floor-bridge", small],
      ["pull", "horizontal pull", "towel-pull-apart", small],
      ["side", "anti-lateral flexion", "side-plank-knees", "2 × 20 s each side, rest 45 s"],
    ],
    three: [
      ["leg-2", "single leg", "split-squat-support-full", "2 × 8–12 each side, rest 45 s, 2 in reserve"],
      ["push-2", "horizontal push", "narrow-push-up", small],
    ],
    four: [
      ["hinge-2", "bridge", "floor-bridge-pause", small],
      ["pull-2", "horizontal pull", "prone-arm-raise", small],
    ],
  });
  const guest = (more: string) =>
    person(`    place: hotel\n    minutes: 25\n    windows: [mon tue thu fri 07:00–07:25]\n${more}`);
  const quiet = planned(hotel, guest("    cannot: [impact]\n"), "2027-02-01", 1);

  test("four mornings, four sessions of 25 minutes at the most, without equipment and without a jump", () => {
    expect(quiet.placed.placements.map((one) => weekdayOf(one.day))).toEqual(["mon", "tue", "thu", "fri"]);
    for (const { sessions } of quiet.plan.phases[0]!.weeks) {
      for (const { minutes, open } of sessions) {
        expect(minutes.high).toBeLessThanOrEqual(25);
        expect(open).toEqual([]);
      }
    }
    const room = places[1]!;
    for (const { exercise } of slotsOf(quiet.plan)) {
      const form = CATALOGUE.exercises.get(exercise)!;
      expect(
        form.needs.every((group) => group.some((thing) => (room.equipment[thing] ?? 0) > 0)),
        exercise,
      ).toBe(true);
      expect(form.pattern).not.toBe("jump");
    }
  });

  test("no movement of the room is one of the block, so that no set of one enters the record of the other", () => {
    const forms = (plan: Plan) => new Set(slotsOf(plan).map(({ exercise }) => exercise));
    const both = [...forms(quiet.plan)].filter((exercise) => forms(trip.plan).has(exercise));
    expect(both).toEqual([]);
  });

  test("neighbour: told to jump there, a man who may not is given something else", () => {
    const loud = programmeOf("loud", 1, 25, { one: [["hop", "jump", "jump-squat", "2 × 6 contacts, rest 45 s"]] });
    const forms = slotsOf(planned(loud, guest("    cannot: [impact]\n"), "2027-02-01", 1).plan).map(
      (slot) => slot.exercise,
    );
    expect(forms).not.toContain("jump-squat");
  });
});

import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { parse } from "yaml";
import { CATALOGUE } from "../../core/src/exercises/index.ts";
import { lanesTrained, sessionSeconds } from "../../core/src/measures/index.ts";
import { type Lane, laneOf, type Plan, slotsOf } from "../../core/src/model/index.ts";
import { mayPrint } from "../../core/src/offer/index.ts";
import { planEverybody, readRoom, START } from "./plan-everybody.ts";

interface ExpectedSlot {
  readonly forms: readonly string[];
  readonly not?: Readonly<Record<string, string>>;
  readonly open?: string;
}
interface ExpectedPerson {
  readonly id: string;
  readonly lanes: readonly Lane[];
  readonly never: Readonly<Record<string, string>>;
  readonly slots: Readonly<Record<string, ExpectedSlot>>;
}

const text = (name: string) => readFileSync(new URL(name, import.meta.url), "utf8");
const room = readRoom({
  people: text("people.yaml"),
  places: text("places.yaml"),
  programmes: [text("harbour-steps.yaml"), text("slipway-strength.yaml")],
});
const table = parse(text("expected.yaml")) as { people: readonly ExpectedPerson[]; none: readonly string[] };
const plans = new Map(planEverybody(room).map((plan) => [plan.person, plan]));

const planOf = (id: string) => plans.get(id)!;
const personOf = (id: string) => room.people.find((one) => one.id === id)!;
const programmeOf = (id: string) => room.programmes.find((one) => one.id === personOf(id).programme)!;
const firstWeeks = (plan: Plan) => plan.phases[0]!.weeks.flatMap(({ sessions }) => sessions);
const filledIn = (plan: Plan) => firstWeeks(plan).flatMap(({ blocks }) => blocks.flatMap((block) => block.slots));
const once = (lines: readonly string[]) => [...new Set(lines)].sort();

/** Everything of a plan's first phase that a coach would not have given, one line each. */
function mistakes(id: string, slots: ExpectedPerson["slots"]): readonly string[] {
  const filled = filledIn(planOf(id)).flatMap(({ key, exercise }) => {
    const expected = slots[key];
    if (expected === undefined || expected.forms.includes(exercise)) return [];
    const why = expected.not?.[exercise];
    return [`${key}: ${exercise}${why === undefined ? "" : ` (${why})`}, not one of ${expected.forms.join(", ")}`];
  });
  const open = firstWeeks(planOf(id)).flatMap(({ open }) =>
    open.flatMap(({ key, why }) => {
      if (why.length === 0) return [`${key}: open without a reason`];
      const expected = slots[key];
      return expected !== undefined && expected.open === undefined ? [`${key}: open, and nothing allows it`] : [];
    }),
  );
  return once([...filled, ...open]);
}

test("the table names exercises and slots that exist, nothing both right and wrong, and everybody", () => {
  for (const { id, never, slots } of table.people) {
    const keys = programmeOf(id)
      .phases[0]!.sessions.flatMap(({ work }) => work.flatMap(slotsOf))
      .map(({ slot }) => slot);
    if (Object.keys(slots).length > 3) expect(Object.keys(slots).sort(), id).toEqual([...keys].sort());
    else expect(keys, id).toEqual(expect.arrayContaining(Object.keys(slots)));
    for (const { forms, not, open } of Object.values(slots)) {
      expect(forms.length > 0 || open !== undefined, id).toBe(true);
      const wrong = [...Object.keys(never), ...Object.keys(not ?? {})];
      for (const form of [...forms, ...wrong]) expect(CATALOGUE.exercises.has(form), `${id}: ${form}`).toBe(true);
      expect(
        forms.filter((form) => wrong.includes(form)),
        id,
      ).toEqual([]);
    }
  }
  const named = [...table.people.map(({ id }) => id), ...table.none];
  expect(named.sort()).toEqual(room.people.map(({ id }) => id).sort());
});

for (const { id, slots, never, lanes } of table.people) {
  const { name, cautions } = personOf(id);

  test(`${name} gets what a coach would take, in every slot`, () => {
    expect(mistakes(id, slots)).toEqual([]);
  });

  test(`${name} is never given what is wrong for them, in warm-up and conditioning neither`, () => {
    const sessions = planOf(id).phases.flatMap(({ weeks }) => weeks.flatMap((week) => week.sessions));
    const given = sessions.flatMap(({ warmup, blocks, conditioning }) => [
      ...[...warmup, ...conditioning].map(({ exercise }) => exercise),
      ...blocks.flatMap((block) => block.slots.map(({ exercise }) => exercise)),
    ]);
    // What the phone may offer in its place has to be as safe; where nothing is to be spared, easier forms may be dull.
    const offered = sessions.flatMap(({ blocks }) =>
      blocks.flatMap((block) => block.slots.flatMap(({ offer }) => offer)),
    );
    const wrong = (form: string) => (never[form] === undefined ? [] : [`${form} (${never[form]})`]);
    expect(once(given.flatMap(wrong))).toEqual([]);
    if (cautions.length > 0) expect(once(offered.flatMap(wrong)), "offered").toEqual([]);
  });

  test(`${name} trains ${lanes.join(", ")} in the first week`, () => {
    const trained = lanesTrained(planOf(id).phases[0]!.weeks[0]!.sessions, CATALOGUE);
    expect(lanes.filter((lane) => trained[lane].sets === 0)).toEqual([]);
  });

  test(`${name} has done it before and it is the first choice: so it is given`, () => {
    const first = programmeOf(id).phases[0]!.sessions.flatMap(({ work }) => work.flatMap(slotsOf));
    const known = first.filter(
      (slot) =>
        personOf(id).lifts.some(({ exercise }) => exercise === slot.first) &&
        slots[slot.slot]?.forms.includes(slot.first) === true,
    );
    const given = new Map(filledIn(planOf(id)).map(({ key, exercise }) => [key, exercise]));
    const other = known.filter(({ slot, first: asked }) => given.get(slot) !== asked);
    expect(other.map(({ slot, first: asked }) => `${slot}: ${given.get(slot)} for ${asked}`)).toEqual([]);
  });
}

test("every plan is proven to be the best under its rules", () => {
  for (const plan of plans.values()) {
    for (const { key, score } of plan.phases)
      expect(score.proven && score.want === score.bound, `${plan.id} ${key}`).toBe(true);
  }
});

test("no session of any week is longer than its minutes and the person's, by the measure itself", () => {
  let counted = 0;
  for (const plan of plans.values()) {
    const programme = programmeOf(plan.person);
    for (const [p, phase] of plan.phases.entries()) {
      for (const session of phase.weeks.flatMap(({ sessions }) => sessions)) {
        const asked = programme.phases[p]!.sessions.find(({ key }) => key === session.key)!;
        const minutes = Math.min(asked.minutes, personOf(plan.person).minutes);
        const { high, low } = sessionSeconds(session, (id) => CATALOGUE.exercises.get(id));
        expect(high, `${plan.id} ${phase.key} ${session.key}`).toBeLessThanOrEqual(minutes * 60);
        expect(session.minutes.high).toBe(Math.ceil(high / 60));
        expect(session.minutes.low).toBe(Math.floor(low / 60));
        counted++;
      }
    }
  }
  expect(counted).toBe(17 * 24 + 20);
});

test("who may not train yet has no sheet, and the plan says so first", () => {
  for (const { id } of table.people) expect(mayPrint(personOf(id), START).ok, id).toBe(true);
  for (const id of table.none) {
    const print = mayPrint(personOf(id), START);
    expect(print.ok === false && print.reason, id).toEqual(planOf(id).notes[0]);
  }
});

test("two Rowans, two plans, each their own", () => {
  const [p, q] = ["rowan-p", "rowan-q"].map((id) => filledIn(planOf(id)).map(({ exercise }) => exercise));
  expect(p).not.toEqual(q);
});

test("Sölve pulls at least as much as he pushes", () => {
  for (const { sessions } of planOf("solve").phases.flatMap((phase) => phase.weeks)) {
    const sets = (lane: Lane) =>
      sessions
        .flatMap(({ blocks }) => blocks.flatMap((block) => block.slots))
        .filter(({ exercise }) => laneOf(CATALOGUE.exercises.get(exercise)!.pattern) === lane)
        .reduce((sum, { dose }) => sum + dose.sets.length, 0);
    expect(sets("pull")).toBeGreaterThanOrEqual(sets("push"));
    expect(sets("pull")).toBeGreaterThan(0);
  }
});

test("Kofi gets as many lighter sets before a lift as the file asks, where the loads are there", () => {
  const asked = programmeOf("kofi").phases[0]!.sessions.flatMap(({ warmup }) =>
    (warmup ?? []).flatMap((item) => ("ramp" in item ? [[item.ramp, item.sets] as const] : [])),
  );
  const [week] = planOf("kofi").phases[0]!.weeks;
  const ramps = week!.sessions.flatMap(({ warmup }) => warmup.filter((item) => item.for !== undefined));
  const given = asked.map(([slot]) => {
    const sets = ramps.filter((item) => item.for === slot).map(({ dose }) => dose.sets.length);
    return [slot, sets.reduce((sum, count) => sum + count, 0)] as const;
  });
  expect(given).toEqual(asked);
});

test("Kofi's heavy deadlift does not carry one load through weeks whose shares differ", () => {
  const weeks = planOf("kofi").phases[0]!.weeks.slice(0, 4);
  const heavy = weeks.map(({ sessions }) =>
    sessions
      .flatMap(({ blocks }) => blocks.flatMap((block) => block.slots))
      .find(({ key }) => key === "deadlift-heavy"),
  );
  const loads = heavy.flatMap((slot) => slot?.load?.value ?? []);
  expect(loads).toHaveLength(4);
  expect([...loads].sort((a, b) => a - b)).toEqual(loads);
  expect(new Set(loads).size).toBe(4);
});

test("whoever has done just what is asked begins with the load they did it with", () => {
  const rows = table.people.flatMap(({ id }) =>
    planOf(id)
      .phases[0]!.weeks[0]!.sessions.flatMap(({ blocks }) => blocks.flatMap((block) => block.slots))
      .flatMap((slot) => {
        const { amount, reserve } = slot.dose.sets[0]!;
        const same = personOf(id).lifts.find(
          ({ exercise, reps, reserve: left }) =>
            exercise === slot.exercise &&
            amount.kind === "reps" &&
            reps !== undefined &&
            reps >= amount.span.from &&
            reps <= amount.span.to &&
            left === reserve?.from,
        );
        return same?.load === undefined ? [] : [{ id, slot: slot.key, did: same.load, given: slot.load }];
      }),
  );
  expect(rows.map(({ id, slot }) => `${id} ${slot}`)).toEqual(expect.arrayContaining(["tobiah ground-pull-b"]));
  // All the places weigh in kilograms: what Kofi did in pounds may not be there to the gram.
  const there = rows.filter(({ did }) => did.unit === "kg");
  expect(there.filter(({ did, given }) => given?.value !== did.value || given.unit !== did.unit)).toEqual([]);
});

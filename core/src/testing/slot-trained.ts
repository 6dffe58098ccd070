import { addDays, type Day, day } from "../day.ts";
import { foldRecord, logOf } from "../measures/index.ts";
import type { Exercise, Person, Place, Plan, SetDone, SetDose, WayUp } from "../model/index.ts";
import { madeUpEvent } from "./events.ts";
import { madeUpCatalogue, sets } from "./made-up-exercise.ts";
import { madeUpPerson, madeUpPlace } from "./made-up-person.ts";
import { madeUpPhase, madeUpProgramme, madeUpSession, madeUpSlot } from "./made-up-programme.ts";
import { plainHash } from "./situation.ts";

/** The first day of a slot that is trained in a test. */
export const SLOT_START = day("2027-03-01");
const DAY_MS = 86_400_000;
const kg = (value: number) => ({ value, unit: "kg" }) as const;

/** One set done, reserve said or not. */
export const setDone = (reps: number, reserve?: number): Partial<SetDone> => ({
  reps,
  ...(reserve === undefined ? {} : { reserve }),
});

export interface SlotTrained {
  readonly exercise: Exercise;
  readonly set: SetDose;
  readonly sets: number;
  readonly load?: number;
  readonly place: Partial<Place>;
  readonly person?: Partial<Person>;
  /** Days after the start, with what was done in every set. */
  readonly did: readonly (readonly [daysOn: number, said: Partial<SetDone>])[];
  /** Pain noted in the sessions, by their number. */
  readonly hurts?: Readonly<Record<number, { readonly where: string; readonly howMuch: number }>>;
  /** How much it hurt the morning after, by the number of the session, and how many days late that was said. */
  readonly mornings?: Readonly<Record<number, readonly [howMuch: number, daysOn: number]>>;
  readonly today: number;
  readonly way?: WayUp;
  /** Other forms, with the steps from the one that is trained to them. */
  readonly harder?: readonly Exercise[];
  /** Easier forms that the slot offers. */
  readonly offer?: readonly Exercise[];
  /** Days after the start on which illness kept the person away. */
  readonly sick?: readonly number[];
}

/** All that proposals are made from, of one slot trained on some days. */
export function slotTrained({
  exercise,
  set,
  sets: count,
  load,
  place,
  person,
  did,
  hurts,
  mornings,
  today,
  ...more
}: SlotTrained) {
  const dose = sets(count, set);
  const slot = madeUpSlot(exercise.id, exercise.pattern, dose, {
    slot: "it",
    way: more.way ?? (set.amount.kind === "hold" ? "hold time" : "reps then load"),
    up: 2,
  });
  const programme = madeUpProgramme([], {
    phases: [madeUpPhase([madeUpSession("a", 60, [slot])], { key: "base", weeks: 12 })],
  });
  const plan: Plan = {
    id: "plan-1",
    person: "ana",
    programme: "hash",
    made: { engine: "1", catalogue: "c", state: "s", decisions: "d" },
    firmTo: { phase: "base" },
    notes: [],
    phases: [
      {
        key: "base",
        title: "Base",
        score: { must: 0, want: 0, bound: 0, proven: true },
        weeks: Array.from({ length: 12 }, (_, week) => ({
          week: week + 1,
          light: false,
          sessions: [
            {
              key: "a",
              title: "A",
              warmup: [],
              blocks: [
                {
                  kind: "straight",
                  slots: [
                    {
                      key: "it",
                      exercise: exercise.id,
                      dose,
                      ...(load === undefined ? {} : { load: kg(load) }),
                      why: [],
                      offer: (more.offer ?? []).map(({ id }) => id),
                    },
                  ],
                },
              ],
              conditioning: [],
              open: [],
              minutes: { low: 10, high: 20 },
            },
          ],
        })),
      },
    ],
  };
  let n = 0;
  const morning = (number: number, at: number) => {
    const said = mornings?.[number];
    if (said === undefined) return [];
    const data = { hurt: `hurt-${number}`, howMuch: said[0] };
    return [madeUpEvent(`morning-${number}`, ++n, "next-morning", data, { at: at + said[1] * DAY_MS })];
  };
  const events = did.flatMap(([daysOn, said], number) => {
    const of = { plan: "plan-1", session: `base/${number + 1}/a`, slot: "it" };
    const at = (SLOT_START + daysOn) * DAY_MS;
    const done: SetDone = { exercise: exercise.id, reps: "as asked", load: "as asked", reserve: "not said", ...said };
    const pain = hurts?.[number];
    return [
      ...Array.from({ length: count }, (_, index) =>
        madeUpEvent(`set-${number}-${index}`, ++n, "set-done", done, { of: { ...of, set: index }, at }),
      ),
      ...(pain === undefined ? [] : [madeUpEvent(`hurt-${number}`, ++n, "hurt", pain, { of: { ...of, set: 0 }, at })]),
      ...morning(number, at),
    ];
  });
  const sick = (more.sick ?? []).map((daysOn, index) => {
    const of = { plan: "plan-1", session: `base/${12 - index}/a` };
    return madeUpEvent(`sick-${index}`, ++n, "missed", { because: "sick" }, { of, at: (SLOT_START + daysOn) * DAY_MS });
  });
  const record = foldRecord([...events, ...sick]);
  const harder = more.harder ?? [];
  const steps = harder.map(({ id }) => ({ from: exercise.id, to: id, branch: "main" }));
  const easier = (more.offer ?? []).map(({ id }) => ({ from: id, to: exercise.id, branch: "main" }));
  const start = more.offer?.[0]?.id ?? exercise.id;
  const ladders = [{ id: "ladder", name: "Ladder", start, steps: [...easier, ...steps] }];
  return {
    plan,
    programme,
    person: madeUpPerson(person),
    place: madeUpPlace(place),
    catalogue: madeUpCatalogue([exercise, ...harder, ...(more.offer ?? [])], ladders),
    record,
    log: logOf(plan, record, () => undefined),
    today: addDays(SLOT_START, today),
    dayOf: (at: number) => Math.floor(at / DAY_MS) as Day,
    edges: { free: 2, most: 5 } as const,
    engine: "1",
    hash: plainHash,
  };
}

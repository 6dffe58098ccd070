import { createHash } from "node:crypto";
import { addDays, type Day, day } from "@stave/core/day";
import { CATALOGUE } from "@stave/core/exercises";
import { foldRecord, logOf } from "@stave/core/measures";
import type { StaveEvent } from "@stave/core/model";
import { proposalsFor } from "@stave/core/progress";
import type { PlannedPerson } from "@stave/core/revise";
import { PAIN_RULES } from "@stave/core/screen";
import { DEMO_PROGRAMME, DEMO_SEED, DEMO_STORIES, DEMO_WEEKS, demoRecords } from "@stave/core/simulate";
import { type ProgrammeFile, placeOf, readPeople, readProgrammes } from "../server/src/commands/world.ts";
import { medianTime, RUNS, unitJob } from "./clock.ts";
import type { Measure } from "./measure.ts";

const PEOPLE = 1000;
const ROOM = "examples/ropewalk";
const ON = day("2027-01-11");
const DAY_MS = 86_400_000;
/** One set of one person is short; many make a time that a clock can tell. */
const ROUNDS = 100;

/** The people of the made-up room of whom there are ten weeks of records. */
async function recordedPeople(): Promise<readonly PlannedPerson[]> {
  const programmes = await readProgrammes([`${ROOM}/${DEMO_PROGRAMME}.yaml`]);
  const roster = await readPeople(`${ROOM}/people.yaml`, `${ROOM}/places.yaml`);
  if (!programmes.ok || !roster.ok) throw new Error("The made-up room cannot be read");
  const [{ programme, hash: programmeHash }] = programmes.value as readonly [ProgrammeFile];
  const { people, places: others } = roster.value;
  return people.flatMap((person) => {
    const story = DEMO_STORIES[person.id];
    if (story === undefined) return [];
    const facts = {
      ...{ programme, programmeHash, person, place: placeOf(person, roster.value), others, catalogue: CATALOGUE },
      ...{ on: ON, today: addDays(ON, 7 * DEMO_WEEKS), engine: "bench", catalogueHash: "bench" },
      dayOf: (at: number) => Math.floor(at / DAY_MS) as Day,
      hash: (text: string) => createHash("sha256").update(text).digest("hex"),
    };
    const toInstant = (on: Day, minutes: number) => on * DAY_MS + minutes * 60_000;
    const { events, revisions } = demoRecords(DEMO_SEED, facts, toInstant, story);
    const revisionOf = (id: string) => revisions.find((plan) => plan.id === id);
    return [{ ...facts, events, revisionOf, plan: revisions.at(-1)! }];
  });
}

/** From what was recorded to what is proposed. */
function proposed(person: PlannedPerson, events: readonly StaveEvent[]): number {
  const record = foldRecord(events);
  const log = logOf(person.plan, record, person.revisionOf);
  return proposalsFor({ ...person, record, log, edges: PAIN_RULES[0]! }).length;
}

/** The next doses of 1000 people from their whole records, against reading the JSON of the same records. */
export const nextPeople: Measure = {
  name: "next/1000-people",
  async run() {
    const people = await recordedPeople();
    const all = Array.from({ length: PEOPLE }, (_, at) => people[at % people.length]!);
    const texts = all.map(({ events }) => JSON.stringify(events));
    const value = await medianTime(() => all.map((person) => proposed(person, person.events)));
    const baselineValue = await medianTime(() => texts.map((text) => JSON.parse(text).length));
    const events = all.reduce((sum, person) => sum + person.events.length, 0);
    return {
      name: "next/1000-people",
      value,
      unit: "ms",
      baseline: "JSON.parse of the same records",
      baselineValue,
      ratio: value / baselineValue,
      n: RUNS,
      aim: "at most 3",
      note: `${events} events`,
    };
  },
};

/** The next doses of one person after one set more, against the fixed piece of work of this bench. */
export const nextSet: Measure = {
  name: "next/one-set",
  async run() {
    const [person] = await recordedPeople();
    const last = person!.events.findLast(({ kind }) => kind === "set-done")!;
    const events = [...person!.events, { ...last, id: `${last.id.slice(0, -1)}x`, n: last.n + 1 }];
    const value = (await medianTime(() => Array.from({ length: ROUNDS }, () => proposed(person!, events)))) / ROUNDS;
    const baselineValue = await medianTime(unitJob);
    return {
      name: "next/one-set",
      value,
      unit: "ms",
      baseline: "one unit",
      baselineValue,
      ratio: value / baselineValue,
      n: RUNS,
      note: `${events.length} events`,
    };
  },
};

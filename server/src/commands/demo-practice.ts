import { join } from "node:path";
import { addDays, type Day, day, parseDay, printDay, WEEKDAYS, weekdayOf } from "@stave/core/day";
import { highestCounter, type Person } from "@stave/core/model";
import { DEMO_NOTES, DEMO_PROGRAMME, DEMO_SEED, DEMO_STORIES, DEMO_WEEKS, demoRecords } from "@stave/core/simulate";
import { toInstant } from "../documents/calendar/index.ts";
import { LOCAL_PRACTICE } from "../local-practice.ts";
import { Changes, DESK_DEVICE, fillPractice, Practice } from "../practice/index.ts";
import type { Store } from "../store/index.ts";
import type { Io } from "./answer.ts";
import { DEMO_START, demoFolder } from "./demo-room.ts";
import { type ProgrammeFile, placeOf, type Roster, readPeople, readProgrammes } from "./world.ts";

/** Events of one batch, as a phone sends them. */
const BATCH = 100;
const DAY_MS = 86_400_000;

/** The same text with every date so many days later. */
export function shiftDates(text: string, days: number): string {
  return text.replace(/\b\d{4}-\d{2}-\d{2}\b/g, (date) => {
    const found = parseDay(date);
    return found === undefined ? date : printDay(addDays(found, days));
  });
}

/**
 * Fills a store with the made-up room as if its first Monday were that of this week, and for a few of its people the
 * one ten weeks before, with records since then that end yesterday.
 */
export async function fillDemo(store: Store, today: Day, now: number, io: Pick<Io, "err">): Promise<void> {
  const { programmes, roster } = await readRoom();
  const { people, texts } = roster;
  const hashOf = new Map(programmes.map(({ programme, hash }) => [programme.id, hash]));
  const monday = addDays(today, -WEEKDAYS.indexOf(weekdayOf(today)));
  const recorded = people.filter(({ id }) => id in DEMO_STORIES);
  const others = people.filter(({ id }) => !(id in DEMO_STORIES));
  const first = addDays(monday, -7 * DEMO_WEEKS);
  const groups = [
    { group: others, on: monday, programmeOf: (person: Person) => person.programme ?? "harbour-steps" },
    ...recorded.map((person) => {
      const { weeks = DEMO_WEEKS, programme = DEMO_PROGRAMME } = DEMO_STORIES[person.id]!;
      return { group: [person], on: addDays(monday, -7 * weeks), programmeOf: () => programme };
    }),
  ];
  for (const { group, on, programmeOf } of groups) {
    await fillPractice(store, LOCAL_PRACTICE, {
      programmes: new Map(programmes.map(({ hash, text }) => [hash, text])),
      places: shiftDates(texts.places, first - day(DEMO_START)),
      people: shiftDates(texts.people, on - day(DEMO_START)),
      training: group.map((person) => ({ person, programme: hashOf.get(programmeOf(person))! })),
      on,
      keepStarts: false,
      coach: "Imke Farrowdale",
      call: "Imke Farrowdale, 01632 960 123",
    });
  }
  const practice = new Practice(store, LOCAL_PRACTICE, new Changes());
  for (const person of recorded) {
    const facts = (await practice.facts(person.id))!;
    const { zone } = placeOf(person, roster);
    const { events, revisions } = demoRecords(
      DEMO_SEED,
      { ...facts, today },
      (on, minutes) => toInstant(on, minutes, zone),
      DEMO_STORIES[person.id]!,
    );
    for (const plan of revisions) await store.putRevision(LOCAL_PRACTICE, person.id, { id: plan.id, plan });
    for (let from = 0; from < events.length; from += BATCH)
      await practice.append(person.id, events.slice(from, from + BATCH));
  }
  for (const [person, text] of Object.entries(DEMO_NOTES)) {
    const at = now - DAY_MS;
    const n = highestCounter((await store.eventsOf(LOCAL_PRACTICE, person)).map(({ event }) => event)) + 1;
    const id = `demo-note-${person}`;
    const data = { about: "other", text };
    await practice.append(person, [{ v: 1, id, person, device: DESK_DEVICE, n, at, kind: "noted", data }]);
  }
  for (const [index, { id }] of people.entries()) {
    await practice.planned(id, now);
    io.err(`planned ${index + 1} of ${people.length}${index + 1 === people.length ? "\n" : "\r"}`);
  }
}

/** @returns the people of whom there are records */
export async function demoPeople(): Promise<readonly { readonly id: string; readonly name: string }[]> {
  const { roster } = await readRoom();
  return roster.people.filter(({ id }) => id in DEMO_STORIES).map(({ id, name }) => ({ id, name }));
}

async function readRoom(): Promise<{ readonly programmes: readonly ProgrammeFile[]; readonly roster: Roster }> {
  const folder = demoFolder();
  const names = ["harbour-steps", "slipway-strength", DEMO_PROGRAMME];
  const programmes = await readProgrammes(names.map((name) => join(folder, `${name}.yaml`)));
  const roster = await readPeople(join(folder, "people.yaml"), join(folder, "places.yaml"));
  if (!programmes.ok || !roster.ok) throw new Error("The demo's own files cannot be read");
  return { programmes: programmes.value, roster: roster.value };
}

import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { eventsInput } from "../../core/src/api/index.ts";
import { addDays, type Day, day } from "../../core/src/day.ts";
import { CATALOGUE } from "../../core/src/exercises/index.ts";
import { foldRecord } from "../../core/src/measures/index.ts";
import { DECISION_KINDS, readPlaces, readProgramme, readRoster } from "../../core/src/model/index.ts";
import { morningFor, nextRevision } from "../../core/src/revise/index.ts";
import { DEMO_PROGRAMME, DEMO_SEED, DEMO_STORIES, DEMO_WEEKS, demoRecords } from "../../core/src/simulate/index.ts";

const text = (name: string) => readFileSync(new URL(name, import.meta.url), "utf8");
const places = readPlaces(text("places.yaml"), "places.yaml");
if (!places.ok) throw new Error("places.yaml cannot be read");
const room = places.value.value;
const people = readRoster(text("people.yaml"), "people.yaml", room, CATALOGUE);
const programme = readProgramme(text(`${DEMO_PROGRAMME}.yaml`), "programme.yaml");
if (!people.ok || !programme.ok) throw new Error("The demonstration cannot be read");

const MINUTE_MS = 60_000;
const DAY_MS = 1440 * MINUTE_MS;
const toInstant = (on: Day, minutes: number) => on * DAY_MS + minutes * MINUTE_MS;

/** One person ten weeks after their first Monday, and so many days. */
function lived(id: string, days: number) {
  const on = day("2027-01-11");
  const person = (people as Extract<typeof people, { ok: true }>).value.value.find((each) => each.id === id)!;
  const situation = {
    programme: (programme as Extract<typeof programme, { ok: true }>).value.programme,
    programmeHash: DEMO_PROGRAMME,
    person,
    place: room.find((each) => each.id === person.place)!,
    others: room,
    catalogue: CATALOGUE,
    on,
    today: addDays(on, 7 * DEMO_WEEKS + days),
    dayOf: (at: number) => Math.floor(at / DAY_MS) as Day,
    engine: "test",
    catalogueHash: "test",
    hash: (of: string) => createHash("sha256").update(of).digest("hex"),
  };
  const { events, revisions } = demoRecords(DEMO_SEED, situation, toInstant, DEMO_STORIES[id]!);
  const known = { ...situation, events, revisionOf: (name: string) => revisions.find((plan) => plan.id === name) };
  return { known, revisions, planned: { ...known, plan: nextRevision(known) } };
}

describe.each([0, 1, 2, 3, 4, 5, 6])("ten weeks of records and %i days", (days) => {
  const all = Object.keys(DEMO_STORIES).map((id) => lived(id, days));
  const { people: list } = morningFor(
    all.map(({ planned }) => planned),
    all[0]!.known.today,
  );
  const titles = (stop: boolean) =>
    list.flatMap(({ items }) => items.filter((item) => item.stop === stop).map(({ title }) => title.code));

  test("the morning has a heavier load, a range to widen because the next load is far, and a stop on top", () => {
    expect(titles(false)).toContain("progress/go-to-load");
    expect(titles(false)).toContain("progress/widen-range");
    expect(titles(true)).toContain("progress/pause-all");
    expect(list[0]!.items[0]!.stop).toBe(true);
    const tooLarge = list.flatMap(({ items }) =>
      items.flatMap(({ proposal }) => proposal.evidence.filter(({ code }) => code === "progress/step-too-large")),
    );
    for (const { data } of tooLarge) expect(data["percent"]).toBeGreaterThan(10);
    expect(tooLarge.length).toBeGreaterThan(0);
  });

  test("records but the coach's words are events that a phone may send, and end the day before", () => {
    for (const { known } of all) {
      const { events } = known;
      expect(events.length).toBeGreaterThan(250);
      const told = events.filter(({ kind }) => !(DECISION_KINDS as readonly string[]).includes(kind));
      for (let from = 0; from < told.length; from += 100)
        expect(() => eventsInput.parse({ events: told.slice(from, from + 100) })).not.toThrow();
      expect(new Set(events.map(({ id }) => id)).size).toBe(events.length);
      const last = Math.max(...events.map(({ at }) => known.dayOf(at)));
      expect(last).toBeLessThan(known.today);
      // A week at most; somebody who waits for a doctor's word has not trained since.
      expect(last).toBeGreaterThanOrEqual(known.today - (known.person.id === "tobiah" ? 8 : 7));
      expect(foldRecord(events).sessions.length).toBeGreaterThan(15);
    }
  });
});

test("the same seed gives the same records; two phones of one session count it once", () => {
  const [one, other] = [lived("ilario", 0), lived("ilario", 0)];
  expect(other.known.events).toEqual(one.known.events);
  const { events } = one.known;
  const devices = new Set(events.map(({ device }) => device));
  expect(devices.size).toBe(2);
  const alone = events.filter(({ device }) => device === events[0]!.device);
  expect(foldRecord(events).sessions.map(({ slots }) => slots.map(({ sets }) => sets.length))).toEqual(
    foldRecord(alone).sessions.map(({ slots }) => slots.map(({ sets }) => sets.length)),
  );
});

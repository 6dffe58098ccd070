import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { day } from "@stave/core/day";
import { canonicalJson, readPlaces, readRoster } from "@stave/core/model";
import { afterAll, beforeAll, expect, test } from "vitest";
import { sha256 } from "../made-by.ts";
import { openStore, type Store } from "../store/index.ts";
import { sampleEvent } from "../store/testing/sample-events.ts";
import { Changes, fillPractice, Practice } from "./index.ts";

const NOON = Date.UTC(2027, 0, 27, 12);
const DAY = 86_400_000;
const folder = mkdtempSync(join(tmpdir(), "stave-practice-"));
const read = (name: string) => readFileSync(`examples/ropewalk/${name}.yaml`, "utf8");
let store: Store;
let practice: Practice;

async function fill(people: string): Promise<void> {
  const places = readPlaces(read("places"), "places.yaml");
  const roster = readRoster(people, "people.yaml", places.ok ? places.value.value : []);
  if (!roster.ok) throw new Error("the demo's files are read by their own tests");
  const programme = read("harbour-steps");
  await fillPractice(store, "local", {
    programmes: new Map([[sha256(programme), programme]]),
    places: read("places"),
    people,
    training: roster.value.value
      .filter(({ id }) => id === "dagny" || id === "tobiah")
      .map((person) => ({ person, programme: sha256(programme) })),
    on: day("2027-01-11"),
    keepStarts: false,
    coach: "Imke Farrowdale",
    call: "Imke Farrowdale",
  });
}

beforeAll(async () => {
  store = await openStore(join(folder, "stave.db"));
  await fill(read("people"));
  practice = new Practice(store, "local", new Changes());
}, 60_000);
afterAll(async () => {
  await store.close();
  rmSync(folder, { recursive: true, force: true });
});

test("nobody of that id has no plan", async () => {
  expect(await practice.planned("nobody", NOON)).toBeUndefined();
});

test("what is known is kept until the person's own record, files or day change", async () => {
  const dagny = (await practice.planned("dagny", NOON))!;
  const tobiah = await practice.planned("tobiah", NOON);
  expect(await practice.planned("dagny", NOON + 3_600_000)).toBe(dagny);
  await practice.append("tobiah", [sampleEvent(1, "tobiah")]);
  expect(await practice.planned("dagny", NOON)).toBe(dagny);
  const later = (await practice.planned("tobiah", NOON))!;
  expect(later).not.toBe(tobiah);
  expect(later.events).toEqual([sampleEvent(1, "tobiah")]);
  const tomorrow = (await practice.planned("dagny", NOON + DAY))!;
  expect(tomorrow).not.toBe(dagny);
  expect(tomorrow.today).toBe(dagny.today + 1);
});

test("a set that was recorded changes no plan; the revision that stands is the one kept", async () => {
  const before = (await practice.planned("dagny", NOON))!;
  await practice.append("dagny", [sampleEvent(5, "dagny")]);
  const after = (await practice.planned("dagny", NOON))!;
  expect(after.plan).toEqual(before.plan);
  expect((await store.latestRevision("local", "dagny"))!.plan).toEqual(after.plan);
});

test("another process with the same store makes the same plan, byte for byte", async () => {
  const mine = (await practice.planned("dagny", NOON))!;
  const theirs = (await new Practice(store, "local", new Changes()).planned("dagny", NOON))!;
  expect(canonicalJson(theirs.plan)).toBe(canonicalJson(mine.plan));
});

test("asked many times at once, a plan is made once", async () => {
  const fresh = new Practice(store, "local", new Changes());
  const [first, ...others] = await Promise.all([1, 2, 3, 4].map(() => fresh.planned("tobiah", NOON)));
  for (const other of others) expect(other).toBe(first);
});

test("a person's new file gives a new revision, and the other people keep theirs", async () => {
  const [dagny, tobiah] = [(await practice.planned("dagny", NOON))!, (await practice.planned("tobiah", NOON))!];
  const text = read("people");
  const at = text.indexOf("- id: dagny");
  const changed = text.slice(0, at) + text.slice(at).replace(/minutes: \d+/, "minutes: 25");
  await fill(changed);
  const shorter = (await practice.planned("dagny", NOON))!;
  expect(shorter.person.minutes).toBe(25);
  expect(shorter.plan.id).not.toBe(dagny.plan.id);
  expect(await practice.planned("tobiah", NOON)).toBe(tobiah);
  await fill(text);
  expect((await practice.planned("dagny", NOON))!.plan).toEqual(dagny.plan);
  expect((await store.latestRevision("local", "dagny"))!.id).toBe(dagny.plan.id);
});

test("those who listen hear of what is new in their practice, and only then", async () => {
  const changes = new Changes();
  const heard: string[] = [];
  const stop = changes.listen("local", (person) => heard.push(person));
  changes.listen("other", () => heard.push("other"));
  const telling = new Practice(store, "local", changes);
  await telling.append("dagny", [sampleEvent(8, "dagny")]);
  await telling.append("dagny", [sampleEvent(8, "dagny")]);
  stop();
  await telling.append("dagny", [sampleEvent(9, "dagny")]);
  expect(heard).toEqual(["dagny"]);
});

test("what the coach's own file hides is in no plan made after it, and comes back when the file lets it", async () => {
  const forms = async () => {
    const { plan, catalogue } = (await practice.planned("dagny", NOON))!;
    const slots = plan.phases.flatMap(({ weeks }) =>
      weeks.flatMap(({ sessions }) => sessions.flatMap(({ blocks }) => blocks.flatMap((block) => block.slots))),
    );
    return { ids: new Set(slots.map(({ exercise }) => exercise)), catalogue };
  };
  const before = await forms();
  expect(before.ids).toContain("sit-to-stand-45");
  await store.putDocument("local", "exercises", "own", "stave: 1\nhide: [sit-to-stand-45]\n");
  const hidden = await forms();
  expect(hidden.ids).not.toContain("sit-to-stand-45");
  expect(hidden.catalogue.exercises.get("sit-to-stand-45")?.coachOnly).toBe(true);
  await store.putDocument("local", "exercises", "own", readFileSync("examples/ropewalk/own-exercises.yaml", "utf8"));
  const own = await forms();
  expect(own.ids).toContain("sit-to-stand-45");
  expect((await practice.page("dagny", NOON))!.own.map(({ id }) => id)).toEqual([
    "capstan-touch-squat",
    "rope-drag-seated",
  ]);
  await store.putDocument("local", "exercises", "own", "stave: 1\n");
  expect((await forms()).ids).toEqual(before.ids);
});

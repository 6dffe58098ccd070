import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { day } from "@stave/core/day";
import { readPlaces, readRoster } from "@stave/core/model";
import { afterAll, beforeAll, expect, test } from "vitest";
import { sha256 } from "../made-by.ts";
import { openStore, type Store } from "../store/index.ts";
import { type Filling, fillPractice } from "./fill.ts";
import { readPersonFile } from "./person-file.ts";

const folder = mkdtempSync(join(tmpdir(), "stave-fill-"));
const read = (name: string) => readFileSync(`examples/ropewalk/${name}.yaml`, "utf8");
const places = readPlaces(read("places"), "places.yaml");
const room = places.ok ? places.value.value : [];
const roster = readRoster(read("people"), "people.yaml", room);
const people = roster.ok ? roster.value.value : [];
const programme = read("harbour-steps");

let store: Store;
beforeAll(async () => {
  store = await openStore(join(folder, "stave.db"));
});
afterAll(async () => {
  await store.close();
  rmSync(folder, { recursive: true, force: true });
});

function filling(ids: readonly string[], more: Partial<Filling> = {}): Filling {
  return {
    programmes: new Map([[sha256(programme), programme]]),
    places: read("places"),
    people: read("people"),
    training: people.filter(({ id }) => ids.includes(id)).map((person) => ({ person, programme: sha256(programme) })),
    on: day("2027-01-11"),
    keepStarts: true,
    coach: "Imke Farrowdale",
    call: "Imke Farrowdale, 01632 960 123",
    ...more,
  };
}
const fileOf = async (id: string) => readPersonFile((await store.getDocument("local", "person", id))!.text, room);

test("everything is there and reads as it was written", async () => {
  await fillPractice(store, "local", filling(["dagny", "kofi"]));
  expect((await store.listDocuments("local", "place")).map(({ id }) => id).toSorted()).toEqual(
    room.map(({ id }) => id).toSorted(),
  );
  expect((await store.listDocuments("local", "programme")).map(({ text }) => text)).toEqual([programme]);
  expect((await store.listDocuments("local", "person")).map(({ id }) => id)).toEqual(["dagny", "kofi"]);
  expect(await fileOf("dagny")).toEqual({
    person: people.find(({ id }) => id === "dagny"),
    on: day("2027-01-11"),
    programme: sha256(programme),
    coach: "Imke Farrowdale",
    call: "Imke Farrowdale, 01632 960 123",
  });
});

test("filled again, who was there keeps their first day, unless it is asked for", async () => {
  await fillPractice(store, "local", filling(["dagny", "tobiah"], { on: day("2027-02-01") }));
  expect((await fileOf("dagny")).on).toBe(day("2027-01-11"));
  expect((await fileOf("tobiah")).on).toBe(day("2027-02-01"));
  expect((await fileOf("kofi")).on).toBe(day("2027-01-11"));
  await fillPractice(store, "local", filling(["dagny"], { on: day("2027-03-01"), keepStarts: false }));
  expect((await fileOf("dagny")).on).toBe(day("2027-03-01"));
});

test("a file that somebody altered in the database is not taken for a person", async () => {
  for (const text of ["{}", "[]", '{"v":2}']) expect(() => readPersonFile(text, room)).toThrow();
  const { text } = (await store.getDocument("local", "person", "dagny"))!;
  expect(() => readPersonFile(text.replace("minutes: ", "minuts: "), room)).toThrow("restore it from a backup");
});

import { readFileSync } from "node:fs";
import { readPlaces, readRoster } from "@stave/core/model";
import { expect, test } from "vitest";
import { cutFile } from "./cut-file.ts";

const people = readFileSync("examples/ropewalk/people.yaml", "utf8");
const places = readFileSync("examples/ropewalk/places.yaml", "utf8");

test("every entry stands alone and is read as it was in its file", () => {
  const room = readPlaces(places, "places.yaml");
  const roster = readRoster(people, "people.yaml", room.ok ? room.value.value : undefined);
  if (!room.ok || !roster.ok) throw new Error("the demo's files are read by their own tests");
  const texts = cutFile(people, "people");
  expect([...texts.keys()]).toEqual(roster.value.value.map(({ id }) => id));
  for (const person of roster.value.value) {
    const alone = readRoster(texts.get(person.id)!, "person", room.value.value);
    expect(alone.ok && alone.value.value).toEqual([person]);
  }
  for (const place of room.value.value) {
    const alone = readPlaces(cutFile(places, "places").get(place.id)!, "place");
    expect(alone.ok && alone.value.value).toEqual([place]);
  }
});

test("comments inside an entry stay with it", () => {
  expect(cutFile(places, "places").get("ropewalk")).toContain("# One pair of the 1.25 kg plates");
});

test("a file without such a list has no entries", () => {
  expect(cutFile(places, "people").size).toBe(0);
});

import { readFileSync } from "node:fs";
import { day } from "@stave/core/day";
import { CATALOGUE } from "@stave/core/exercises";
import { cohortReader, readPlaces } from "@stave/core/model";
import { expect, test } from "vitest";
import { FOLLOWER_COLUMNS, madeUpFollowers } from "./made-up-followers.ts";

const ROOM = "examples/ropewalk";

test("the followers of the example are those of seed 1, and everybody's answers can be read", () => {
  const text = readFileSync(`${ROOM}/followers.csv`, "utf8");
  expect(text).toBe(`${[FOLLOWER_COLUMNS, ...madeUpFollowers(1, 8)].join("\n")}\n`);
  const places = readPlaces(readFileSync(`${ROOM}/places.yaml`, "utf8"), "places.yaml");
  if (!places.ok) throw new Error("The places of the example cannot be read");
  const row = (raw: string) => ({ fields: raw.split(","), raw, line: 1 });
  const context = { file: "followers.csv", places: places.value.value, catalogue: CATALOGUE, on: day("2027-01-11") };
  const reader = cohortReader(row(FOLLOWER_COLUMNS), context);
  if (!reader.ok) throw new Error(JSON.stringify(reader.problems));
  for (const line of madeUpFollowers(1, 2000)) expect(reader.value(row(line)).problems).toEqual([]);
});

test("the same seed gives the same people, another seed other ones", () => {
  const lines = (seed: number) => [...madeUpFollowers(seed, 50)];
  expect(lines(2)).toEqual(lines(2));
  expect(lines(2)).not.toEqual(lines(3));
});

import { readFileSync } from "node:fs";
import { printDay } from "@stave/core/day";
import { readPlaces, readRoster } from "@stave/core/model";
import { readAnswers, screen } from "@stave/core/screen";
import { expect, test } from "vitest";

const read = (name: string) => readFileSync(`examples/ropewalk/${name}`, "utf8");

test("Tobiah's answers give the outcome that stands in the roster", () => {
  const places = readPlaces(read("places.yaml"), "places.yaml");
  const roster = readRoster(read("people.yaml"), "people.yaml", places.ok ? places.value.value : []);
  const answers = readAnswers(read("screening-tobiah.yaml"), "screening-tobiah.yaml");
  expect(answers.problems).toEqual([]);
  if (!roster.ok || !answers.ok) throw new Error("the examples cannot be read");
  const tobiah = roster.value.value.find(({ id }) => id === answers.value.value.person)!;
  const { screening } = screen(answers.value.value.answers, answers.value.value.born);
  expect(answers.value.value.born).toBe(tobiah.born);
  expect(screening.outcome).toBe(tobiah.screening?.outcome);
  expect(printDay(screening.on)).toBe(printDay(tobiah.screening!.on));
  expect(screening.until >= tobiah.screening!.until).toBe(true);
});

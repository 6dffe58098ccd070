/** The sheets of the demonstration's people, for tests. */
import { readFileSync } from "node:fs";
import { day } from "@stave/core/day";
import { CATALOGUE } from "@stave/core/exercises";
import { type Person, readPlaces, readProgramme, readRoster } from "@stave/core/model";
import { type SheetAnswer, sheetFor } from "@stave/core/report";
import { datesFor, planFor } from "@stave/core/revise";

const ROOM = "examples/ropewalk";
const ON = day("2027-01-11");

function got<T>(read: { ok: true; value: T } | { ok: false; problems: unknown }): T {
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
}

const text = (name: string) => readFileSync(`${ROOM}/${name}.yaml`, "utf8");
const PLACES = got(readPlaces(text("places"), "places")).value;
export const PEOPLE: readonly Person[] = got(readRoster(text("people"), "people", PLACES)).value;
const PROGRAMMES = ["harbour-steps", "slipway-strength"].map((name) => got(readProgramme(text(name), name)).programme);

/** @param change what is said of the person instead */
export function demoSheet(id: string, paper: "a4" | "us-letter" = "a4", change: Partial<Person> = {}): SheetAnswer {
  const person = { ...PEOPLE.find((each) => each.id === id)!, ...change };
  const place = PLACES.find((each) => each.id === person.place)!;
  const programme = PROGRAMMES.find((each) => each.id === person.programme)!;
  const made = { engine: "", catalogue: "", state: "", decisions: "" };
  const world = { programme, person, place, others: PLACES, catalogue: CATALOGUE, on: ON };
  const plan = planFor({ ...world, programmeHash: "", made });
  const dates = datesFor({ ...world, plan, weeks: plan.phases[0]!.weeks.length });
  return sheetFor({ ...world, plan, paper, dates });
}

import { type Day, day } from "../../core/src/day.ts";
import { CATALOGUE } from "../../core/src/exercises/index.ts";
import {
  type Catalogue,
  type Person,
  type Place,
  type Plan,
  type Programme,
  type Read,
  readPlaces,
  readProgramme,
  readRoster,
} from "../../core/src/model/index.ts";
import { planFor } from "../../core/src/revise/index.ts";

/** The first Monday of the demonstration. */
export const START: Day = day("2027-01-11");

/** The files of the Ropewalk Room, as texts. */
export interface Texts {
  readonly people: string;
  readonly places: string;
  readonly programmes: readonly string[];
}

export interface Room {
  readonly people: readonly Person[];
  readonly places: readonly Place[];
  readonly programmes: readonly Programme[];
  readonly catalogue: Catalogue;
}

function readOrThrow<T>(read: Read<T>): T {
  if (!read.ok) throw new Error(JSON.stringify(read.problems, null, 1));
  return read.value;
}

export function readRoom(texts: Texts): Room {
  const places = readOrThrow(readPlaces(texts.places, "places.yaml")).value;
  const people = readOrThrow(readRoster(texts.people, "people.yaml", places, CATALOGUE)).value;
  const programmes = texts.programmes.map((text) => readOrThrow(readProgramme(text, "programme.yaml")).programme);
  return { people, places, programmes, catalogue: CATALOGUE };
}

/** @returns everybody's plan from the first Monday on, in the order of the people */
export function planEverybody({ people, places, programmes, catalogue }: Room): readonly Plan[] {
  return people.map((person) => {
    const place = places.find(({ id }) => id === person.place)!;
    const programme = programmes.find(({ id }) => id === person.programme)!;
    const others = places.filter((other) => other !== place);
    const made = { engine: "test", catalogue: "test", state: person.id, decisions: "none" };
    return planFor({ programme, person, place, others, catalogue, on: START, made, programmeHash: programme.id });
  });
}

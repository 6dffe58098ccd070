import { day } from "../day.ts";
import type { Person, Place } from "../model/index.ts";

/** A novice who is 40 on 1 March 2027, screened for that year without a reason found; nothing else is known. */
export function madeUpPerson(said: Partial<Person> = {}): Person {
  return {
    id: "somebody",
    name: "Somebody",
    born: day("1987-03-01"),
    status: "novice",
    units: "kg",
    place: "room",
    windows: [],
    minutes: 40,
    rungs: {},
    lifts: [],
    limits: [],
    cautions: [],
    cannot: [],
    likes: [],
    dislikes: [],
    pins: [],
    away: [],
    instead: [],
    screening: { outcome: "no reason found", on: day("2027-01-01"), until: day("2027-12-31"), by: "the coach" },
    ...said,
  };
}

/** A place with nothing in it. */
export function madeUpPlace(said: Partial<Place> = {}): Place {
  return { id: "room", name: "Room", zone: "Europe/London", equipment: {}, ...said };
}

import {
  type Catalogue,
  type Path,
  type Person,
  type Place,
  type Problem,
  type ProgrammeText,
  type Read,
  readPlaces,
  readProgramme,
  readRoster,
  type YamlDocument,
} from "@stave/core/model";
import { sha256 } from "../made-by.ts";
import { readInput } from "./read-input.ts";

export type Got<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] };

export interface ProgrammeFile extends ProgrammeText {
  /** Slots whose dose nobody said, where a plan without doses is taken. */
  readonly unsaid?: readonly Path[];
  readonly file: string;
  readonly hash: string;
}

/** Reads programme files; all problems of all files at once. */
export async function readProgrammes(
  files: readonly string[],
  reader: (text: string, file: string) => Read<ProgrammeText> = readProgramme,
): Promise<Got<readonly ProgrammeFile[]>> {
  const programmes: ProgrammeFile[] = [];
  const problems: Problem[] = [];
  for (const file of files) {
    const input = await readInput(file);
    const read = input.ok ? reader(input.value, file) : input;
    if (read.ok) programmes.push({ ...read.value, file, hash: sha256(read.value.text) });
    else problems.push(...read.problems);
  }
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: programmes };
}

export interface Roster {
  readonly people: readonly Person[];
  readonly places: readonly Place[];
  /** Both files as they were written. */
  readonly texts: { readonly people: string; readonly places: string };
  /** Where a person stands in their file. */
  readonly at: (person: Person) => { readonly file: string; readonly line: number; readonly column: number };
}

function knownZone(zone: string): boolean {
  try {
    new Intl.DateTimeFormat("en", { timeZone: zone });
    return true;
  } catch {
    return false;
  }
}

/** The places of a text where it can be read, and all that is wrong with them. */
function roomsIn(text: string, file: string): { places?: readonly Place[]; problems: readonly Problem[] } {
  const read = readPlaces(text, file);
  if (!read.ok) return { problems: read.problems };
  const { value: places, positions } = read.value;
  const problems = places.flatMap(({ zone }, index): readonly Problem[] => {
    const at = ["places", index, "zone"];
    const wrong = { code: "place/unknown-zone", file, at, ...positions.at(at), found: zone, allowed: "Europe/London" };
    return knownZone(zone) ? [] : [wrong];
  });
  return { places, problems };
}

/** Reads the places of a file. */
export async function readRooms(file: string): Promise<Got<readonly Place[]>> {
  const read = await readInput(file);
  if (!read.ok) return read;
  const { places, problems } = roomsIn(read.value, file);
  return places !== undefined && problems.length === 0 ? { ok: true, value: places } : { ok: false, problems };
}

/**
 * Reads the people and the places they train in; all problems of both files at once.
 *
 * @param catalogue exercises that a roster may name; without it only the form of their names is looked at
 */
export async function readPeople(peopleFile: string, placesFile: string, catalogue?: Catalogue): Promise<Got<Roster>> {
  const [people, places] = [await readInput(peopleFile), await readInput(placesFile)];
  const problems = [people, places].flatMap((read) => (read.ok ? [] : read.problems));
  if (!people.ok || !places.ok) return { ok: false, problems };
  const rooms = roomsIn(places.value, placesFile);
  problems.push(...rooms.problems);
  const roster = readRoster(people.value, peopleFile, rooms.places, catalogue);
  if (!roster.ok) problems.push(...roster.problems);
  return roster.ok && rooms.places !== undefined && problems.length === 0
    ? {
        ok: true,
        value: {
          people: roster.value.value,
          places: rooms.places,
          texts: { people: people.value, places: places.value },
          at: placeIn(roster.value, peopleFile),
        },
      }
    : { ok: false, problems };
}

function placeIn({ value, positions }: YamlDocument<readonly Person[]>, file: string): Roster["at"] {
  return (person) => ({ file, ...positions.at(["people", value.findIndex(({ id }) => id === person.id)]) });
}

/** The place where a person trains; a roster is read against its places, so it is there. */
export function placeOf(person: Person, roster: Roster): Place {
  const place = roster.places.find(({ id }) => id === person.place);
  if (place === undefined) throw new Error(`The roster was read without its place ${person.place}`);
  return place;
}

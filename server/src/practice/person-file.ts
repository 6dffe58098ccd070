import { type Day, day, printDay } from "@stave/core/day";
import { canonicalJson, type Person, type Place, readRoster } from "@stave/core/model";
import { z } from "zod";

/** What is kept of a person: their entry of a roster as it was written, and how they train. */
export interface PersonFile {
  readonly person: Person;
  /** First day of their plan. */
  readonly on: Day;
  /** Content hash of their programme. */
  readonly programme: string;
  readonly coach: string;
  /** Whom to call when a message has not been sent. */
  readonly call: string;
}

const filePiece = z.strictObject({
  v: z.literal(1),
  on: z.string(),
  programme: z.string(),
  coach: z.string(),
  call: z.string(),
  roster: z.string(),
});

/** @param roster a roster that holds this person alone */
export function printPersonFile({ on, programme, coach, call }: Omit<PersonFile, "person">, roster: string): string {
  return canonicalJson({ v: 1, on: printDay(on), programme, coach, call, roster });
}

/** @returns the first day of the plan of a person whose file this is */
export function startIn(text: string): Day {
  return day(filePiece.parse(JSON.parse(text)).on);
}

/** The name under which a practice keeps its coach's own exercises. */
export const OWN_EXERCISES = "own";

/** @throws Error when the text is not what was written: somebody altered the database */
export function readPersonFile(text: string, places: readonly Place[]): PersonFile {
  const { on, programme, coach, call, roster } = filePiece.parse(JSON.parse(text));
  const read = readRoster(roster, "person", places);
  const [person, ...more] = read.ok ? read.value.value : [];
  if (person === undefined || more.length > 0)
    throw new Error("The entry of a person in the database cannot be read; restore it from a backup");
  return { person, on: day(on), programme, coach, call };
}

import { type Day, printDay } from "../day.ts";
import { nearExercises } from "../exercises/index.ts";
import { type Catalogue, type Exercise, matchNames, nameKey, nearNames, type Person } from "../model/index.ts";
import { type DateCell, printDays } from "./dates.ts";
import type { RecordPerson } from "./record-input.ts";
import type { RowNotes } from "./row-notes.ts";
import { repair } from "./taken.ts";

/** The person that a row is about: by id, or by name, and by the day of birth where two share a name. */
export function whoIn(notes: RowNotes, people: readonly RecordPerson[], born: DateCell): RecordPerson | undefined {
  const text = notes.text("person");
  const only = people.length === 1 ? people[0] : undefined;
  if (text === "") {
    if (only === undefined) notes.ask("person", "record/no-person");
    return only;
  }
  const byId = people.find(({ person }) => person.id === text);
  if (byId !== undefined) return byId;
  const same = people.filter(({ person }) => matchNames(person.name, text) === "same");
  const fits = born.kind === "day" ? same.filter(({ person }) => person.born === born.day) : same;
  const [found, ...more] = fits;
  if (found !== undefined && more.length === 0) {
    if (found.person.name !== text) notes.repair("person", repair("record/name-read", found.person.name));
    return found;
  }
  if (found !== undefined) {
    notes.ask("person", "record/person-two", { maybe: fits.map(({ person }) => whoIs(person)).join(", ") });
    return undefined;
  }
  const maybe = people.filter(({ person }) => matchNames(person.name, text) === "maybe");
  if (maybe.length > 0)
    notes.ask("person", "record/person-maybe", { maybe: maybe.map(({ person }) => whoIs(person)).join(", ") });
  else {
    const names = people.flatMap(({ person }) => [person.id, person.name]);
    notes.ask("person", "record/person-unknown", { maybe: nearNames(text, names).join(", ") });
  }
  return undefined;
}

function whoIs({ id, name, born }: Person): string {
  return `${id} (${name}, born ${printDay(born)})`;
}

/** The day of a row: a date that exists, from the person's birth to today. */
export function dayIn(notes: RowNotes, cell: DateCell, { person, today }: RecordPerson): Day | undefined {
  if (cell.kind !== "day") {
    if (cell.kind === "either") notes.ask("day", "record/either-day", { maybe: printDays(cell.maybe) });
    else notes.ask("day", "record/no-day", { allowed: "2027-01-12" });
    return undefined;
  }
  if (cell.day < person.born) {
    notes.ask("day", "record/before-birth", { allowed: `from ${printDay(person.born)}` });
    return undefined;
  }
  if (cell.day > today) {
    notes.ask("day", "record/in-future", { allowed: `up to ${printDay(today)}` });
    return undefined;
  }
  if (cell.turned) notes.repair("day", repair("record/date-read", printDay(cell.day)));
  return cell.day;
}

const byName = new WeakMap<Catalogue, ReadonlyMap<string, Exercise>>();

/** Hyphens are blanks: an id may be written as words. */
function wordsOf(text: string): string {
  return nameKey(text.replace(/[-_ ]+/g, " "));
}

/** Ids, names and synonyms; of two exercises that share a word, the first has it. */
function named(catalogue: Catalogue): ReadonlyMap<string, Exercise> {
  const known = byName.get(catalogue);
  if (known !== undefined) return known;
  const names = new Map<string, Exercise>();
  const exercises = [...catalogue.exercises.values()];
  for (const labels of [({ id, name }: Exercise) => [id, name], ({ synonyms }: Exercise) => synonyms])
    for (const exercise of exercises)
      for (const word of labels(exercise)) if (!names.has(wordsOf(word))) names.set(wordsOf(word), exercise);
  byName.set(catalogue, names);
  return names;
}

/** The exercise that a row names; undefined where it names none, or something is asked. */
export function movementIn(notes: RowNotes, catalogue: Catalogue): Exercise | undefined {
  const text = notes.text("movement");
  if (text === "") return undefined;
  const words = wordsOf(text);
  const found = named(catalogue).get(words) ?? named(catalogue).get(words.replace(/s$/, ""));
  if (found === undefined) {
    const maybe = nearExercises(catalogue, text).map(({ id }) => id);
    notes.ask("movement", "record/movement-unknown", { maybe: maybe.join(", ") });
    return undefined;
  }
  if (![found.id, found.name].some((word) => wordsOf(word) === wordsOf(text)))
    notes.repair("movement", repair("record/movement-read", found.id));
  return found;
}

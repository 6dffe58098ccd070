import type { Person } from "./person.ts";
import { nameKey } from "./same-name.ts";

type Named = Pick<Person, "id" | "name" | "alike">;

/**
 * A person's name as it stands on a sheet that lies about in a room: first name and the initial of the last.
 *
 * A name of one word, and one in a script without capital letters, stay whole.
 *
 * @example
 * shortName("Dagny Thistlemere") //=> "Dagny T."
 */
function shortName(name: string): string {
  const parts = name.trim().split(/\s+/);
  const last = parts.at(-1)!;
  const initial = [...last][0]!;
  const hasCase = initial.toUpperCase() !== initial.toLowerCase();
  if (parts.length < 2 || !hasCase) return name.trim();
  return `${parts.slice(0, -1).join(" ")} ${initial.toUpperCase()}.`;
}

/** A person's name on paper in a room; beside it the id of those who are written alike. */
export function nameOnSheet({ id, name, alike }: Named): string {
  return alike === true ? `${shortName(name)} (${id})` : shortName(name);
}

/** A person's name among those of a roster, as the coach reads it: whole, and the id of those who are written alike. */
export function nameOnRoster({ id, name, alike }: Named): string {
  return alike === true ? `${name} (${id})` : name;
}

/** The people of one roster; those whose names are the same on a sheet are marked. */
export function markAlike(people: readonly Person[]): readonly Person[] {
  const count = new Map<string, number>();
  const keyOf = ({ name }: Person) => nameKey(shortName(name));
  for (const person of people) count.set(keyOf(person), (count.get(keyOf(person)) ?? 0) + 1);
  return people.map((person) => (count.get(keyOf(person))! > 1 ? { ...person, alike: true } : person));
}

import type { Person } from "./person.ts";
import { nameKey } from "./same-name.ts";

type Named = Pick<Person, "id" | "name">;

const NOBODY: ReadonlySet<string> = new Set();

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

/** @returns the ids of those of a roster whose names are the same on a sheet */
export function writtenAlike(people: readonly Named[]): ReadonlySet<string> {
  const keyOf = ({ name }: Named) => nameKey(shortName(name));
  const count = new Map<string, number>();
  for (const person of people) count.set(keyOf(person), (count.get(keyOf(person)) ?? 0) + 1);
  return new Set(people.filter((person) => count.get(keyOf(person))! > 1).map(({ id }) => id));
}

/** A person's name on paper in a room; beside it the id where somebody else is written alike. */
export function nameOnSheet({ id, name }: Named, alike = NOBODY): string {
  return alike.has(id) ? `${shortName(name)} (${id})` : shortName(name);
}

/** A person's name among others, as the coach reads it: whole, and the id where somebody else is written alike. */
export function nameOnRoster({ id, name }: Named, alike: ReadonlySet<string>): string {
  return alike.has(id) ? `${name} (${id})` : name;
}

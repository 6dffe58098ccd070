import type { PeopleOutput } from "@stave/core/api";
import type { Order } from "../address/index.ts";

export type Line = PeopleOutput["people"][number];

/** Without capitals and accents, so that "loic" finds Loïc. */
function plain(text: string): string {
  return text
    .normalize("NFD")
    .replace(/\p{Mn}/gu, "")
    .toLowerCase();
}

const collator = new Intl.Collator(undefined, { sensitivity: "base", numeric: true });
const byText = (of: (line: Line) => string) => (a: Line, b: Line) => collator.compare(of(a), of(b));
/** Later than every day, so that what is not there comes last. */
const NEVER = "9999";

const ORDER: Readonly<Record<Order, (a: Line, b: Line) => number>> = {
  name: byText(({ name }) => name),
  programme: byText(({ programme }) => programme),
  // Who has been silent longest comes first, and longest of all who never recorded anything.
  last: byText(({ last }) => last ?? ""),
  next: byText(({ next }) => (next === undefined ? NEVER : `${next.day} ${String(next.from).padStart(4, "0")}`)),
  waiting: (a, b) => b.waiting - a.waiting,
};

/**
 * The people whose name or programme has every word of a text in it.
 *
 * @param text as typed; empty finds all
 */
export function findPeople(people: readonly Line[], text: string, by: Order): readonly Line[] {
  const wanted = plain(text)
    .split(/\s+/)
    .filter((word) => word !== "");
  return people
    .filter(({ name, programme }) => {
      const has = plain(`${name} ${programme}`);
      return wanted.every((word) => has.includes(word));
    })
    .sort((a, b) => ORDER[by](a, b) || ORDER.name(a, b));
}

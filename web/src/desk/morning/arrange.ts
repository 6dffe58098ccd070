import type { Morning, MorningPerson } from "@stave/core/api";

type People = Morning["people"];
const nameOf = (person: MorningPerson) => person.person.id;
const proposalOf = (item: MorningPerson["items"][number]) => item.proposal.proposal;

/** Puts back what a fresh list no longer has: each kept thing behind the one that stood before it. */
function putBack<T>(shown: readonly T[], fresh: readonly T[], keep: (each: T) => boolean, name: (each: T) => string) {
  const list = [...fresh];
  const has = new Set(fresh.map(name));
  shown.forEach((each, index) => {
    if (has.has(name(each)) || !keep(each)) return;
    has.add(name(each));
    const before = shown.slice(0, index).findLast((other) => has.has(name(other)));
    list.splice(before === undefined ? 0 : list.findIndex((other) => name(other) === name(before)) + 1, 0, each);
  });
  return list;
}

/**
 * A fresh list, in which what was decided on this page keeps its place although the server no longer lists it.
 *
 * @param kept proposals that were answered here
 */
export function arrange(shown: People, fresh: People, kept: ReadonlySet<string>): People {
  const isKept = (item: MorningPerson["items"][number]) => kept.has(proposalOf(item));
  const still = shown.map((person) => ({ ...person, items: person.items.filter(isKept) }));
  const people = putBack(still, fresh, ({ items }) => items.length > 0, nameOf);
  const before = new Map(shown.map((person) => [nameOf(person), person.items]));
  return people.map((person) => ({
    ...person,
    items: putBack(before.get(nameOf(person)) ?? [], person.items, isKept, proposalOf),
  }));
}

/** True when two lists have the same rows in the same order, so that nothing on the page moves. */
export function sameRows(one: People, other: People): boolean {
  const rows = (people: People) =>
    JSON.stringify(people.map((each) => [nameOf(each), each.items.map(proposalOf), each.notes]));
  return rows(one) === rows(other);
}

import { readResults, startingRungs } from "@stave/core/assess";
import { type Day, printDay } from "@stave/core/day";
import { type Catalogue, nearNames, type Person, type Problem } from "@stave/core/model";
import { readInput } from "./read-input.ts";
import type { Got } from "./world.ts";

/**
 * People with the starting rungs of their tests up to a day. What the roster says of a ladder stays: the coach's own hand
 * wins over a test.
 *
 * @param files results of tests, a file for each person or several
 */
export async function withTests(
  people: readonly Person[],
  files: readonly string[],
  on: Day,
  catalogue: Catalogue,
): Promise<Got<readonly Person[]>> {
  const problems: Problem[] = [];
  const tested = new Map<string, Person["rungs"]>();
  for (const file of files) {
    const input = await readInput(file);
    const read = input.ok ? readResults(input.value, file) : input;
    if (!read.ok) {
      problems.push(...read.problems);
      continue;
    }
    const { value, positions } = read.value;
    const at = (name: string) => ({ file, at: [name], ...positions.at([name]) });
    const person = people.find(({ id }) => id === value.person);
    if (person === undefined) {
      const ids = people.map(({ id }) => id);
      const maybe = nearNames(value.person, ids)[0];
      problems.push({
        code: "person/unknown",
        ...at("person"),
        found: value.person,
        allowed: ids.slice(0, 12).join(", "),
        ...(maybe === undefined ? {} : { maybe }),
      });
    } else if (person.born !== value.born) {
      const [found, allowed] = [printDay(value.born), printDay(person.born)];
      problems.push({ code: "results/other-born", ...at("born"), found, allowed });
    } else {
      const results = value.results.filter((result) => result.on <= on);
      const { rungs } = startingRungs({ ...value, results }, catalogue);
      const found = Object.fromEntries(rungs.map(({ ladder, exercise }) => [ladder, exercise]));
      tested.set(person.id, { ...tested.get(person.id), ...found });
    }
  }
  if (problems.length > 0) return { ok: false, problems };
  return {
    ok: true,
    value: people.map((person) =>
      tested.has(person.id) ? { ...person, rungs: { ...tested.get(person.id), ...person.rungs } } : person,
    ),
  };
}

import { addDays, ageOn, civil, type Day, parseDay } from "../day.ts";
import type { Person } from "../model/index.ts";

/** Age from which the row for minors no longer binds by itself. */
export const ADULT_AT = 18;

/**
 * The last day on which what binds a person surely stays as it is on a given day.
 *
 * The day before the next of: a caution begins or comes up for re-check, a limit begins or is lifted, a screening is
 * entered, the 18th birthday; or the last day of a limit or of the screening. Undefined when no such day lies ahead.
 */
export function holdsUntil(person: Person, on: Day): Day | undefined {
  const { cautions, limits, screening } = person;
  const changes: (Day | undefined)[] = [
    ...cautions.flatMap((caution) => [caution.from, caution.recheck]),
    ...limits.flatMap((limit) => [limit.from, addDays(limit.to, 1), limit.lifted?.on]),
    ...(screening === undefined ? [] : [screening.on, addDays(screening.until, 1), screening.agreed?.on]),
    ageOn(person.born, on) < ADULT_AT ? birthday(person.born, ADULT_AT) : undefined,
  ];
  const ahead = changes.filter((change) => change !== undefined && change > on);
  return ahead.length === 0 ? undefined : addDays(Math.min(...(ahead as Day[])) as Day, -1);
}

/** Someone born on 29 February turns a year older on 1 March of a common year. */
function birthday(born: Day, age: number): Day {
  const { year, month, date } = civil(born);
  const written = (m: number, d: number) =>
    parseDay(`${String(year + age).padStart(4, "0")}-${String(m).padStart(2, "0")}-${String(d).padStart(2, "0")}`);
  return written(month, date) ?? written(3, 1)!;
}

import { addDays, type Day, printDay, weekdayOf } from "../day.ts";
import type { Person, Place, Window } from "../model/index.ts";
import type { TaskWindow } from "./task.ts";

interface Hours {
  readonly from: number;
  readonly to: number;
}

/**
 * When can this person train on each of the coming days?
 *
 * Weekly windows, or those of the rota when there is one, or what holds instead on that day; without the days away and
 * without the hours when the place is shut. A window that names another place is cut by the hours of that place, if it is among `others`; a place whose
 * hours nobody has said cuts nothing. Short pieces are kept: whether a session fits into one is for the calendar.
 *
 * @param from first day
 * @param days how many
 * @returns for each day its windows, earliest first
 */
export function windowsOf(
  person: Person,
  place: Place,
  from: Day,
  days: number,
  others: readonly Place[] = [],
): readonly (readonly TaskWindow[])[] {
  return Array.from({ length: days }, (_, index) => {
    const day = addDays(from, index);
    if (person.away.some((away) => away.from <= day && day <= away.to)) return [];
    return statedFor(person, day)
      .flatMap((window) => {
        const at = window.place === undefined ? place : [place, ...others].find(({ id }) => id === window.place);
        return cut(window, openOn(at, day)).map(
          (hours): TaskWindow =>
            window.place === undefined
              ? { ...hours, cost: window.cost }
              : { ...hours, cost: window.cost, place: window.place },
        );
      })
      .sort((a, b) => a.from - b.from || a.to - b.to);
  });
}

/** @returns how many days the weeks of this person have: 7, or the length of their rota */
export function weekDaysOf(person: Pick<Person, "cycle">): number {
  return person.cycle?.length ?? 7;
}

function statedFor(person: Person, day: Day): readonly Pick<Window, "from" | "to" | "cost" | "place">[] {
  const { cycle } = person;
  const instead = person.instead.find(({ from, to }) => from <= day && day <= to);
  if (instead) return instead.windows.filter((window) => window.day === weekdayOf(day));
  if (!cycle) return person.windows.filter((window) => window.day === weekdayOf(day));
  const at = (((day - cycle.anchor) % cycle.length) + cycle.length) % cycle.length;
  return cycle.days.filter((one) => one.day === at);
}

/** Hours when a place is open on a day, of a holiday its own, those that touch made one; undefined when nobody has said. */
function openOn(place: Place | undefined, day: Day): readonly Hours[] | undefined {
  const today = printDay(day);
  const holiday = place?.holidays?.find(({ from, to }) => from <= today && today <= to);
  const open = holiday === undefined ? place?.open : holiday.open;
  if (!open) return undefined;
  const hours: Hours[] = [];
  for (const next of open.filter((one) => one.day === weekdayOf(day)).sort((a, b) => a.from - b.from)) {
    const last = hours.at(-1);
    if (last && next.from <= last.to) hours[hours.length - 1] = { from: last.from, to: Math.max(last.to, next.to) };
    else hours.push({ from: next.from, to: next.to });
  }
  return hours;
}

function cut(window: Hours, open: readonly Hours[] | undefined): Hours[] {
  if (!open) return [{ from: window.from, to: window.to }];
  return open
    .map(({ from, to }) => ({ from: Math.max(from, window.from), to: Math.min(to, window.to) }))
    .filter(({ from, to }) => from < to);
}

import { afterAMiss, explainPlacements, sessionsAWeek, waysOfWeek } from "../../core/src/calendar/index.ts";
import { addDays } from "../../core/src/day.ts";
import { MISS_CAUSES, type Person, type Plan } from "../../core/src/model/index.ts";
import { datesFor } from "../../core/src/revise/index.ts";
import { type Room, START } from "./plan-everybody.ts";

/** Everybody's person as in the roster, and as they would be with a week of other hours, a plan that waits, and days away. */
function livesOf(person: Person): readonly Person[] {
  const instead = [
    {
      from: addDays(START, 7),
      to: addDays(START, 13),
      windows: (["tue", "thu", "sat"] as const).map((on) => ({ day: on, from: 450, to: 540, cost: 2 })),
    },
  ];
  const waits = { from: addDays(START, 15), to: addDays(START, 18), waits: true as const };
  const away = [...person.away, waits, { from: addDays(START, 22), to: addDays(START, 26) }];
  return [person, { ...person, instead, away }];
}

/** @returns everybody's days, why they are so, the other ways of each week, and what follows a first session missed */
export function dateEverybody({ people, places, programmes, catalogue }: Room, plans: readonly Plan[]): unknown {
  return people.map((one) =>
    livesOf(one).map((person) => {
      const place = places.find(({ id }) => id === person.place)!;
      const programme = programmes.find(({ id }) => id === person.programme)!;
      const plan = plans.find((each) => each.person === person.id)!;
      const others = places.filter((other) => other !== place);
      const dated = datesFor({ plan, programme, person, place, others, catalogue, on: START, weeks: 4 });
      const { task, placed } = dated;
      const [first] = placed.placements;
      const days = placed.placements.map(({ day }) => day);
      return {
        person: person.id,
        placed,
        notAsUsual: dated.notAsUsual,
        explained: explainPlacements(task, placed),
        weeks: [...new Set(task.sessions.map(({ week }) => week))].map((week) => waysOfWeek(task, placed, week)),
        aWeek: sessionsAWeek(days, "sun"),
        misses: MISS_CAUSES.map((because) => {
          if (first === undefined) return because;
          const { answer, skipped, why, placed: then } = afterAMiss(task, placed, { session: first.session, because });
          return { because, answer, skipped, why, placements: then.placements };
        }),
      };
    }),
  );
}

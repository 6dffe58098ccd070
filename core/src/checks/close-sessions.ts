import { HARD_SETS, type NearSets, nearSets } from "../measures/index.ts";
import { MUSCLES, type Muscle } from "../model/index.ts";
import { NO_LEAST } from "../tables/index.ts";
import { doseWith } from "./cures/block-sets.ts";
import type { Change } from "./run/change.ts";
import type { Check, Cure, Facts, Found } from "./run/check.ts";
import type { Look } from "./run/look.ts";
import { pathOf, sessionPath } from "./run/walk.ts";
import { trainingDaysOf } from "./training-days.ts";

type Data = Facts & { readonly phase: string; readonly session: string; readonly hours: number };

/** Hours wanted between sessions that load a muscle hard, where the programme does not say. Source: garber2011. */
const USUAL_GAP_HOURS = 48;
const DAY_HOURS = 24;
const WEEK_DAYS = 7;

/** Calves and forearms work every day and are left out. Ours, no source. */
const JUDGED = MUSCLES.filter((muscle) => !NO_LEAST.includes(muscle));

type Near = ReadonlyMap<Muscle, NearSets>;

/** Two sessions of a week that load the same muscles hard. */
interface Pair {
  readonly earlier: number;
  readonly later: number;
  /** Muscles that both drive hard. */
  readonly both: readonly Muscle[];
  /** Muscles that both load hard, in one of them only as helpers. */
  readonly helping: readonly Muscle[];
}
interface Close extends Pair {
  readonly hours: number;
}

function shares(a: Near, b: Near): Pick<Pair, "both" | "helping"> {
  const drives = (near: Near, muscle: Muscle) => {
    const found = near.get(muscle);
    return found !== undefined && found.direct >= HARD_SETS;
  };
  const loads = (near: Near, muscle: Muscle) => {
    const found = near.get(muscle);
    return found !== undefined && found.direct + found.helping >= HARD_SETS;
  };
  const both = JUDGED.filter((muscle) => drives(a, muscle) && drives(b, muscle));
  const either = (muscle: Muscle) => drives(a, muscle) || drives(b, muscle);
  const helping = JUDGED.filter(
    (muscle) => !both.includes(muscle) && either(muscle) && loads(a, muscle) && loads(b, muscle),
  );
  return { both, helping };
}

/** Every way to give the sessions of a week days in their order. */
function waysToPlace(count: number, days: readonly number[]): readonly (readonly number[])[] {
  if (count === 0) return [[]];
  return days.flatMap((day, index) => waysToPlace(count - 1, days.slice(index + 1)).map((rest) => [day, ...rest]));
}

/** Every two sessions that share a muscle, each of the two once as the earlier one, since the week comes again. */
function pairsOf(near: readonly Near[]): readonly Pair[] {
  return near.flatMap((mine, earlier) =>
    near.flatMap((other, later): readonly Pair[] => {
      if (later === earlier) return [];
      const shared = shares(mine, other);
      return shared.both.length + shared.helping.length === 0 ? [] : [{ earlier, later, ...shared }];
    }),
  );
}

/** The pairs that stand too close when the sessions have these days, the week coming again and again. */
function closeOn(days: readonly number[], pairs: readonly Pair[], gap: number): readonly Close[] {
  return pairs.flatMap((pair): readonly Close[] => {
    const between = (days[pair.later]! - days[pair.earlier]! + WEEK_DAYS) % WEEK_DAYS;
    const hours = between * DAY_HOURS;
    return hours >= gap ? [] : [{ ...pair, hours }];
  });
}

/** What cannot be avoided: the close sessions of the days on which fewest muscles are loaded hard too soon. */
function unavoidable(near: readonly Near[], days: readonly number[], gap: number): readonly Close[] {
  const pairs = pairsOf(near);
  const sum = (close: readonly Close[], of: "both" | "helping") =>
    close.reduce((all, each) => all + each[of].length, 0);
  let best: readonly Close[] | undefined;
  for (const way of waysToPlace(near.length, days)) {
    const close = closeOn(way, pairs, gap);
    if (close.length === 0) return [];
    const better =
      best === undefined ||
      sum(close, "both") < sum(best, "both") ||
      (sum(close, "both") === sum(best, "both") && sum(close, "helping") < sum(best, "helping"));
    if (better) best = close;
  }
  return best ?? [];
}

/** In the later session, fewer sets of the straight slots that drive the muscles, so that none is loaded hard. */
function fewerSets(look: Look, phaseAt: number, { later, both }: Close): readonly Cure[] {
  const names: { slot: string; name: string; from: number; to: number }[] = [];
  const changes: Change[] = [];
  for (const muscle of both) {
    const drives = look.slots.filter(
      (place) =>
        place.phaseAt === phaseAt &&
        place.sessionAt === later &&
        look.catalogue.exercises.get(place.slot.first)?.muscles[muscle] === 1,
    );
    for (const place of drives) {
      if (!("slot" in place.block) || place.slot.changes !== undefined) return [];
      if (names.some(({ slot }) => slot === place.slot.slot)) continue;
      const from = place.slot.dose.sets.length;
      const to = Math.max(1, Math.floor((HARD_SETS - 1) / drives.length));
      if (from <= to) continue;
      const name = look.catalogue.exercises.get(place.slot.first)!.name;
      names.push({ slot: place.slot.slot, name, from, to });
      changes.push({ op: "set", at: [...pathOf(place), "dose"], value: doseWith(place.slot.dose, to - from) });
    }
  }
  return changes.length === 0 ? [] : [{ id: "fewer-sets", group: "sets", data: { slots: names }, changes }];
}

/**
 * Sessions of a week that load the same muscle hard too soon after one another, on whatever days they are put: of all
 * ways to give them days in their order, one a day, the best still has this. With fewer days than sessions nothing is told. The days are those of the person where one
 * is given. It warns where both drive the muscle in three sets or more that end with at most three in reserve; where it
 * only helps in one of them it is a note. Light weeks are not judged.
 *
 * The remedy takes sets away from the later session.
 */
export const closeSessions: Check<"week/close-sessions", Data> = {
  id: "week/close-sessions",
  severity: "warn",
  sources: ["garber2011", "ours"],
  run(look) {
    const { programme, person, catalogue } = look;
    if (person?.cycle !== undefined) return [];
    const wanted = programme.weekly?.gap ?? USUAL_GAP_HOURS;
    const days = trainingDaysOf(person);
    return programme.phases.flatMap((phase, phaseAt): readonly Found<Data>[] => {
      const week = look.weeks[phaseAt]!.find(({ light }) => !light);
      if (week === undefined) return [];
      const near = week.sessions.map((session) => nearSets(session, catalogue));
      return unavoidable(near, days, wanted).map((close): Found<Data> => {
        const { earlier, later, hours, both, helping } = close;
        const [before, session] = [phase.sessions[earlier]!, phase.sessions[later]!];
        const muscles = both.length > 0 ? both : helping;
        return {
          at: sessionPath(phaseAt, later),
          severity: both.length > 0 ? "warn" : "note",
          data: {
            phase: phase.key,
            session: session.key,
            side: before.key,
            title: session.title,
            before: before.title,
            hours,
            wanted,
            muscles,
            helping: both.length === 0,
            days: person === undefined ? null : days.length,
          },
          cures: () => fewerSets(look, phaseAt, close),
        };
      });
    });
  },
};

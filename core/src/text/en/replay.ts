import type { Move, Occasion, Replayed, Rule, Seen } from "../../replay/index.ts";
import type { Names } from "../names.ts";
import { plural, printNumber } from "./number.ts";
import { printLoad } from "./units.ts";

const MOVES: Readonly<Record<Move, string>> = { up: "a load more", same: "the same load", back: "a load back" };
const OUTCOMES: Readonly<Record<Occasion["outcome"], string>> = {
  done: "done as asked",
  short: "fell short",
  hurt: "it hurt",
  "not entered": "not entered",
};

function share({ done }: Seen): string {
  if (done === undefined) return "none of them entered";
  const [value, low, high] = [done.value, done.low, done.high].map((each) => printNumber(100 * each, 0));
  return `done as asked ${value} % (95 %: ${low} to ${high}) of ${plural(done.n, "session", "sessions")} entered`;
}

function agreement(seen: Seen): string {
  return `    ${MOVES[seen.ruled]}, ${plural(seen.occasions, "time", "times")}: ${share(seen)}`;
}

function difference(seen: Seen): string {
  return `    the rule: ${MOVES[seen.ruled]}; asked: ${MOVES[seen.decided]}; ${plural(seen.occasions, "time", "times")}. What was asked: ${share(seen)}. What the rule would have led to was not seen.`;
}

/** @param dayOf the day on which somebody trained, as it is read */
export function sayReplay(
  { title }: Rule,
  { people, movements, agreed, differed, after, notCompared, occasions, open }: Replayed,
  names: Names,
  dayOf: (occasion: Occasion) => string,
): string {
  const first = occasions.filter(({ counts, ruled, decided }) => counts && ruled !== decided);
  return [
    `${title}: ${plural(people, "person", "people")}, ${plural(movements, "movement", "movements")}, ${plural(occasions.length, "session", "sessions")} compared`,
    ...(agreed.length === 0
      ? ["  The rule never said what was asked, so nothing was seen of it."]
      : ["  Where the rule would have said what was asked:", ...agreed.map(agreement)]),
    ...(differed.length === 0 ? [] : ["  Where it first would have said something else:", ...differed.map(difference)]),
    ...first.map(
      (one) =>
        `      ${one.person}, ${names.exercise(one.exercise)} (${one.slot}), ${dayOf(one)}, after ${printLoad(one.load.before)}: the rule ${MOVES[one.ruled]}; asked ${printLoad(one.load.asked)}, ${OUTCOMES[one.outcome]}`,
    ),
    `  ${plural(after, "session", "sessions")} after the first difference of a person and movement tell nothing of the rule; ${printNumber(notCompared)} could not be compared (another form, another range or no load).`,
    ...(open.length === 0 ? [] : ["  Of the next session it says:"]),
    ...open.map(
      ({ person, exercise, slot, ruled, load }) =>
        `      ${person}, ${names.exercise(exercise)} (${slot}), after ${printLoad(load)}: ${MOVES[ruled]}`,
    ),
    "  A record shows what came of what was asked. It cannot tell what would have come of anything else.",
  ].join("\n");
}

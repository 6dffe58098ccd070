import { numbers } from "./numbers.ts";

/** Answers and how many of a hundred people give them. Nothing in it is anybody's data. */
type Shares<T> = readonly (readonly [T, number])[];

/** Kits: places of the made-up room. */
const PLACES: Shares<string> = [
  ["wren-home", 28],
  ["lockhollow-garage", 20],
  ["customs-house-gym", 20],
  ["ropewalk", 14],
  ["lantern-hall-14", 8],
  ["breakwater-school", 6],
  ["lorry-cab", 4],
];
/** Where people stand: status, then the forms that they know on two ladders. */
const LEVELS: Shares<readonly [status: string, squat: string, pushUp: string]> = [
  [["novice", "", ""], 40],
  [["novice", "body-squat", "counter-push-up"], 30],
  [["intermediate", "goblet-squat", "floor-push-up"], 22],
  [["advanced", "back-squat", "push-up-feet-30"], 8],
];
const MINUTES: Shares<number> = [
  [20, 20],
  [30, 35],
  [45, 30],
  [60, 15],
];
const DAYS: Shares<number> = [
  [2, 45],
  [3, 55],
];
const CAUTIONS: Shares<string> = [
  ["", 62],
  ["back", 10],
  ["knee", 9],
  ["shoulder", 7],
  ["wrist", 4],
  ["pressure", 3],
  ["larger", 2],
  ["hip", 1],
  ["bone", 1],
  ["diabetes", 1],
];
const OUTCOMES: Shares<string> = [
  ["no reason found", 80],
  ["start light to moderate", 20],
];

export const FOLLOWER_COLUMNS = "id,born,status,place,minutes,days,outcome,screened,until,cautions,squat,push-up";

/**
 * Seeded followers of a published programme, as lines of a table: each answers a coarse questionnaire, with a kit by its
 * name, a level, minutes and days in steps and at most one caution.
 */
export function* madeUpFollowers(seed: number, count: number): Generator<string> {
  const next = numbers(seed);
  const oneOf = <T>(shares: Shares<T>): T => {
    let left = next() * shares.reduce((sum, [, share]) => sum + share, 0);
    for (const [answer, share] of shares) {
      left -= share;
      if (left < 0) return answer;
    }
    return shares[0]![0];
  };
  const two = (value: number) => String(value).padStart(2, "0");
  const date = (from: number, years: number, firstMonth = 1) => {
    const [year, month] = [from + Math.floor(next() * years), firstMonth + Math.floor(next() * (13 - firstMonth))];
    return `${year}-${two(month)}-${two(1 + Math.floor(next() * 28))}`;
  };
  for (let n = 1; n <= count; n++) {
    const [status, squat, pushUp] = oneOf(LEVELS);
    const fields = [
      `follower-${n}`,
      date(1948, 60),
      status,
      oneOf(PLACES),
      oneOf(MINUTES),
      oneOf(DAYS),
      oneOf(OUTCOMES),
      date(2026, 1),
      // Nobody's screening has run out in January: then it is told with its day, and there would be a class for each.
      date(2027, 1, 2),
      oneOf(CAUTIONS),
      squat,
      pushUp,
    ];
    yield fields.join(",");
  }
}

import { NOTICE_GIVEN, noticeGiven, TURNS_AT_STATION, turnsAtStation } from "../equations/index.ts";
import type { Figure, Reckoning } from "./reckoning.ts";

const PEOPLE = ["first", "second", "third"] as const;

const turns: Reckoning = {
  name: "take-turns",
  asks: [
    { key: "set", dimension: "time" },
    { key: "change", dimension: "time" },
    { key: "first-sets", dimension: "count" },
    { key: "first-rest", dimension: "time" },
    { key: "second-sets", dimension: "count" },
    { key: "second-rest", dimension: "time" },
    { key: "third-sets", dimension: "count", optional: true },
    { key: "third-rest", dimension: "time", optional: true },
  ],
  about: () => [TURNS_AT_STATION],
  figures: (given) => {
    const asked = PEOPLE.flatMap((who) => {
      const [sets, restS] = [given.numberIf(`${who}-sets`), given.numberIf(`${who}-rest`)];
      if ((sets === undefined) !== (restS === undefined))
        throw new RangeError(`Cannot take turns as the ${who} person's sets and rest must both be there`);
      return sets === undefined || restS === undefined ? [] : [{ who, sets, restS }];
    });
    const found = turnsAtStation(asked, given.number("set"), given.number("change"));
    const { source } = TURNS_AT_STATION;
    return [
      ...asked.flatMap(({ who }, at): readonly Figure[] => {
        const { restS, waitS, freeRounds } = found.got[at]!;
        return [
          { what: `${who}-rests`, source, value: restS, unit: "s", decimals: 0 },
          ...(waitS > 0 ? [{ what: `${who}-waits`, source, value: waitS, unit: "s", decimals: 0 }] : []),
          ...(freeRounds > 0 ? [{ what: `${who}-free`, source, value: freeRounds, decimals: 0 }] : []),
        ];
      }),
      { what: "turns-rounds", source, value: found.rounds, decimals: 0 },
      { what: "turns-minutes", source, value: found.totalS / 60, unit: "min", decimals: 1 },
      { what: "turns-crowded", source, value: found.crowded ? "one person to another station" : "fits" },
    ];
  },
};

const calledOff: Reckoning = {
  name: "called-off",
  asks: [
    { key: "session", clock: "wall" },
    { key: "called-off", clock: "wall" },
    { key: "rule", dimension: "time" },
    { key: "by", of: ["person", "coach"] },
    { key: "because", of: ["ill", "other"] },
    { key: "ill-is-free", of: ["yes", "no"] },
    { key: "left", dimension: "count" },
  ],
  about: () => [NOTICE_GIVEN],
  figures: (given) => {
    const { hours, inTime, costs, left } = noticeGiven({
      sessionMin: given.number("session"),
      calledOffMin: given.number("called-off"),
      ruleH: given.number("rule") / 3600,
      by: given.word("by"),
      because: given.word("because"),
      illIsFree: given.word("ill-is-free") === "yes",
      left: given.number("left"),
    });
    const { source } = NOTICE_GIVEN;
    return [
      { what: "notice", source, value: hours, unit: "h", decimals: 2 },
      { what: "notice-in-time", source, value: inTime ? "yes" : "no" },
      { what: "notice-costs", source, value: costs, decimals: 0 },
      { what: "pack-left", source, value: left, decimals: 0 },
    ];
  },
};

/** What happens around the sessions of one room. */
export const ROOM: readonly Reckoning[] = [turns, calledOff];

import { TURNS_AT_STATION, turnsAtStation } from "../equations/index.ts";
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

/** What happens on the floor of one room. */
export const ROOM: readonly Reckoning[] = [turns];

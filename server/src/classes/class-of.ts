import { type Seen, seer } from "@stave/core/cohort";
import type { Day } from "@stave/core/day";
import { CATALOGUE } from "@stave/core/exercises";
import { type Catalogue, canonicalJson, type Person, type Place, type Plan, type Programme } from "@stave/core/model";
import { catalogueHash, ENGINE, sha256 } from "../made-by.ts";

/** People who get the same plan. */
export interface PeopleClass {
  /** Names everything that the plan is made from: equal keys mean equal plans, also in another run. */
  readonly key: string;
  /** Names the class but for minutes and days: those with an equal one have most of their work in common. */
  readonly kin: string;
  readonly seen: Seen;
  readonly made: Plan["made"];
}

const KEY_DIGITS = 32;

/** @returns a function from a person to their class, for one programme from one day on */
export function classifier(
  { programme, hash }: { readonly programme: Programme; readonly hash: string },
  places: readonly Place[],
  on: Day,
  catalogue: Catalogue = CATALOGUE,
): (person: Person) => PeopleClass {
  const see = seer({ programme, places, catalogue, on });
  const placeTexts = new Map(places.map((place) => [place.id, canonicalJson(place)]));
  return (person) => {
    const { person: nobody, perWeek } = see(person);
    const state = sha256(`${canonicalJson({ nobody, perWeek, on })}${placeTexts.get(person.place)}`);
    const decisions = sha256(canonicalJson(nobody.pins));
    const made = { engine: ENGINE, catalogue: catalogueHash(catalogue), state, decisions };
    const key = sha256(canonicalJson({ made, hash })).slice(0, KEY_DIGITS);
    const kin = canonicalJson({ ...nobody, minutes: 0 });
    return { key, kin, seen: { person: { ...nobody, id: key }, perWeek }, made };
  };
}

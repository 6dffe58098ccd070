import type { PeopleOutput, PersonOutput } from "../api/index.ts";
import type { PlannedPerson } from "./situation.ts";

/** One person: plan with reasons, record, what waits, what was decided. */
export function personPage(_person: PlannedPerson): PersonOutput {
  throw new Error("personPage is being written");
}

/** One line of the list of people. */
export function personLine(_person: PlannedPerson): PeopleOutput["people"][number] {
  throw new Error("personLine is being written");
}

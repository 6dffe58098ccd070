import type { Morning } from "../api/index.ts";
import type { Day } from "../day.ts";
import type { PlannedPerson } from "./situation.ts";

/** The morning list: who needs the coach's word, by today's hours, stops on top. */
export function morningFor(_people: readonly PlannedPerson[], _day: Day): Morning {
  throw new Error("morningFor is being written");
}

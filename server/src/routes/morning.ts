import { day } from "@stave/core/day";
import type { Handlers, Serving } from "./handlers.ts";

export function morning({ practice, clock, today }: Serving): Pick<Handlers, "morning"> {
  return {
    morning: async ({ caller }) => await practice(caller.practice).morning(day(today()), clock()),
  };
}

import { Refusal } from "../safeguard/index.ts";
import type { Handlers, Serving } from "./handlers.ts";

export function decisions({ practice, clock }: Serving): Pick<Handlers, "decide" | "decideMany"> {
  return {
    async decide({ caller, input }) {
      const decided = await practice(caller.practice).decide(input, clock());
      if (decided.ok) return decided.output;
      switch (decided.why) {
        case "no such person":
          throw new Refusal(404, "person/unknown", "There is nobody of that id");
        case "unknown":
          throw new Refusal(404, "decision/unknown", "There is no such slot or decision");
        case "stale":
          throw new Refusal(409, "decision/stale", "No such proposal waits; look at the list again");
        case "taken":
          throw new Refusal(409, "decision/id-taken", "Something else was recorded under this id, and stays");
      }
    },

    decideMany: async ({ caller, input }) => ({
      answers: await practice(caller.practice).decideMany(input.decisions, clock()),
    }),
  };
}

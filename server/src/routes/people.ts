import { Refusal } from "../safeguard/index.ts";
import type { Handlers, Serving } from "./handlers.ts";

export function people({ practice, clock }: Serving): Pick<Handlers, "people" | "person"> {
  return {
    people: async ({ caller }) => await practice(caller.practice).people(clock()),

    async person({ caller, params: { id } }) {
      const page = await practice(caller.practice).page(id, clock());
      if (page === undefined) throw new Refusal(404, "person/unknown", "There is nobody of that id");
      return page;
    },
  };
}

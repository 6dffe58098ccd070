import { Refusal } from "../safeguard/index.ts";
import type { Handlers, Serving } from "./handlers.ts";

export function rules({ practice, clock }: Serving): Pick<Handlers, "rules" | "setRule"> {
  return {
    rules: async ({ caller }) => ({ rules: await practice(caller.practice).latestRules() }),

    async setRule({ caller, input }) {
      const set = await practice(caller.practice).setRule(input, clock());
      if (!set) throw new Refusal(409, "rule/version-taken", "This is not the next version; look at the rule again");
      return { id: input.id, version: input.version };
    },
  };
}

import { canonicalJson, type StandingRule } from "@stave/core/model";
import type { Engine } from "./engine.ts";
import { checkNames } from "./names.ts";
import type { Store } from "./store.ts";

/** @returns the part of a store that keeps standing rules */
export function rules({ db, run }: Engine): Pick<Store, "putRule" | "listRules"> {
  return {
    async putRule(practice, rule) {
      checkNames(practice, rule.id);
      const body = canonicalJson(rule);
      const [, rows] = await run(practice, [
        db
          .insertInto("standing_rule")
          .values({ practice_id: practice, id: rule.id, version: rule.version, body })
          .onConflict((conflict) => conflict.columns(["practice_id", "id", "version"]).doNothing())
          .compile(),
        db
          .selectFrom("standing_rule")
          .select("body")
          .where("practice_id", "=", practice)
          .where("id", "=", rule.id)
          .where("version", "=", rule.version)
          .compile(),
      ]);
      return rows[0]?.body === body ? "stored" : "conflict";
    },

    async listRules(practice) {
      checkNames(practice);
      const [rows] = await run(practice, [
        db
          .selectFrom("standing_rule")
          .select("body")
          .where("practice_id", "=", practice)
          .orderBy("id")
          .orderBy("version")
          .compile(),
      ]);
      return rows.map(({ body }) => JSON.parse(body) as StandingRule);
    },
  };
}

import type { Engine } from "./engine.ts";
import { checkInstant, checkNames } from "./names.ts";
import type { Store } from "./store.ts";

/** @returns the part of a store that keeps the owner's sessions */
export function sessions({ db, run, runByToken }: Engine): Pick<Store, "putSession" | "sessionByToken"> {
  return {
    async putSession(practice, { token, expires }, now) {
      checkNames(practice, token);
      checkInstant(expires);
      checkInstant(now);
      await run(practice, [
        db.deleteFrom("session").where("practice_id", "=", practice).where("expires_at", "<=", now).compile(),
        db.insertInto("session").values({ practice_id: practice, token_hash: token, expires_at: expires }).compile(),
      ]);
    },

    async sessionByToken(token, now) {
      checkNames(token);
      checkInstant(now);
      const [rows] = await runByToken(token, [
        db
          .selectFrom("session")
          .select("practice_id")
          .where("token_hash", "=", token)
          .where("expires_at", ">", now)
          .compile(),
      ]);
      return rows.length === 1 ? rows[0]!.practice_id : undefined;
    },
  };
}

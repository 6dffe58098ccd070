import type { Engine } from "./engine.ts";
import { checkInstant, checkNames } from "./names.ts";
import type { Store } from "./store.ts";

/** @returns the part of a store that keeps links and the devices that came in by them */
export function links({ db, run }: Engine): Pick<Store, "putLink" | "takeLink" | "deviceByToken"> {
  return {
    async putLink(practice, { token, person, expires }) {
      checkNames(practice, token, person);
      checkInstant(expires);
      await run(practice, [
        db
          .insertInto("link")
          .values({
            practice_id: practice,
            token_hash: token,
            person_id: person,
            expires_at: expires,
            taken_at: null,
            device_hash: null,
          })
          .compile(),
      ]);
    },

    async takeLink(practice, token, device, now) {
      checkNames(practice, token, device);
      checkInstant(now);
      const same = db
        .selectFrom("link as earlier")
        .select("earlier.token_hash")
        .where("earlier.practice_id", "=", practice)
        .where("earlier.device_hash", "=", device);
      // One statement decides, so that of two devices only one can win.
      const [rows] = await run(practice, [
        db
          .updateTable("link")
          .set((row) => ({ device_hash: device, taken_at: row.fn.coalesce("taken_at", row.val(now)) }))
          .where("practice_id", "=", practice)
          .where("token_hash", "=", token)
          .where((row) =>
            row.or([
              row.and([row("device_hash", "is", null), row("expires_at", ">", now), row.not(row.exists(same))]),
              row("device_hash", "=", device),
            ]),
          )
          .returning("person_id")
          .compile(),
      ]);
      return rows[0]?.person_id;
    },

    async deviceByToken(practice, device) {
      checkNames(practice, device);
      const [rows] = await run(practice, [
        db
          .selectFrom("link")
          .select("person_id")
          .where("practice_id", "=", practice)
          .where("device_hash", "=", device)
          .compile(),
      ]);
      return rows[0]?.person_id;
    },
  };
}

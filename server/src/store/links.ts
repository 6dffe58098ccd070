import type { Engine } from "./engine.ts";
import { checkInstant, checkNames } from "./names.ts";
import type { Holder, Store } from "./store.ts";

/** @returns the part of a store that keeps links and the devices that came in by them */
export function links({ db, run, runByToken }: Engine): Pick<Store, "putLink" | "takeLink" | "deviceByToken"> {
  async function holderBy(column: "token_hash" | "device_hash", hash: string): Promise<Holder | undefined> {
    const [rows] = await runByToken(hash, [
      db.selectFrom("link").select(["practice_id", "person_id"]).where(column, "=", hash).compile(),
    ]);
    // A token that two practices hold was not made by chance, and opens neither.
    return rows.length === 1 ? { practice: rows[0]!.practice_id, person: rows[0]!.person_id } : undefined;
  }

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

    async takeLink(token, device, now) {
      checkNames(token, device);
      checkInstant(now);
      const practice = (await holderBy("token_hash", token))?.practice;
      if (practice === undefined) return undefined;
      const elsewhere = await holderBy("device_hash", device);
      if (elsewhere !== undefined && elsewhere.practice !== practice) return undefined;
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
      return rows[0] === undefined ? undefined : { practice, person: rows[0].person_id };
    },

    async deviceByToken(device) {
      checkNames(device);
      return await holderBy("device_hash", device);
    },
  };
}

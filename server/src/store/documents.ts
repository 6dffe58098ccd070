import { isStorable } from "@stave/core/model";
import type { Engine } from "./engine.ts";
import { checkNames } from "./names.ts";
import { sha256 } from "./sha256.ts";
import type { DocumentKind, Store } from "./store.ts";

/** @returns the part of a store that keeps people, places and programmes */
export function documents({ db, run }: Engine): Pick<Store, "putDocument" | "getDocument" | "listDocuments"> {
  const ofKind = (practice: string, kind: DocumentKind) =>
    db
      .selectFrom("document")
      .select(["id", "body as text", "hash"])
      .where("practice_id", "=", practice)
      .where("kind", "=", kind);

  return {
    async putDocument(practice, kind, id, text) {
      checkNames(practice, id);
      if (!isStorable(text)) throw new RangeError("A document must hold neither NUL nor half of a surrogate pair");
      const hash = sha256(text);
      if (kind === "programme" && id !== hash) {
        throw new RangeError(`The id of a programme must be the sha256 of its text, ${hash}: current value is ${id}`);
      }
      await run(practice, [
        db
          .insertInto("document")
          .values({ practice_id: practice, kind, id, body: text, hash })
          .onConflict((conflict) =>
            conflict
              .columns(["practice_id", "kind", "id"])
              .doUpdateSet((row) => ({ body: row.ref("excluded.body"), hash: row.ref("excluded.hash") })),
          )
          .compile(),
      ]);
    },

    async getDocument(practice, kind, id) {
      checkNames(practice, id);
      const [rows] = await run(practice, [ofKind(practice, kind).where("id", "=", id).compile()]);
      return rows[0];
    },

    async listDocuments(practice, kind) {
      checkNames(practice);
      const [rows] = await run(practice, [ofKind(practice, kind).orderBy("id").compile()]);
      return rows;
    },
  };
}

import { canonicalJson, type Plan } from "@stave/core/model";
import { sql } from "kysely";
import type { Engine } from "./engine.ts";
import { checkNames } from "./names.ts";
import { nextPositions } from "./next-positions.ts";
import { sha256 } from "./sha256.ts";
import type { Revision, Store } from "./store.ts";

/** @returns the part of a store that keeps plan revisions */
export function revisions({ db, run }: Engine): Pick<Store, "putRevision" | "latestRevision" | "revision"> {
  const ofPerson = (practice: string, person: string) =>
    db
      .selectFrom("plan_revision")
      .select(["id", "body"])
      .where("practice_id", "=", practice)
      .where("person_id", "=", person);

  return {
    async putRevision(practice, person, { id, plan }) {
      checkNames(practice, person, id);
      const body = canonicalJson(plan);
      const position = sql<number>`(select last from person_position where practice_id = ${practice} and person_id = ${person})`;
      const [, rows] = await run(practice, [
        nextPositions(db, practice, person, 1),
        db
          .insertInto("plan_revision")
          .values({ practice_id: practice, person_id: person, id, position, body, hash: sha256(body) })
          .onConflict((conflict) =>
            conflict
              .columns(["practice_id", "person_id", "id"])
              .doUpdateSet((row) => ({ position: row.ref("excluded.position") }))
              .whereRef("plan_revision.hash", "=", "excluded.hash"),
          )
          .returning("id")
          .compile(),
      ]);
      return rows.length === 1 ? "stored" : "conflict";
    },

    async latestRevision(practice, person) {
      checkNames(practice, person);
      const [rows] = await run(practice, [ofPerson(practice, person).orderBy("position", "desc").limit(1).compile()]);
      return rows.map(toRevision)[0];
    },

    async revision(practice, person, id) {
      checkNames(practice, person, id);
      const [rows] = await run(practice, [ofPerson(practice, person).where("id", "=", id).compile()]);
      return rows.map(toRevision)[0];
    },
  };
}

function toRevision({ id, body }: { readonly id: string; readonly body: string }): Revision {
  return { id, plan: JSON.parse(body) as Plan };
}

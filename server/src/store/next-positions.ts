import type { CompiledQuery, Kysely } from "kysely";
import type { Tables } from "./tables.ts";

/**
 * Takes the next so many positions of a person. The row stays locked until the transaction ends, so that of two batches
 * the one with the higher positions is also the one that can be seen later: who reads on from a position misses nothing.
 */
export function nextPositions(
  db: Kysely<Tables>,
  practice: string,
  person: string,
  count: number,
): CompiledQuery<{ readonly last: number }> {
  return db
    .insertInto("person_position")
    .values({ practice_id: practice, person_id: person, last: count })
    .onConflict((conflict) =>
      conflict
        .columns(["practice_id", "person_id"])
        .doUpdateSet((row) => ({ last: row("person_position.last", "+", row.ref("excluded.last")) })),
    )
    .returning("last")
    .compile();
}

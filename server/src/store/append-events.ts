import { canonicalJson, type StaveEvent } from "@stave/core/model";
import { type CompiledQuery, type Kysely, sql } from "kysely";
import type { Engine } from "./engine.ts";
import { checkNames } from "./names.ts";
import { nextPositions } from "./next-positions.ts";
import { sha256 } from "./sha256.ts";
import type { Ack } from "./store.ts";
import type { Tables } from "./tables.ts";

interface Row {
  readonly id: string;
  readonly body: string;
  readonly hash: string;
}
type IdRow = Pick<Row, "id">;
type Append = (practice: string, person: string, events: readonly StaveEvent[]) => Promise<readonly Ack[]>;

/** @returns `appendEvents` of a store */
export function appender(engine: Engine): Append {
  const inserts = new Map<number, string>();
  const insertOf = (rows: number) => {
    const text = inserts.get(rows) ?? insertText(engine.db, rows);
    inserts.set(rows, text);
    return text;
  };

  return async (practice, person, events) => {
    checkNames(practice, person);
    const rows = events.map((event) => rowOf(person, event));
    const firsts = new Map<string, Row>();
    for (const row of rows) if (!firsts.has(row.id)) firsts.set(row.id, row);
    if (firsts.size === 0) return [];

    const queries: CompiledQuery<IdRow>[] = [];
    const fresh = [...firsts.values()];
    for (let from = 0; from < fresh.length; from += engine.rowsAtOnce) {
      const chunk = fresh.slice(from, from + engine.rowsAtOnce);
      const parameters = chunk.flatMap(({ id, body, hash }, i) => {
        const below = fresh.length - 1 - from - i;
        return [practice, person, id, practice, person, below, body, hash];
      });
      queries.push({ ...sql<IdRow>``.compile(engine.db), sql: insertOf(chunk.length), parameters });
    }
    const [, ...inserted] = await engine.run<[unknown, ...IdRow[]]>(practice, [
      nextPositions(engine.db, practice, person, fresh.length),
      ...queries,
    ]);
    const stored = new Set(inserted.flat().map(({ id }) => id));
    // Rows are never altered or removed, so what stood in the way can be read after the commit.
    const old = await hashesOf(
      engine,
      practice,
      person,
      [...firsts.keys()].filter((id) => !stored.has(id)),
    );

    return rows.map((row) => {
      if (stored.has(row.id) && firsts.get(row.id) === row) return "stored";
      const hash = stored.has(row.id) ? firsts.get(row.id)!.hash : old.get(row.id);
      return hash === row.hash ? "known" : "conflict";
    });
  };
}

function rowOf(person: string, event: StaveEvent): Row {
  checkNames(event.id);
  if (event.person !== person) throw new RangeError(`An event of ${person} must name that person`);
  const body = canonicalJson(event);
  return { id: event.id, body, hash: sha256(body) };
}

/** The text of an insert of so many rows, made once; building it costs more than running it. */
function insertText(db: Kysely<Tables>, rows: number): string {
  const position = sql<number>`(select last from person_position where practice_id = ${""} and person_id = ${""}) - ${0}`;
  const row = { practice_id: "", person_id: "", id: "", position, body: "", hash: "" };
  return db
    .insertInto("event")
    .values(Array.from({ length: rows }, () => row))
    .onConflict((conflict) => conflict.columns(["practice_id", "person_id", "id"]).doNothing())
    .returning("id")
    .compile().sql;
}

async function hashesOf(
  { db, run }: Engine,
  practice: string,
  person: string,
  ids: readonly string[],
): Promise<ReadonlyMap<string, string>> {
  const found = new Map<string, string>();
  const MOST = 1000;
  for (let from = 0; from < ids.length; from += MOST) {
    const [rows] = await run(practice, [
      db
        .selectFrom("event")
        .select(["id", "hash"])
        .where("practice_id", "=", practice)
        .where("person_id", "=", person)
        .where("id", "in", ids.slice(from, from + MOST))
        .compile(),
    ]);
    for (const { id, hash } of rows) found.set(id, hash);
  }
  return found;
}

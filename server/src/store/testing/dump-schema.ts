import type { Database } from "better-sqlite3";
import type pg from "pg";

/** The tables of a SQLite file as SQL, one column a line. */
export function dumpSqlite(connection: Database): string {
  const rows = connection
    .prepare<[], { sql: string }>(
      "select sql from sqlite_schema where sql is not null and name not like 'kysely%' order by type, name",
    )
    .all();
  const lines = (text: string) =>
    text.replace(/ \((?="practice_id" )/, " (\n  ").replace(/, (?="\w+" (text|integer)|constraint)/g, ",\n  ");
  return rows.map(({ sql }) => `${lines(sql)};\n`).join("\n");
}

const COLUMNS = `
  select a.attname as name, format_type(a.atttypid, a.atttypmod) as type, c.collname as collation, a.attnotnull as needed
  from pg_attribute a left join pg_collation c on c.oid = a.attcollation and c.collname <> 'default'
  where a.attrelid = $1::regclass and a.attnum > 0 and not a.attisdropped order by a.attnum`;
const CONSTRAINTS = `
  select conname as name, pg_get_constraintdef(oid) as text from pg_constraint
  where conrelid = $1::regclass and contype <> 'n' order by conname`;
const INDEXES = `
  select pg_get_indexdef(indexrelid) as text from pg_index
  where indrelid = $1::regclass and indexrelid not in (select conindid from pg_constraint) order by 1`;
const POLICIES = `
  select policyname as name, cmd, qual, with_check as checked from pg_policies where tablename = $1 order by policyname`;

/** The tables of a PostgreSQL database as SQL, one column a line, from its own catalogue. */
export async function dumpPostgres(client: pg.Client): Promise<string> {
  const { rows: tables } = await client.query<{ name: string; secure: boolean; forced: boolean }>(
    `select relname as name, relrowsecurity as secure, relforcerowsecurity as forced from pg_class
     where relkind = 'r' and relnamespace = 'public'::regnamespace and relname not like 'kysely%' order by relname`,
  );
  const parts: string[] = [];
  for (const { name, secure, forced } of tables) {
    const rowsOf = async (query: string) => (await client.query<Record<string, string>>(query, [name])).rows;
    const lines = [
      ...(await rowsOf(COLUMNS)).map(
        ({ name: column, type, collation, needed }) =>
          `${column} ${type}${collation ? ` collate "${collation}"` : ""}${needed ? " not null" : ""}`,
      ),
      ...(await rowsOf(CONSTRAINTS)).map(({ name: constraint, text }) => `constraint ${constraint} ${text}`),
    ];
    parts.push(`create table ${name} (\n  ${lines.join(",\n  ")}\n);\n`);
    for (const { text } of await rowsOf(INDEXES)) parts.push(`${text};\n`);
    if (secure) parts.push(`alter table ${name} enable row level security;\n`);
    if (forced) parts.push(`alter table ${name} force row level security;\n`);
    for (const { name: policy, cmd, qual, checked } of await rowsOf(POLICIES)) {
      const using = qual ? `\n  using ${qual}` : "";
      parts.push(
        `create policy ${policy} on ${name} for ${cmd}${using}${checked ? `\n  with check ${checked}` : ""};\n`,
      );
    }
  }
  return parts.join("\n");
}

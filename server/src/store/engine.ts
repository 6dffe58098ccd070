import type { CompiledQuery, Kysely } from "kysely";
import type { Tables } from "./tables.ts";

export type Dialect = "sqlite" | "postgres";

/** The rows of each query, in the order of the queries. */
export type RowsOf<Rows extends readonly unknown[]> = { readonly [K in keyof Rows]: readonly Rows[K][] };

/**
 * A database that runs queries of one practice. Queries go in as a list and no code runs between them: nothing can wait,
 * fail softly or slip past the transaction while it is open.
 */
export interface Engine {
  readonly dialect: Dialect;
  /** Makes queries; it never runs them. */
  readonly db: Kysely<Tables>;
  /** Rows that one insert carries: a short statement prepared once on SQLite, few round trips on PostgreSQL. */
  readonly rowsAtOnce: number;
  /** Runs all queries in one transaction; when it resolves, the transaction is durable. */
  run<const Rows extends readonly unknown[]>(
    practice: string,
    queries: { readonly [K in keyof Rows]: CompiledQuery<Rows[K]> },
  ): Promise<RowsOf<Rows>>;
  /** Runs queries before the practice is known: of all practices, rows that hold the hash of this token can be read. */
  runByToken<const Rows extends readonly unknown[]>(
    token: string,
    queries: { readonly [K in keyof Rows]: CompiledQuery<Rows[K]> },
  ): Promise<RowsOf<Rows>>;
  close(): Promise<void>;
}

/** The store cannot be opened, and the message says what to do about it. */
export class OpenStoreError extends Error {
  override readonly name = "OpenStoreError";
}

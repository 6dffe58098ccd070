/** Where in a document: names and positions from the top. */
export type Path = readonly (string | number)[];

export type Json = string | number | boolean | null | readonly Json[] | { readonly [name: string]: Json };

/** A change to a document, in the words of its file. Paths are those of the document before any of the edits. */
export type Edit =
  | { readonly op: "set"; readonly at: Path; readonly value: Json }
  | { readonly op: "remove"; readonly at: Path }
  | { readonly op: "insert"; readonly at: Path; readonly value: Json };

/** What one action would mend, as data; `id` names the sentence. */
export interface Remedy {
  readonly id: string;
  readonly data: Readonly<Record<string, Json>>;
  readonly edits: readonly Edit[];
}

export type Severity = "stop" | "warn" | "note";

/** What a check says of a readable programme. Words are made last, in text/. */
export interface Finding {
  readonly check: string;
  readonly severity: Severity;
  readonly at: Path;
  readonly data: Readonly<Record<string, Json>>;
  readonly remedies: readonly Remedy[];
}

/**
 * Input that is wrong. `code` names the sentence; `found` is what stands there, `allowed` what may, `maybe` a likely
 * cure. Lines and columns count from 1; 0 means that the input has no lines.
 */
export interface Problem {
  readonly code: string;
  readonly file: string;
  readonly at: Path;
  readonly line: number;
  readonly column: number;
  readonly found?: string;
  readonly allowed?: string;
  readonly maybe?: string;
}

export type Read<T> =
  | { readonly ok: true; readonly value: T; readonly problems: readonly Problem[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

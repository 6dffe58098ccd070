import type { SourceId } from "../sources.ts";

/** How every rule of the check before a session is named: who reads the answer can look it up. */
export interface RuleName {
  readonly id: string;
  /** The year or the day it was printed or written; "undated" where the page says nothing. */
  readonly dated: string;
  /** Where it is printed; undefined for a rule that a practice wrote itself. */
  readonly source?: SourceId;
  /** Who wrote a practice's own rule. */
  readonly by?: string;
}

import { expect, test } from "vitest";
import { SOURCES, type SourceId } from "../sources.ts";

/** printed: the number stands in the source. worked: we applied the printed formula. identity: algebra. */
type Kind = "printed" | "worked" | "identity";
type Row = readonly [kind: Kind, where: string, got: () => number, want: number, within: number];

/** Checks against published numbers; the source, and how it was read, are part of every test's name. */
export function published(source: SourceId, what: string, rows: readonly Row[]): void {
  for (const [kind, where, got, want, within] of rows) {
    test(`${source} (read: ${SOURCES[source].read}) ${where}, ${kind}: ${what} = ${want} (within ${within})`, () => {
      const value = got();
      expect(Math.abs(value - want) <= within, `${SOURCES[source].cite}: want ${want}, got ${value}`).toBe(true);
    });
  }
}

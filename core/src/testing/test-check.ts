import { expect, test } from "vitest";
import { type Check, type CheckInput, type Facts, lookAt } from "../checks/index.ts";
import type { Path, Severity } from "../model/index.ts";

interface Bad {
  readonly doc: CheckInput;
  /** Where, in the order in which the check finds them. */
  readonly at: readonly Path[];
  /** For each place, the facts that the test is about; others may stand beside them. */
  readonly data: readonly Facts[];
  readonly severity?: readonly Severity[];
}

/** Tests a check alone: documents in which it finds nothing, and documents in which it finds this, here. */
export function testCheck(
  check: Check,
  documents: { readonly fine: Readonly<Record<string, CheckInput>>; readonly bad: Readonly<Record<string, Bad>> },
): void {
  for (const [name, doc] of Object.entries(documents.fine)) {
    test(`${check.id}, fine: ${name}`, () => expect(check.run(lookAt(doc))).toEqual([]));
  }
  for (const [name, { doc, at, data, severity }] of Object.entries(documents.bad)) {
    test(`${check.id}, found: ${name}`, () => {
      const found = check.run(lookAt(doc));
      expect(found.map((each) => each.at)).toEqual(at);
      expect(found.map((each) => ({ ...each.data, ...each.more?.() }))).toMatchObject(data);
      if (severity !== undefined) expect(found.map((each) => each.severity ?? check.severity)).toEqual(severity);
    });
  }
}

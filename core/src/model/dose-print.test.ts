import fc from "fast-check";
import { expect, test } from "vitest";
import { doses } from "../testing/index.ts";
import { printDose } from "./dose-print.ts";
import { readDose } from "./dose-read.ts";

test("what is printed reads back as the same dose, for every dose", () => {
  fc.assert(
    fc.property(doses, (dose) => {
      expect(readDose(printDose(dose))).toEqual({ ok: true, value: dose });
    }),
    { numRuns: 3000 },
  );
});

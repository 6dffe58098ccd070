import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import { type Exercise, STATEMENTS, type Statement } from "../model/index.ts";
import { STATEMENT_TABLE, statementRow } from "../tables/index.ts";
import { askedAt, type CheckDose, FULL_ROOM, madeUpPlace, stating } from "../testing/index.ts";
import { type Admit, admitter } from "./admit.ts";

/**
 * The rest of the guide's check of its cautions (section 5.5), over every entry of the catalogue and not only over the
 * printed ones: under two statements nothing is looser than under either, whichever is said first.
 */
const ON = day("2027-03-01");
const PLACE = madeUpPlace({ equipment: FULL_ROOM });
const ALL = [...CATALOGUE.exercises.values()];
const DOSES: readonly CheckDose[] = ["untrained", "trained"];

function under(...statements: readonly Statement[]): Admit {
  return admitter({ person: stating(...statements), place: PLACE, catalogue: CATALOGUE, on: ON, byHand: true });
}
const ask = (admit: Admit, exercise: Exercise, named: CheckDose) => {
  const { dose, effort } = askedAt(exercise, named);
  return admit(exercise, dose, effort);
};
const ALONE = new Map(STATEMENTS.map((statement) => [statement, under(statement)]));
/** Regions of one statement are no pair. */
const pairs = STATEMENTS.flatMap((a, i) => STATEMENTS.slice(i + 1).map((b) => [a, b] as const)).filter(
  ([a, b]) => !(a.startsWith("surgery") && b.startsWith("surgery")),
);
/** A fifth of the entries for each pair, in turn, so that every entry meets many pairs; all of them held once by hand. */
const someOf = (pair: number) => ALL.filter((_, at) => at % 5 === pair % 5);
const wheelchair = new Set(ALL.filter(({ needs }) => needs.some((group) => group.includes("wheelchair"))));

test("the lowest ceiling wins: of all 187 pairs none lets a form or a dose pass that one of the two refuses", () => {
  expect(pairs.length).toBe(187);
  const loose: string[] = [];
  for (const [at, [a, b]] of pairs.entries()) {
    const both = under(a, b);
    for (const exercise of someOf(at)) {
      for (const named of DOSES) {
        const found = ask(both, exercise, named);
        if (!found.ok) continue;
        for (const one of [a, b]) {
          // A wheelchair entry is opened by one of the two statements; the other says nothing of it.
          if (wheelchair.has(exercise) && !statementRow(one).wheelchair) continue;
          const alone = ALONE.get(one)!(exercise, found.dose, found.effort);
          if (!alone.ok) loose.push(`${a} + ${b}, ${exercise.id} at ${named}: ${one}`);
          else if (JSON.stringify(alone.dose) !== JSON.stringify(found.dose))
            loose.push(`${a} + ${b}, ${exercise.id}: cut again`);
        }
      }
    }
  }
  expect(loose).toEqual([]);
});

test("which of two statements is said first changes nothing", () => {
  const differing = pairs.filter(([a, b], at) => {
    const [one, other] = [under(a, b), under(b, a)];
    return someOf(at).some((exercise) => {
      const [x, y] = [ask(one, exercise, "trained"), ask(other, exercise, "trained")];
      return x.ok !== y.ok || (x.ok && y.ok && JSON.stringify(x.dose) !== JSON.stringify(y.dose));
    });
  });
  expect(differing).toEqual([]);
});

describe("lowering-only", () => {
  const lowering = ALL.filter((exercise) => exercise.lowering);
  test.each(STATEMENT_TABLE.rows.map(({ id, limits }) => [id, limits.noLoweringOnly] as const))(
    "%s: no lowering-only is %s",
    (statement, refused) => {
      expect(lowering.length).toBeGreaterThan(2);
      const because = lowering.map((exercise) => {
        const found = ask(ALONE.get(statement)!, exercise, "untrained");
        return found.ok ? false : found.why.some(({ code }) => code === "offer/lowering-only");
      });
      expect(because).toEqual(lowering.map(() => refused));
    },
  );
});

test("every dose that passes under a statement keeps to all its limits, in every entry", () => {
  const over: string[] = [];
  for (const { id, limits } of STATEMENT_TABLE.rows) {
    for (const exercise of ALL) {
      for (const named of ["light", "untrained", "middle", "trained", "heavy"] as const) {
        const found = ask(ALONE.get(id)!, exercise, named);
        for (const set of found.ok ? found.dose.sets : []) {
          const fits =
            !((set.percent ?? 0) > (limits.percent ?? 100)) &&
            !((set.reserve?.from ?? 99) < (limits.reserve ?? 0)) &&
            !(set.amount.kind === "hold" && set.amount.span.to > (limits.holdS ?? 999));
          if (!fits) over.push(`${id}: ${exercise.id} at ${named}`);
        }
      }
    }
  }
  expect(over).toEqual([]);
});

import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import {
  type Exercise,
  LANES,
  type Lane,
  laneOf,
  type Place,
  STATEMENTS,
  type Statement,
  USUAL,
} from "../model/index.ts";
import { STATEMENT_TABLE } from "../tables/index.ts";
import { askedAt, CHECK_DOSES, type CheckDose, FULL_ROOM, madeUpPlace, stating } from "../testing/index.ts";
import { admitter } from "./admit.ts";
import { gradesOf } from "./grade.ts";

/**
 * The guide's check of its cautions (section 5.5), over the catalogue itself: under every statement and in every kit each
 * lane still offers at least two forms, or it is written here why not. Set aside, never deleted: nothing is loosened.
 */
const ON = day("2027-03-01");
const bare = Object.fromEntries(USUAL.map((what) => [what, 2]));
const KITS: Readonly<Record<"bare floor" | "bands and light dumbbells" | "full room", Place>> = {
  "bare floor": madeUpPlace({ equipment: bare }),
  "bands and light dumbbells": madeUpPlace({ equipment: { ...bare, band: 3, dumbbell: 6 } }),
  "full room": madeUpPlace({ equipment: FULL_ROOM }),
};
type Kit = keyof typeof KITS;

const ALL = [...CATALOGUE.exercises.values()];
/** One movement of the printed table fills the hinge lane though it is an isolation of the hip. */
const FILLS: Readonly<Record<string, Lane>> = { "standing-hip-extension": "hinge" };
const inLane = (lane: Lane) => ALL.filter(({ id, pattern }) => (FILLS[id] ?? laneOf(pattern)) === lane);
const FORMS = new Map(LANES.map((lane) => [lane, inLane(lane)] as const));

/** Forms of a lane that somebody with these statements may do in a place; by hand, so that only limits refuse. */
function passing(statements: readonly Statement[], kit: Kit, lane: Lane, named: CheckDose): readonly string[] {
  const admit = admitter({
    person: stating(...statements),
    place: KITS[kit],
    catalogue: CATALOGUE,
    on: ON,
    byHand: true,
  });
  return FORMS.get(lane)!
    .filter((exercise) => {
      const { dose, effort } = askedAt(exercise, named);
      return !exercise.coachOnly && admit(exercise, dose, effort).ok;
    })
    .map(({ id }) => id);
}

const withheld = (statement: Statement) => STATEMENT_TABLE.rows.find(({ id }) => id === statement)!.withheld;

describe.each(STATEMENTS)("ours 5.5: under %s", (statement) => {
  test.each(Object.keys(KITS) as Kit[])("every lane offers two forms or is withheld: %s", (kit) => {
    const thin = LANES.filter((lane) => !withheld(statement).includes(lane)).flatMap((lane) =>
      (["untrained", "trained"] as const).flatMap((named) => {
        const forms = passing([statement], kit, lane, named);
        return forms.length >= 2 ? [] : [`${lane} at ${named}: ${forms.join(", ") || "none"}`];
      }),
    );
    expect(thin).toEqual([]);
  });

  test("a withheld lane offers nothing at all", () => {
    for (const lane of withheld(statement)) expect(passing([statement], "full room", lane, "untrained")).toEqual([]);
  });
});

test("without a filled bag the bare floor keeps two forms of every lane, but for the written ones", () => {
  const { bag, ...rest } = bare;
  const place = madeUpPlace({ equipment: rest });
  expect(bag).toBe(2);
  const thin = STATEMENTS.flatMap((statement) =>
    LANES.filter((lane) => !withheld(statement).includes(lane)).flatMap((lane) => {
      const admit = admitter({ person: stating(statement), place, catalogue: CATALOGUE, on: ON, byHand: true });
      const forms = FORMS.get(lane)!.filter((exercise) => {
        const { dose, effort } = askedAt(exercise, "untrained");
        return !exercise.coachOnly && admit(exercise, dose, effort).ok;
      });
      return forms.length >= 2 ? [] : [`${statement} ${lane}: ${forms.map(({ id }) => id).join(", ")}`];
    }),
  );
  expect(thin).toEqual(["surgery-leg push: seated-forearm-push", "seated push: seated-forearm-push"]);
});

/**
 * Pairs in which a lane runs thin: an arm that must rest leaves nothing that is done seated without arms. Shown as an open
 * slot that the coach fills by hand, or that waits for written limits.
 */
const THIN_PAIRS = (Object.keys(KITS) as Kit[]).flatMap((kit) =>
  ["trunk", "carry or conditioning"].map((lane) => `surgery-arm + seated, ${kit}: ${lane}`),
);

test("two statements at once leave two forms in every lane, but for the written pairs", () => {
  const surgery = (statement: Statement) => statement.startsWith("surgery");
  const pairs = STATEMENTS.flatMap((a, i) => STATEMENTS.slice(i + 1).map((b) => [a, b] as const)).filter(
    ([a, b]) => !(surgery(a) && surgery(b)),
  );
  expect(pairs.length).toBe(187);
  const thin = pairs.flatMap(([a, b]) =>
    (Object.keys(KITS) as Kit[]).flatMap((kit) => {
      const may = admitter({ person: stating(a, b), place: KITS[kit], catalogue: CATALOGUE, on: ON, byHand: true });
      const two = (lane: Lane) => {
        let found = 0;
        for (const exercise of FORMS.get(lane)!) {
          const { dose, effort } = askedAt(exercise, "untrained");
          if (!exercise.coachOnly && may(exercise, dose, effort).ok && ++found === 2) return true;
        }
        return false;
      };
      const asked = LANES.filter((lane) => ![...withheld(a), ...withheld(b)].includes(lane));
      return asked.filter((lane) => !two(lane)).map((lane) => `${a} + ${b}, ${kit}: ${lane}`);
    }),
  );
  expect(thin).toEqual(THIN_PAIRS);
});

test("what a pair lets pass, each statement alone lets pass too, and their order does not matter", () => {
  const pairs: readonly (readonly [Statement, Statement])[] = [
    ["shoulder", "eye"],
    ["pregnant", "back"],
    ["bone", "wrist"],
    ["hip", "pressure"],
    ["diabetes", "knee"],
    ["young", "hernia"],
  ];
  for (const [a, b] of pairs) {
    for (const lane of LANES) {
      const both = passing([a, b], "full room", lane, "untrained");
      expect(passing([b, a], "full room", lane, "untrained")).toEqual(both);
      const first = new Set(passing([a], "full room", lane, "untrained"));
      const second = new Set(passing([b], "full room", lane, "untrained"));
      expect(
        both.filter((id) => !first.has(id) || !second.has(id)),
        `${a} + ${b}: ${lane}`,
      ).toEqual([]);
    }
  }
});

test("a grade moves by at most one from its base, nothing comes of nothing but pressure, and more dose never lowers it", () => {
  const faults: string[] = [];
  for (const exercise of ALL) {
    let before: Readonly<Partial<Record<string, number>>> | undefined;
    for (const named of Object.keys(CHECK_DOSES) as CheckDose[]) {
      const grades: Readonly<Partial<Record<string, number>>> = gradesAt(exercise, named);
      for (const [tag, grade = 0] of Object.entries(grades)) {
        const base = exercise.stress[tag as "grip"] ?? 0;
        const odd = Math.abs(grade - base) > 1 || (base === 0 && grade > 0 && tag !== "pressor");
        if (odd || grade < (before?.[tag] ?? 0)) faults.push(`${exercise.id} ${tag} ${named}`);
      }
      before = grades;
    }
  }
  expect(faults).toEqual([]);
});

function gradesAt(exercise: Exercise, named: CheckDose) {
  const { dose, effort } = askedAt(exercise, named);
  return gradesOf(exercise, dose, effort === undefined ? {} : { effort });
}

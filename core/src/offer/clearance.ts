import { ageOn, type Day, printDay } from "../day.ts";
import type { Caution, Lane, Outcome, Person, Reason, Statement, StressTag } from "../model/index.ts";
import { STATEMENT_TABLE, type StatementRow } from "../tables/index.ts";
import { byText } from "./by-text.ts";
import { type Bound, bound, type Ceiling, ceilingsOf } from "./combine.ts";
import { type LimitsOnDay, limitsOn } from "./limits.ts";
import { reason } from "./reasons.ts";
import { effortCeiling, RESERVE_FOR_EFFORT, screeningAsks } from "./screening.ts";
import { ADULT_AT, holdsUntil } from "./until.ts";

/**
 * Everything that a person's health, age and screening ask of their training on one day, or on all days of a span.
 *
 * `percent` and `holdS` are the most, `reserve` the least. Lists name who asks; an empty list means free. `asks` are
 * the questions that are due on the first day: what they are about stays in force until somebody answers. `throughout`
 * names what stands on some of the days only and binds on all of them.
 */
export interface Clearance {
  /** As it was last entered; whether it still stands is what mayPrint answers. */
  readonly outcome?: Outcome;
  readonly effort?: "light" | "moderate";
  readonly ceilings: Readonly<Partial<Record<StressTag, Ceiling>>>;
  readonly percent?: Bound;
  readonly reserve?: Bound;
  readonly holdS?: Bound;
  readonly noBreathHold: readonly Statement[];
  readonly noLoweringOnly: readonly Statement[];
  readonly withheld: Readonly<Partial<Record<Lane, readonly Statement[]>>>;
  readonly seatedOnly: readonly Statement[];
  readonly noArms: readonly Statement[];
  readonly wheelchair: boolean;
  readonly limits: LimitsOnDay;
  readonly asks: readonly Reason[];
  readonly throughout: readonly Reason[];
  /** The last day on which all of this stays as it is; without it nothing dated lies ahead. */
  readonly until?: Day;
  /** Whether the table of cautions was signed by a coach and a clinician. */
  readonly ruleSet: "unsigned";
}

/**
 * What binds a person on a day, or on every day of a span, from cautions, birth date, screening, things they cannot do
 * and written limits.
 *
 * Statements combine field by field: lowest ceiling of a tag, lowest share and seconds, most repetitions left, any
 * "no" wins, lanes and filters add up. The order of the cautions never matters. A caution starts on its day, asks
 * from its re-check day on and never lifts by itself. Under 18 the row for minors binds without being entered. What is
 * decided once for several days must be safe on each of them, so over a span all that stands on any day of it binds.
 *
 * @param to the last day of the span, not before `on`
 * @source ours
 */
export function clearanceOf(person: Person, on: Day, to: Day = on): Clearance {
  const { screening } = person;
  const cautions = person.cautions.filter((caution) => caution.from <= to);
  const rows = rowsOf(cautions, !(ageOn(person.born, on) >= ADULT_AT));
  const limits = limitsOn(person.limits, on, to);
  // Agreements only ease an outcome, so it is strictest on its own day, or on the first one.
  const effort = effortCeiling(screening, screening && on < screening.on && screening.on <= to ? screening.on : on);
  const least = effort === undefined ? undefined : RESERVE_FOR_EFFORT[effort];
  const until = holdsUntil(person, on);
  return {
    ...(screening !== undefined && screening.on <= on ? { outcome: screening.outcome } : {}),
    ...(effort === undefined ? {} : { effort }),
    ceilings: ceilingsOf(rows, cautions, person.cannot),
    ...bounds(rows, least),
    noBreathHold: naming(rows, (row) => row.limits.noBreathHold),
    noLoweringOnly: naming(rows, (row) => row.limits.noLoweringOnly),
    withheld: withheldBy(rows),
    seatedOnly: naming(rows, (row) => row.seatedOnly),
    noArms: naming(rows, (row) => row.noArms),
    wheelchair: rows.some((row) => row.wheelchair),
    limits,
    asks: [...cautionAsks(cautions, on), ...limits.asks, ...screeningAsks(screening, on)],
    throughout: [...cautionsThroughout(cautions, on, to), ...limits.throughout],
    ...(until === undefined ? {} : { until }),
    ruleSet: STATEMENT_TABLE.status,
  };
}

/** Rows in the order of the table, so that the order in which the cautions were entered cannot show. */
function rowsOf(cautions: readonly Caution[], minor: boolean): readonly StatementRow[] {
  const stated = new Set(cautions.map((caution) => caution.statement));
  return STATEMENT_TABLE.rows.filter((row) => stated.has(row.id) || (minor && row.id === "young"));
}

function naming(rows: readonly StatementRow[], holds: (row: StatementRow) => boolean): readonly Statement[] {
  return rows.filter(holds).map((row) => row.id);
}

function bounds(
  rows: readonly StatementRow[],
  least: number | undefined,
): Pick<Clearance, "percent" | "reserve" | "holdS"> {
  const percent = bound(
    rows.map((row) => [row.id, row.limits.percent]),
    Math.min,
  );
  const reserve = bound([...rows.map((row) => [row.id, row.limits.reserve] as const), ["screening", least]], Math.max);
  const holdS = bound(
    rows.map((row) => [row.id, row.limits.holdS]),
    Math.min,
  );
  return {
    ...(percent === undefined ? {} : { percent }),
    ...(reserve === undefined ? {} : { reserve }),
    ...(holdS === undefined ? {} : { holdS }),
  };
}

function withheldBy(rows: readonly StatementRow[]): Clearance["withheld"] {
  const lanes = new Set(rows.flatMap((row) => row.withheld));
  return Object.fromEntries([...lanes].map((lane) => [lane, naming(rows, (row) => row.withheld.includes(lane))]));
}

function cautionAsks(cautions: readonly Caution[], on: Day): readonly Reason[] {
  const due = cautions.filter((caution) => !(on < caution.recheck));
  const asks = due.map((caution) =>
    reason("offer/ask-caution", { ...cautionData(caution), recheck: printDay(caution.recheck), who: caution.who }),
  );
  return inOrder(asks);
}

/** Cautions that begin after the first day of a span. */
function cautionsThroughout(cautions: readonly Caution[], on: Day, to: Day): readonly Reason[] {
  const span = { first: printDay(on), last: printDay(to) };
  const later = cautions.filter((caution) => caution.from > on);
  return inOrder(
    later.map((caution) =>
      reason("offer/caution-throughout", {
        ...cautionData(caution),
        from: printDay(caution.from),
        who: caution.who,
        ...span,
      }),
    ),
  );
}

/** @returns what a caution is about, as the data of a reason */
export function cautionData({ statement, tag }: Caution): Reason["data"] {
  return { ...(statement === undefined ? {} : { statement }), ...(tag === undefined ? {} : { tag }) };
}

function inOrder(reasons: readonly Reason[]): readonly Reason[] {
  return reasons.toSorted((a, b) => byText(JSON.stringify(a.data), JSON.stringify(b.data)));
}

import { addDays, type Day, printDay } from "../day.ts";
import type { Limit, Reason } from "../model/index.ts";
import { type Mass, massOf } from "../units.ts";
import { reason } from "./reasons.ts";

/** The written limits that bind, and what must be asked about them on the first day. */
export interface LimitsOnDay {
  readonly loads: readonly Limit[];
  readonly rests: readonly Limit[];
  readonly movements: readonly Limit[];
  readonly asks: readonly Reason[];
  /** Those that do not stand on all of the days, and bind on all of them nevertheless. */
  readonly throughout: readonly Reason[];
}

/**
 * Which of a person's written limits bind on a day, or on some days of which every one must be safe.
 *
 * The steps of one letter (same kind, writer, part, side, movement and way of counting) follow one another by date.
 * Where two overlap, the strictest binds. Between two steps, and after the last, the one that ended last stays and
 * asks; only a recorded review ends it, and with it the earlier steps of the letter. Different letters bind together.
 * Over several days the strictest step that stands on any of them binds on all, and it is said.
 *
 * @param to the last of the days, not before `on`
 * @example
 * limitsOn([tenPoundsToMarch8, twentyFivePoundsToMarch22], day("2027-03-30")).loads // 25 lb, and it asks
 */
export function limitsOn(limits: readonly Limit[], on: Day, to: Day = on): LimitsOnDay {
  const letters = new Map<string, Limit[]>();
  for (const limit of limits) {
    const key = letterOf(limit);
    letters.set(key, [...(letters.get(key) ?? []), limit]);
  }
  const binding: Limit[] = [];
  const asks: Reason[] = [];
  const throughout: Reason[] = [];
  for (const steps of letters.values()) {
    const standing = daysOfChange(steps, on, to).map((each) => stepOn(steps, each));
    const [first] = standing;
    if (first !== undefined && !(on <= first.to)) asks.push(reason("offer/ask-limit", limitData(first)));
    const step = strictest(standing.filter((each) => each !== undefined));
    if (step === undefined) continue;
    binding.push(step);
    if (standing.every((each) => each !== undefined && massAllowed(each) <= massAllowed(step))) continue;
    const span = { from: printDay(step.from), first: printDay(on), last: printDay(to) };
    throughout.push(reason("offer/limit-throughout", { ...limitData(step), ...span }));
  }
  return {
    loads: binding.filter((limit) => limit.kind === "load"),
    rests: binding.filter((limit) => limit.kind === "rest"),
    movements: binding.filter((limit) => limit.kind === "movement"),
    asks,
    throughout,
  };
}

/** @returns the same text for limits that are steps of one letter */
export function letterOf({ kind, who, applies, part, side, movement }: Limit): string {
  return JSON.stringify([kind, who, applies ?? "total", part ?? null, side, movement ?? null]);
}

/** The first of the days, and every later one on which another step may stand than the day before. */
function daysOfChange(steps: readonly Limit[], on: Day, to: Day): readonly Day[] {
  const changes = steps.flatMap((step) => [step.from, addDays(step.to, 1), ...(step.lifted ? [step.lifted.on] : [])]);
  return [on, ...new Set(changes.filter((each) => on < each && each <= to))];
}

function stepOn(steps: readonly Limit[], on: Day): Limit | undefined {
  const reviewed = steps.filter((step) => step.lifted !== undefined && step.lifted.on <= on);
  const liftedTo = Math.max(Number.NEGATIVE_INFINITY, ...reviewed.map((step) => step.to));
  const begun = steps.filter((step) => step.from <= on && !(step.to <= liftedTo));
  const current = begun.filter((step) => on <= step.to);
  const lastEnd = Math.max(...begun.map((step) => step.to));
  return strictest(current.length > 0 ? current : begun.filter((step) => step.to === lastEnd));
}

function strictest(steps: readonly Limit[]): Limit | undefined {
  return steps.toSorted((a, b) => massAllowed(a) - massAllowed(b) || a.to - b.to || a.from - b.from)[0];
}

/** @returns the exact mass that a load limit allows; a limit that names none allows none */
export function massAllowed(limit: Limit): Mass {
  return limit.atMost === undefined ? (0 as Mass) : massOf(limit.atMost);
}

/** @returns a limit as the data of a reason: what it limits, by whose order and until when */
export function limitData(limit: Limit): Reason["data"] {
  const { kind, who, part, side, movement, atMost, applies } = limit;
  return {
    kind,
    to: printDay(limit.to),
    who,
    side,
    ...(part === undefined ? {} : { part }),
    ...(movement === undefined ? {} : { movement }),
    ...(applies === undefined ? {} : { applies }),
    ...(atMost === undefined ? {} : { atMost: { value: atMost.value, unit: atMost.unit } }),
  };
}

import type { Amount, SetDose } from "./dose.ts";
import { amountOf, type Written } from "./dose-amount.ts";
import { DOSE_BOUNDS } from "./dose-bounds.ts";
import { EFFORTS, effortClash } from "./dose-effort.ts";
import type { Mark, Marks } from "./dose-marks.ts";
import { UNIT_WORDS, type Unit } from "./dose-quantity.ts";
import { bounded, DOSE_EXAMPLE, report, type Scan } from "./dose-scan.ts";

/** One entry of a list, `10` in `10, 8, 8`, with what stands directly behind it. */
export interface Item {
  readonly written: Written;
  /** What stands directly behind it, and in brackets behind it. */
  readonly marks: Marks;
  readonly bracketed: Set<keyof Marks>;
  readonly bySlash: boolean;
}

/** `3 × 8` or a list; `count` is what stands before the sign. */
export interface Group {
  readonly count?: { readonly value: number; readonly at: number; readonly end: number };
  readonly items: Item[];
  /** What stands behind a comma. */
  readonly marks: Marks;
}

/** The sets that the groups say, each with what is said of it; what does not fit is noted. */
export function setsOf(scan: Scan, groups: readonly Group[]): readonly SetDose[] {
  for (const group of groups) shareInside(group);
  spread(scan, groups);
  checkCounted(scan, groups);
  let total = 0;
  const sets = groups.flatMap((group) => {
    const units = unitsOf(group);
    const one = group.items.map((item, i) => setOf(scan, item, units[i]));
    const times = checkUnits(scan, group, units) ? timesOf(scan, group) : 1;
    total += times * one.length;
    // A count that is out of bounds has been told; there is no use in making a million sets of it.
    return total > DOSE_BOUNDS.sets.to ? one : Array.from({ length: times }, () => one).flat();
  });
  if (total > DOSE_BOUNDS.sets.to) bounded(scan, total, DOSE_BOUNDS.sets, 0, scan.text.length);
  checkKinds(scan, groups);
  return sets;
}

/** A number alone may be sets or repetitions, so it says neither. */
function checkCounted(scan: Scan, groups: readonly Group[]): void {
  const [group, other] = groups;
  const written = group?.items[0]?.written;
  if (other || !written || group.count || group.items.length > 1) return;
  if (!isBare(written) || written.bouts.length > 0) return;
  const text = textOf(scan, written);
  report(scan, "dose/no-sets", written.at, DOSE_EXAMPLE, { to: written.end, maybe: `1 × ${text}` });
}

function textOf(scan: Scan, { at, end }: Written): string {
  return scan.raw.slice(at, end).trim();
}

function isBare(written: Written): written is Written & { kind: "counted" } {
  return written.kind === "counted" && written.quantity.unit === undefined && !written.quantity.clock;
}

/** How often the entries are done: the count, or once for a list of that length. */
function timesOf(scan: Scan, { count, items }: Group): number {
  if (!count) return 1;
  const before = scan.problems.length;
  bounded(scan, count.value, DOSE_BOUNDS.sets, count.at, count.end);
  if (items.length <= 1) return scan.problems.length > before ? 1 : count.value;
  if (count.value !== items.length) {
    const maybe = items.map(({ written }) => textOf(scan, written)).join(", ");
    report(scan, "dose/count", count.at, String(items.length), { to: items.at(-1)!.written.end, maybe });
  }
  return 1;
}

/** In a list, what stands behind the last entry alone is meant for all: `10, 8, 8 each side`. */
function shareInside({ items }: Group): void {
  const last = items.at(-1);
  for (const name of ["eachSide", "effort", "reserve", "insideS"] as const) {
    if (!last?.marks[name] || last.bracketed.has(name)) continue;
    if (items.slice(0, -1).some((item) => item.marks[name])) continue;
    for (const item of items) Object.assign(item.marks, { [name]: last.marks[name] });
  }
}

/** Behind a comma it holds for the group's sets, behind the last group for every set, that has none of its own. */
function spread(scan: Scan, groups: readonly Group[]): void {
  groups.forEach((group, i) => {
    const reach = i === groups.length - 1 ? groups.flatMap(({ items }) => items) : group.items;
    for (const [name, mark] of Object.entries(group.marks) as [keyof Marks, Mark<never>][]) {
      const open = reach.filter((item) => item.marks[name] === undefined && mayTake(item.written, name));
      for (const item of open) Object.assign(item.marks, { [name]: mark });
      const own = open.length === 0 ? reach.find((item) => item.marks[name])?.marks[name] : undefined;
      if (own) {
        const code = name === "effort" ? effortClash(own.value as never, mark.value) : "dose/twice";
        report(scan, code, mark.at, code === "dose/twice" ? "1" : EFFORTS, { to: mark.end });
      } else if (open.length === 0 && reach.length > 0) {
        reportAlone(scan, name, mark);
      }
    }
  });
}

function mayTake(written: Written, name: keyof Marks): boolean {
  if (name === "insideS") return written.kind === "counted" && written.bouts.length > 0;
  return name !== "least" || written.kind === "most";
}

function reportAlone(scan: Scan, name: keyof Marks, { at, end }: Mark<unknown>): void {
  if (name === "least") report(scan, "dose/at-least-alone", at, "as many as possible, at least 5", { to: end });
  else report(scan, "dose/inside-alone", at, "3 × 4+4+4, 15 s inside", { to: end });
}

/** A bare number in `30/30/20 s` counts what the next one counts; across a comma each says its own. */
function unitsOf({ items }: Group): readonly (Unit | undefined)[] {
  const units: (Unit | undefined)[] = [];
  for (let i = items.length - 1; i >= 0; i--) {
    const { written } = items[i]!;
    const own = written.kind === "counted" ? written.quantity.unit : undefined;
    units[i] = own ?? (items[i + 1]?.bySlash && isBare(written) ? units[i + 1] : undefined);
  }
  return units;
}

/** @returns false, with a problem noted, where a list counts now repetitions and now something else */
function checkUnits(scan: Scan, { items }: Group, units: readonly (Unit | undefined)[]): boolean {
  const kind = (i: number) => KIND_OF[units[i] ?? "reps"];
  const odd = items.findIndex((_, i) => kind(i) !== kind(0));
  if (odd < 0) return true;
  const { written } = items[odd]!;
  const timed = units[odd] === "s" || units[odd] === "min";
  const text = textOf(scan, written);
  const cure = timed && odd === items.length - 1 ? `rest ${text}` : units[odd] === undefined && `${text} ${units[0]}`;
  report(scan, "dose/mixed-units", written.at, UNIT_WORDS, { to: written.end, ...(cure ? { maybe: cure } : {}) });
  return false;
}

const KIND_OF: Readonly<Record<Unit, Amount["kind"]>> = {
  reps: "reps",
  s: "hold",
  min: "time",
  m: "metres",
  km: "metres",
  contacts: "contacts",
};

function setOf(scan: Scan, { written, marks }: Item, unit: Unit | undefined): SetDose {
  const amount = amountOf(scan, written, unit);
  const bouts = written.kind === "counted" ? written.bouts : [];
  for (const name of ["least", "insideS"] as const) {
    const mark = marks[name];
    if (mark && !mayTake(written, name)) reportAlone(scan, name, mark);
  }
  if (marks.least && written.kind === "most" && written.least !== undefined) {
    report(scan, "dose/twice", marks.least.at, "1", { to: marks.least.end });
  }
  if (bouts.length > 0 && marks.insideS === undefined) {
    const maybe = `${textOf(scan, written)}, 15 s inside`;
    report(scan, "dose/inside-missing", written.at, "15 s inside", { to: written.end, maybe });
  }
  return {
    amount: amount.kind === "most" && marks.least ? { kind: "most", least: marks.least.value } : amount,
    eachSide: marks.eachSide !== undefined,
    ...marks.effort?.value,
    ...(marks.reserve ? { reserve: marks.reserve.value } : {}),
    ...(bouts.length > 0 && marks.insideS ? { within: { bouts, restS: marks.insideS.value } } : {}),
  };
}

/** One dose is for one exercise, so its groups all count the same thing; as many as possible counts repetitions. */
function checkKinds(scan: Scan, groups: readonly Group[]): void {
  const kind = (group: Group) => KIND_OF[unitsOf(group)[0] ?? "reps"];
  const odd = groups.find((group) => group.items.length > 0 && kind(group) !== kind(groups[0]!));
  const written = odd?.items[0]?.written;
  if (written) report(scan, "dose/mixed-units", written.at, UNIT_WORDS, { to: written.end });
}

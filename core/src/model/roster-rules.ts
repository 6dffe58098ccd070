import type { z } from "zod";
import { ageOn, type Day, printDay } from "../day.ts";
import { tell } from "./file-pieces.ts";
import type { Hours } from "./window-text.ts";

/** The parts of a person that are looked at together; any of them may have failed already. */
interface Half {
  readonly windows?: unknown;
  readonly cycle?: unknown;
  readonly days?: unknown;
  readonly born?: unknown;
  readonly mass?: unknown;
  readonly lifts?: unknown;
  readonly limits?: unknown;
  readonly cautions?: unknown;
  readonly screening?: unknown;
  readonly instead?: unknown;
}

/** Tells it when there is no day to train on, or when the days are said in two ways. */
export function tellHours(said: Half, ctx: z.core.$RefinementCtx): void {
  const { windows, cycle, days } = said;
  const none = windows === undefined || (Array.isArray(windows) && windows.length === 0);
  if (none && cycle === undefined) {
    tell(ctx, ["windows"], { code: "person/no-day", found: "", allowed: "mon 17:00–18:30" });
  }
  if (!none && cycle !== undefined)
    tell(ctx, ["cycle"], { code: "person/windows-and-cycle", allowed: "windows, cycle" });
  if (!Array.isArray(windows)) return;
  const any = windows.flatMap((hours: Partial<Hours<string>>, at) =>
    hours?.any === undefined ? [] : [{ at, any: hours.any }],
  );
  if (any[1]) tell(ctx, ["windows", any[1].at], { code: "person/any-twice" });
  if (any[0] && typeof days === "number" && days !== any[0].any) {
    tell(ctx, ["days"], { code: "person/any-and-days", found: String(days), allowed: String(any[0].any) });
  }
}

/** So many hours of one day are enough for everybody, and a calendar takes no more. Ours. */
const MOST_WINDOWS = 24;

/** Tells it when one day has more hours than a calendar takes. */
function tellCrowded(path: readonly (string | number)[], days: readonly unknown[], ctx: z.core.$RefinementCtx): void {
  const counts = new Map<unknown, number>();
  for (const day of days) counts.set(day, (counts.get(day) ?? 0) + 1);
  const most = Math.max(0, ...counts.values());
  if (most > MOST_WINDOWS) {
    tell(ctx, path, { code: "person/many-windows", found: String(most), allowed: `≤ ${MOST_WINDOWS}` });
  }
}

/** Tells it when one day of the week, of the rota, or of hours instead of those has more hours than a calendar takes. */
export function tellManyWindows({ windows, cycle, instead }: Half, ctx: z.core.$RefinementCtx): void {
  const list = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);
  const part = (value: unknown, name: string): unknown => (value as Record<string, unknown> | null | undefined)?.[name];
  tellCrowded(
    ["windows"],
    list(windows).flatMap((hours) => list(part(hours, "days"))),
    ctx,
  );
  tellCrowded(
    ["cycle", "days"],
    list(part(cycle, "days")).map((hours) => part(hours, "day")),
    ctx,
  );
  list(instead).forEach((entry, at) => {
    tellCrowded(
      ["instead", at, "windows"],
      list(part(entry, "windows")).map((hours) => part(hours, "day")),
      ctx,
    );
  });
}

/** The days of an entry of a list, as far as they could be read. */
function daysOf(entry: unknown): { readonly from: Day; readonly to: Day } | undefined {
  const { from, to } = (entry ?? {}) as { readonly from?: unknown; readonly to?: unknown };
  return typeof from === "number" && typeof to === "number" ? { from: from as Day, to: to as Day } : undefined;
}

/** Tells it when hours instead of the usual ones are said twice for a day. */
export function tellOverlap(entries: unknown, ctx: z.core.$RefinementCtx): void {
  if (!Array.isArray(entries)) return;
  const all = entries.map(daysOf);
  all.forEach((own, at) => {
    const other = all.slice(0, at).find((before) => before && own && before.from <= own.to && own.from <= before.to);
    if (own === undefined || other === undefined) return;
    const [found, said] = [own, other].map(({ from, to }) => `${printDay(from)} – ${printDay(to)}`);
    tell(ctx, [at, "from"], { code: "person/instead-twice", found: `${found}, ${said}` });
  });
}

/** Tells it when the session of one day is missed twice. */
export function tellMissedTwice(entries: unknown, ctx: z.core.$RefinementCtx): void {
  if (!Array.isArray(entries)) return;
  const days = entries.map((entry) => (entry as { readonly on?: unknown } | null)?.on);
  days.forEach((on, at) => {
    if (typeof on !== "number" || days.indexOf(on) === at) return;
    tell(ctx, [at, "on"], { code: "person/missed-twice", found: printDay(on as Day) });
  });
}

/** A plan waits for a year at most, all days together: who was away longer begins anew. */
const MOST_WAITING = 366;

/** Tells it, at the entry that is too much, when a plan would wait for more than a year. */
export function tellLongWait(entries: unknown, ctx: z.core.$RefinementCtx): void {
  if (!Array.isArray(entries)) return;
  let sum = 0;
  entries.forEach((entry, at) => {
    const own = (entry as { readonly waits?: unknown } | null)?.waits === true ? daysOf(entry) : undefined;
    if (own === undefined || own.to < own.from) return;
    const before = sum;
    sum += own.to - own.from + 1;
    if (before <= MOST_WAITING && sum > MOST_WAITING) {
      tell(ctx, [at, "to"], { code: "person/long-wait", found: String(sum), allowed: `≤ ${MOST_WAITING}` });
    }
  });
}

/** Tells it when something happened before the birth, or when the age at the screening is none that trains here. */
export function tellBeforeBirth(said: Half, ctx: z.core.$RefinementCtx): void {
  const { born } = said;
  if (typeof born !== "number") return;
  const dated = (value: unknown, key: string) => (value as Record<string, unknown> | null | undefined)?.[key];
  const list = (value: unknown, name: string, key: string) =>
    Array.isArray(value) ? value.map((entry, i) => [[name, i, key], dated(entry, key)] as const) : [];
  const all = [
    [["mass", "on"], dated(said.mass, "on")] as const,
    [["screening", "on"], dated(said.screening, "on")] as const,
    ...list(said.lifts, "lifts", "on"),
    ...list(said.limits, "limits", "from"),
    ...list(said.cautions, "cautions", "from"),
  ];
  for (const [path, on] of all) {
    if (typeof on === "number" && on < born) {
      const allowed = `≥ ${printDay(born as Day)}`;
      tell(ctx, path, { code: "person/before-birth", found: printDay(on as Day), allowed });
    }
  }
  const asked = dated(said.screening, "on");
  if (typeof asked !== "number" || asked < born) return;
  const age = ageOn(born as Day, asked as Day);
  if (!(age >= 5 && age <= 110)) tell(ctx, ["born"], { code: "person/age", found: String(age), allowed: "5–110" });
}

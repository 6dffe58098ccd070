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

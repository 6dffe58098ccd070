import type { z } from "zod";
import type { Dose } from "./dose.ts";
import { tell, unknown } from "./file-pieces.ts";
import type { Path } from "./finding.ts";

/** What can be wrong with a programme beyond the form of its values. Each names a sentence. */
export const PROGRAMME_PROBLEMS = [
  "programme/shape-version",
  "programme/weeks-total",
  "programme/week-outside",
  "programme/weeks-order",
  "programme/slots",
  "programme/sets-differ",
  "programme/empty-session",
  "programme/same-muscle",
] as const;

const MAX_WEEKS = 52;
const MAX_SLOTS = 20;

/** An entry of a file whose parts may be wrong or missing. */
type Entry = Readonly<Record<string, unknown>>;
type Context = z.core.$RefinementCtx;

/**
 * Tells what no single value can show: keys that stand there twice, weeks outside their phase, pairs whose sets
 * differ, ramps that lead nowhere. Runs also where values are wrong, and looks only at those that are right.
 */
export function tellProgrammeFaults(said: unknown, ctx: Context): void {
  const programme = entry(said);
  const phases = list(programme["phases"]).map(entry);
  const weeks = phases.reduce((sum, phase) => sum + (count(phase["weeks"]) ?? 0), 0);
  if (weeks > MAX_WEEKS) {
    tell(ctx, ["phases"], { code: "programme/weeks-total", found: String(weeks), allowed: `1–${MAX_WEEKS}` });
  }
  tellSame(
    ctx,
    phases.map((phase, i) => [phase["key"], ["phases", i, "key"]]),
  );
  for (const [p, phase] of phases.entries()) tellPhaseFaults(phase, ["phases", p], ctx);
  const slots = phases.flatMap((phase, p) =>
    list(phase["sessions"]).flatMap((session, s) => slotsIn(entry(session), ["phases", p, "sessions", s])),
  );
  tellSame(
    ctx,
    slots.map(([slot, at]) => [slot["slot"], [...at, "slot"]]),
  );
  const keys = slots.flatMap(([slot]) => (typeof slot["slot"] === "string" ? [slot["slot"]] : []));
  tellRunsNamedAsSlots(ctx, phases, new Set(keys));
  list(programme["silence"]).forEach((silence, i) => {
    const key = entry(silence)["slot"];
    if (typeof key === "string" && !keys.includes(key)) tell(ctx, ["silence", i, "slot"], unknown(key, new Set(keys)));
  });
  const must = list(entry(programme["weekly"])["must"]);
  must.forEach((muscle, i) => {
    if (must.indexOf(muscle) < i) {
      tell(ctx, ["weekly", "must", i], { code: "programme/same-muscle", found: String(muscle) });
    }
  });
}

/** Runs may share a name, for they are one run then; with a slot of the work they may not. */
function tellRunsNamedAsSlots(ctx: Context, phases: readonly Entry[], keys: ReadonlySet<string>): void {
  for (const [p, phase] of phases.entries())
    for (const [s, session] of list(phase["sessions"]).map(entry).entries())
      for (const [c, item] of list(session["conditioning"]).map(entry).entries()) {
        const name = item["slot"];
        if (typeof name === "string" && keys.has(name))
          tell(ctx, ["phases", p, "sessions", s, "conditioning", c, "slot"], { code: "id/same", found: name });
      }
}

function tellPhaseFaults(phase: Entry, at: Path, ctx: Context): void {
  const weeks = count(phase["weeks"]);
  const sessions = list(phase["sessions"]).map(entry);
  tellWeeks(
    ctx,
    list(phase["light"]).map((week, i) => [week, [...at, "light", i]]),
    1,
    weeks,
  );
  tellSame(
    ctx,
    sessions.map((session, i) => [session["key"], [...at, "sessions", i, "key"]]),
  );
  for (const [s, one] of sessions.entries()) tellSessionFaults(one, [...at, "sessions", s], weeks, ctx);
}

function tellSessionFaults(session: Entry, at: Path, weeks: number | undefined, ctx: Context): void {
  const slots = slotsIn(session, at);
  if (slots.length > MAX_SLOTS) {
    const found = String(slots.length);
    tell(ctx, [...at, "work"], { code: "programme/slots", found, allowed: `1–${MAX_SLOTS}` });
  }
  if (isEmpty(session["work"]) && list(session["conditioning"]).length === 0) {
    tell(ctx, [...at, "work"], { code: "programme/empty-session", found: "0", allowed: `1–${MAX_SLOTS}` });
  }
  for (const [slot, path] of slots) {
    const changes = list(slot["changes"]);
    tellWeeks(
      ctx,
      changes.map((change, i) => [entry(change)["week"], [...path, "changes", i, "week"]]),
      2,
      weeks,
    );
  }
  list(session["work"]).forEach((block, b) => {
    for (const kind of ["pair", "round"] as const) {
      const turns = list(entry(block)[kind]).map(entry);
      if (turns.length > 1) tellSetsDiffer(turns, [...at, "work", b, kind], ctx);
    }
  });
  const keys = slots.flatMap(([slot]) => (typeof slot["slot"] === "string" ? [slot["slot"]] : []));
  list(session["warmup"]).forEach((warmup, i) => {
    const ramp = entry(warmup)["ramp"];
    if (typeof ramp === "string" && !keys.includes(ramp))
      tell(ctx, [...at, "warmup", i, "ramp"], unknown(ramp, new Set(keys)));
  });
}

/** Weeks of a phase that lie outside it, or that do not rise from one to the next. */
function tellWeeks(
  ctx: Context,
  weeks: readonly (readonly [week: unknown, at: Path])[],
  first: number,
  last: number | undefined,
): void {
  let before = 0;
  for (const [said, at] of weeks) {
    const week = count(said);
    if (week === undefined) continue;
    if (last !== undefined && week > last) {
      tell(ctx, at, { code: "programme/week-outside", found: String(week), allowed: `${first}–${last}` });
    } else if (week <= before) {
      tell(ctx, at, { code: "programme/weeks-order", found: String(week), allowed: `> ${before}` });
    }
    before = Math.max(before, week);
  }
}

/** Turns are taken set by set, so in every week all slots of a pair or round have as many sets as the first. */
function tellSetsDiffer(turns: readonly Entry[], at: Path, ctx: Context): void {
  const weeks = new Set([
    1,
    ...turns.flatMap((slot) => list(slot["changes"]).map((change) => count(entry(change)["week"]) ?? 1)),
  ]);
  const told = new Set<string>();
  for (const week of [...weeks].sort((a, b) => a - b)) {
    const [first, ...rest] = turns.map((slot, i) => setsInWeek(slot, week, [...at, i]));
    for (const other of rest) {
      if (first?.sets === undefined || other.sets === undefined || first.sets === other.sets) continue;
      const place = other.at.length >= first.at.length ? other : first;
      const allowed = place === other ? first.sets : other.sets;
      if (told.has(place.at.join("."))) continue;
      told.add(place.at.join("."));
      tell(ctx, place.at, { code: "programme/sets-differ", found: String(place.sets), allowed: String(allowed) });
    }
  }
}

function setsInWeek(slot: Entry, week: number, at: Path): { sets: number | undefined; at: Path } {
  let found = { sets: setsOf(slot["dose"]), at: [...at, "dose"] as Path };
  list(slot["changes"]).forEach((change, i) => {
    const { week: from, dose } = entry(change);
    if ((count(from) ?? 99) <= week) found = { sets: setsOf(dose), at: [...at, "changes", i, "dose"] };
  });
  return found;
}

function setsOf(dose: unknown): number | undefined {
  const sets = (entry(dose) as Partial<Dose>).sets;
  return Array.isArray(sets) ? sets.length : undefined;
}

/** Tells names that stand there twice, at the second. */
function tellSame(ctx: Context, names: readonly (readonly [name: unknown, at: Path])[]): void {
  const seen = new Set<unknown>();
  for (const [name, at] of names) {
    if (typeof name !== "string") continue;
    if (seen.has(name)) {
      let n = 2;
      while (names.some(([other]) => other === `${name}-${n}`)) n++;
      tell(ctx, at, { code: "id/same", found: name, maybe: `${name}-${n}` });
    }
    seen.add(name);
  }
}

function slotsIn(session: Entry, at: Path): readonly (readonly [slot: Entry, at: Path])[] {
  return list(session["work"]).flatMap((said, b) => {
    const block = entry(said);
    const path: Path = [...at, "work", b];
    const kind = (["pair", "round"] as const).find((name) => Array.isArray(block[name]));
    if (kind === undefined) return [[block, path] as const];
    return list(block[kind]).map((slot, i) => [entry(slot), [...path, kind, i] as Path] as const);
  });
}

function entry(said: unknown): Entry {
  return typeof said === "object" && said !== null && !Array.isArray(said) ? (said as Entry) : {};
}

function list(said: unknown): readonly unknown[] {
  return Array.isArray(said) ? said : [];
}

function isEmpty(said: unknown): boolean {
  return Array.isArray(said) && said.length === 0;
}

function count(said: unknown): number | undefined {
  return typeof said === "number" && Number.isInteger(said) && said >= 1 && said <= 99 ? said : undefined;
}

import { type Miss, weeksOf } from "@stave/core/calendar";
import { addDays, type Day, parseDay, printDay } from "@stave/core/day";
import { occurrencesOf } from "@stave/core/measures";
import { MISS_CAUSES, type MissCause, nearNames, type Problem, readDay } from "@stave/core/model";
import type { Dated, DatesInput } from "@stave/core/revise";
import type { Planned } from "./plans.ts";
import type { Got } from "./world.ts";

/** What a coach asks of the days of one person, as it was typed. */
export interface Asked {
  /** The id of a session, or the day on which it stood. */
  readonly missed?: string;
  readonly because?: string;
  readonly back?: string;
  /** Each a session, an equals sign and a day. */
  readonly fixed?: readonly string[];
  readonly keepHours?: boolean;
}

export type Wishes = Pick<DatesInput, "fixed" | "keepHours">;

function problem(code: string, option: string, more: Pick<Problem, "found" | "allowed" | "maybe">): Problem {
  return { code, file: option, at: [], line: 0, column: 0, ...more };
}

function wrong(code: string, option: string, more: Pick<Problem, "found" | "allowed" | "maybe">) {
  return { ok: false as const, problems: [problem(code, option, more)] };
}

function unknown(option: string, found: string, ids: readonly string[], told: readonly string[] = ids) {
  const [maybe] = nearNames(found, ids);
  const allowed = `${told.slice(0, 6).join(", ")}${told.length > 6 ? " …" : ""}`;
  return wrong("schedule/no-such-session", option, { found, allowed, ...(maybe === undefined ? {} : { maybe }) });
}

/** The fixed dates and whether hours are a must. */
export function wishesOf(
  asked: Asked,
  { person, plan }: Pick<Planned, "person" | "plan">,
  on: Day,
  weeks: number,
): Got<Wishes> {
  const ids = occurrencesOf(plan).map(({ id }) => id);
  const fixed = new Map<string, Day>();
  for (const text of asked.fixed ?? []) {
    const [session, date, ...rest] = text.split("=");
    if (!session || !date || rest.length > 0) {
      return wrong("schedule/fixed-form", "--fixed", { found: text, allowed: `${ids[0]}=${printDay(on)}` });
    }
    if (!ids.includes(session)) return unknown("--fixed", session, ids);
    const read = readDay(date);
    if (!read.ok) return { ok: false, problems: [problem(read.wrong.code, "--fixed", read.wrong)] };
    const { last } = weeksOf(person, on, weeks).at(-1)!;
    if (read.value < on || read.value > last) {
      const allowed = `${printDay(on)} – ${printDay(last)}`;
      return wrong("schedule/fixed-outside", "--fixed", { found: date, allowed });
    }
    fixed.set(session, read.value);
  }
  return {
    ok: true,
    value: { ...(fixed.size > 0 ? { fixed } : {}), ...(asked.keepHours ? { keepHours: true as const } : {}) },
  };
}

/** The session that was missed, why, and when the person is back. */
export function missOf({ missed, because, back }: Asked, { placed }: Pick<Dated, "placed">): Got<Miss | undefined> {
  if (missed === undefined) return { ok: true, value: undefined };
  const causes = MISS_CAUSES.join(", ");
  if (!(MISS_CAUSES as readonly (string | undefined)[]).includes(because)) {
    return wrong("schedule/no-cause", "--because", { found: because ?? "", allowed: causes });
  }
  const day = parseDay(missed);
  const at = placed.placements.find((one) => one.session === missed || one.day === day);
  if (at === undefined) {
    const ids = placed.placements.map(({ session }) => session);
    const told = placed.placements.map(({ session, day: on }) => `${session} (${printDay(on)})`);
    return unknown("--missed", missed, ids, told);
  }
  const miss = { session: at.session, because: because as MissCause };
  if (back === undefined) return { ok: true, value: miss };
  const read = readDay(back);
  if (!read.ok) return { ok: false, problems: [problem(read.wrong.code, "--back", read.wrong)] };
  if (read.value <= at.day) {
    return wrong("schedule/back-too-early", "--back", {
      found: back,
      allowed: `${printDay(addDays(at.day, 1))} or later`,
    });
  }
  return { ok: true, value: { ...miss, back: read.value } };
}

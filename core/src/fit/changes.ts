import { EQUIPMENT, type Equipment, type Json, type Limit, type Reason } from "../model/index.ts";
import { cautionData, letterOf, limitData } from "../offer/index.ts";
import { type Built, build, type FitInput } from "./build.ts";
import { reason } from "./reasons.ts";
import { solve } from "./search.ts";
import type { Score } from "./task.ts";

/** Minutes more for every session that are tried. */
const MORE_MINUTES = [5, 10] as const;

/** One thing that somebody could change, and the phase with it changed. */
export interface Change {
  readonly change: Reason;
  readonly input: FitInput;
}

/** What one change gains: must points fewer and want points more than without it. */
export interface Gain {
  readonly change: Reason;
  readonly must: number;
  readonly want: number;
  /** Both plans are proven best, so that the gain is exact. */
  readonly proven: boolean;
}

/** Equipment for want of which a form is set aside in this phase. */
function missing({ sessions }: Built): readonly Equipment[] {
  const aside = sessions.flatMap(({ blocks }) => blocks.flatMap(({ slots }) => slots.flatMap((slot) => slot.aside)));
  const wanted = new Set(
    aside
      .flatMap(({ why }) => why)
      .filter(({ code }) => code === "offer/equipment" || code === "offer/out-of-order")
      .flatMap(({ data }) => (data["groups"] as readonly (readonly Json[])[]).flat()),
  );
  return EQUIPMENT.filter((what) => wanted.has(what));
}

/** The place with one more thing in it, in working order. */
export function withEquipment(input: FitInput, what: Equipment): FitInput {
  const { equipment, outages = [] } = input.place;
  const place = {
    ...input.place,
    equipment: { ...equipment, [what]: Math.max(1, equipment[what] ?? 0) },
    outages: outages.filter((outage) => outage.what !== what),
  };
  return { ...input, place };
}

/** Every session of the phase longer, and the person with time for it. */
export function withMinutes(input: FitInput, more: number): FitInput {
  const longer = <T extends { readonly minutes: number }>(each: T): T => ({ ...each, minutes: each.minutes + more });
  return {
    ...input,
    person: longer(input.person),
    phase: { ...input.phase, sessions: input.phase.sessions.map(longer) },
  };
}

/** Limits by letter: the steps of one letter are lifted together, or the step before would stand again. */
export function lettersOf({ person }: FitInput): readonly (readonly Limit[])[] {
  const letters = new Map<string, readonly Limit[]>();
  for (const limit of person.limits) letters.set(letterOf(limit), [...(letters.get(letterOf(limit)) ?? []), limit]);
  return [...letters.values()];
}

export function withoutLimits(input: FitInput, letter: readonly Limit[]): FitInput {
  return {
    ...input,
    person: { ...input.person, limits: input.person.limits.filter((each) => !letter.includes(each)) },
  };
}

export function withoutCaution(input: FitInput, index: number): FitInput {
  return { ...input, person: { ...input.person, cautions: input.person.cautions.filter((_, at) => at !== index) } };
}

/** Every single change that could matter: each missing thing, minutes, each caution and limit, one day more. */
export function changesOf(input: FitInput, built: Built): readonly Change[] {
  const { person, phase, perWeek } = input;
  return [
    ...missing(built).map((what) => ({
      change: reason("fit/if-equipment", { what }),
      input: withEquipment(input, what),
    })),
    ...MORE_MINUTES.map((more) => ({ change: reason("fit/if-minutes", { more }), input: withMinutes(input, more) })),
    ...person.cautions.map((caution, index) => ({
      change: reason("fit/if-caution", { ...cautionData(caution), who: caution.who }),
      input: withoutCaution(input, index),
    })),
    ...lettersOf(input).map((letter) => ({
      change: reason("fit/if-limit", limitData(letter.at(-1)!)),
      input: withoutLimits(input, letter),
    })),
    ...(perWeek < phase.sessions.length
      ? [{ change: reason("fit/if-day", { days: perWeek + 1 }), input: { ...input, perWeek: perWeek + 1 } }]
      : []),
  ];
}

/** Fewer must points first, then more want points, then as the changes stand. */
function byGain(a: Gain, b: Gain): number {
  return b.must - a.must || b.want - a.want;
}

/**
 * The single changes that make the plan of this phase better, the one that gains most first. Every one is solved: each
 * piece of equipment that some form here lacks, 5 and 10 minutes more for every session, each caution and each limit
 * lifted, one training day more a week. Two changes together are not tried.
 *
 * A caution or limit is a clinician's to lift: a gain says what it costs now, and never that it should go.
 *
 * @returns nothing where no single change helps
 */
export function whatHelps(input: FitInput): { readonly now: Score; readonly gains: readonly Gain[] } {
  const built = build(input);
  const now = solve(built.task)!;
  const gains = changesOf(input, built).map(({ change, input: changed }): Gain => {
    const found = solve(build(changed).task)!;
    return {
      change,
      must: now.must - found.must,
      want: found.want - now.want,
      proven: now.proven && found.proven,
    };
  });
  const helps = ({ must, want }: Gain) => must > 0 || (must === 0 && want > 0);
  return { now: { must: now.must, want: now.want }, gains: gains.filter(helps).toSorted(byGain) };
}

import { type AskedSession, isDirectSet, type WeeklySets } from "../measures/index.ts";
import { type Catalogue, MUSCLES, type Muscle, type Programme, type Span } from "../model/index.ts";
import { weeklyBand } from "../tables/index.ts";
import { inSets, type Quarters, quarters } from "../units.ts";
import { setsCures } from "./cures/sets-cures.ts";
import type { Check, Facts, Found } from "./run/check.ts";
import type { Look } from "./run/look.ts";
import { phasePath } from "./run/walk.ts";

type Data = Facts & {
  readonly phase: string;
  readonly title: string;
  readonly side: "under" | "over" | "helping only" | "cannot judge";
};

/** Muscles that move the body about: with too little for them a programme is short, even if no slot was meant for them. */
const MOVERS: readonly Muscle[] = ["chest", "lats", "mid back", "buttocks", "front thigh", "back thigh"];

/** Muscles that steady: no figure of weekly sets was printed for them, so too little of them is a note. Ours, no source. */
const TRUNK: readonly Muscle[] = ["front trunk", "side trunk", "low back"];

interface Count extends WeeklySets {
  readonly week: number;
  readonly weeks: readonly number[];
  readonly light: boolean;
}

interface Band extends Span {
  /** True when the programme itself gives it. */
  readonly own: boolean;
}

function bandOf(programme: Programme, muscle: Muscle): Band {
  const own = programme.weekly?.sets?.[muscle];
  const { from, to } = own ?? weeklyBand(programme.status, muscle);
  return { from, to, own: own !== undefined };
}

function sizeOf(count: Count, muscle: Muscle): Quarters {
  return count.quarters[muscle] ?? quarters(0);
}

/** The counts on the wrong side of an end of the band, the furthest first. A light week is never too little. */
function outside(counts: readonly Count[], muscle: Muscle, band: Band, side: "under" | "over"): readonly Count[] {
  const isOutside = (count: Count) =>
    side === "over"
      ? !(sizeOf(count, muscle) <= quarters(band.to))
      : !count.light && !(sizeOf(count, muscle) >= quarters(band.from));
  const sign = side === "over" ? -1 : 1;
  return counts.filter(isOutside).sort((a, b) => sign * (sizeOf(a, muscle) - sizeOf(b, muscle)));
}

/** Muscles that some slot is for. */
function directMuscles(sessions: readonly AskedSession[], { exercises }: Catalogue): ReadonlySet<Muscle> {
  const direct = new Set<Muscle>();
  for (const { blocks } of sessions) {
    for (const { slots } of blocks) {
      for (const slot of slots) {
        const exercise = exercises.get(slot.exercise);
        if (exercise === undefined || !slot.dose.sets.some((set) => isDirectSet(exercise, set))) continue;
        for (const muscle in exercise.muscles)
          if (exercise.muscles[muscle as Muscle] === 1) direct.add(muscle as Muscle);
      }
    }
  }
  return direct;
}

function judgePhase(look: Look, phaseIndex: number): readonly Found<Data>[] {
  const { programme, catalogue } = look;
  const phase = programme.phases[phaseIndex]!;
  const at = phasePath(phaseIndex);
  const about = { phase: phase.key, title: phase.title, status: programme.status };
  const weeks = look.weeks[phaseIndex]!;
  const counts = weeks.map(({ week, weeks: alike, light, sets }): Count => ({ week, weeks: alike, light, ...sets }));
  const { unknown } = counts[0]!;
  const { sessions } = weeks.find(({ light }) => !light) ?? weeks[0]!;
  let direct: ReadonlySet<Muscle> | undefined;
  const helping: { muscle: Muscle; sets: number }[] = [];
  const found: Found<Data>[] = [];
  for (const muscle of MUSCLES) {
    const band = bandOf(programme, muscle);
    for (const side of ["under", "over"] as const) {
      const wrong = outside(counts, muscle, band, side);
      const worst = wrong[0];
      // With an exercise that nobody knows the count is short, so "too little" cannot be told.
      if (worst === undefined || (side === "under" && unknown.length > 0)) continue;
      const size = sizeOf(worst, muscle);
      if (side === "under" && !band.own && !MOVERS.includes(muscle)) {
        direct ??= directMuscles(sessions, catalogue);
        if (!direct.has(muscle)) {
          helping.push({ muscle, sets: inSets(size) });
          continue;
        }
      }
      const weeks = wrong.flatMap((count) => count.weeks).sort((a, b) => a - b);
      const data = { ...about, side, muscle, sets: inSets(size), from: band.from, to: band.to, own: band.own };
      const gap = side === "under" ? quarters(band.from) - size : size - quarters(band.to);
      found.push({
        at,
        ...(side === "under" && !band.own && TRUNK.includes(muscle) ? { severity: "note" } : {}),
        data: { ...data, week: worst.week, weeks },
        cures: () => setsCures(look, phaseIndex, muscle, side, gap as Quarters),
      });
    }
  }
  const { from } = weeklyBand(programme.status, "chest");
  if (helping.length > 0) {
    found.push({ at, severity: "note", data: { ...about, side: "helping only", from, muscles: helping } });
  }
  if (unknown.length > 0) {
    found.push({ at, severity: "note", data: { ...about, side: "cannot judge", unknown: [...new Set(unknown)] } });
  }
  return found;
}

/**
 * Weekly fractional sets of a muscle under or over its band, in any week of a phase; light weeks may fall under it.
 * Bands are the programme's own, else those of its training status.
 *
 * A muscle that no slot is for, and that is no great mover, is named in one note a phase. With an exercise that nobody
 * knows, too little cannot be told, and a note says so. Too little for the trunk is a note.
 *
 * The remedy changes the sets of slots that train the muscle.
 */
export const setsOutsideBand: Check<"week/sets-outside-band", Data> = {
  id: "week/sets-outside-band",
  severity: "warn",
  sources: ["pelland2024", "iusca2021", "bazValle2022", "practice", "ours"],
  run(look) {
    return look.programme.phases.flatMap((_, index) => judgePhase(look, index));
  },
};

import type { FitTask } from "@stave/core/fit";
import { MUSCLES } from "@stave/core/model";
import { numbers } from "./numbers.ts";

type Block = FitTask["blocks"][number];
type Way = Block["ways"][number];
type Option = Way["steps"][number][number];

/** How large a made-up phase is, and how much the person's kit and minutes leave. */
export interface Shape {
  readonly sessions: number;
  readonly slots: number;
  readonly forms: number;
  /** Share of the kit that the person has. */
  readonly kit: number;
  readonly minutes: readonly [least: number, most: number];
  /** Most different busy stations in one session. */
  readonly stations: number;
}

export const SHAPES = {
  "3x4": { sessions: 3, slots: 4, forms: 120, kit: 0.7, minutes: [25, 45], stations: 3 },
  "4x6": { sessions: 4, slots: 6, forms: 250, kit: 0.7, minutes: [40, 65], stations: 3 },
  "4x8": { sessions: 4, slots: 8, forms: 250, kit: 0.7, minutes: [50, 80], stations: 3 },
  "6x8": { sessions: 6, slots: 8, forms: 250, kit: 0.7, minutes: [50, 80], stations: 3 },
  "little-kit": { sessions: 4, slots: 6, forms: 250, kit: 0.25, minutes: [25, 40], stations: 2 },
} as const satisfies Readonly<Record<string, Shape>>;

const PATTERNS = 15;
const THINGS = 20;
/** The first so many things are busy stations. */
const STATIONS = 6;
const NEIGHBOUR = (pattern: number) => (pattern % 2 === 0 ? pattern + 1 : pattern - 1);
const PUSH_PULL = MUSCLES.length;
const KNEE_HIP = MUSCLES.length + 1;

interface Form {
  readonly id: string;
  readonly pattern: number;
  readonly rung: number;
  /** Muscle to quarter-sets for each set: 4 where it drives, 2 where it helps. */
  readonly muscles: ReadonlyMap<number, number>;
  readonly needs: number | undefined;
  readonly repS: number;
  readonly setUpS: number;
  readonly changeS: number;
  readonly moveS: number;
  readonly watch: number;
  readonly never: boolean;
  readonly liked: number;
  readonly recorded: boolean;
}

interface Asked {
  readonly key: string;
  readonly pattern: number;
  readonly rung: number;
  readonly sets: number;
  readonly reps: number;
  readonly restS: number;
}

/**
 * A seeded phase for a seeded person: forms on ladders of 15 movements with muscles, kit and times; slots that each ask
 * for a movement, a rung and a dose, some of them in pairs and rounds; bands for 20 muscles and two balances. The points
 * are those of the real fit. Nothing in it is anybody's data.
 */
export function fitInstance(seed: number, shape: Shape): FitTask {
  const next = numbers(seed);
  const whole = (from: number, to: number) => from + Math.floor(next() * (to - from + 1));
  const oneOf = <T>(list: readonly T[]): T => list[Math.floor(next() * list.length)]!;
  const forms = makeForms(shape.forms, next, whole);
  const kit = new Set(Array.from({ length: THINGS }, (_, thing) => thing).filter(() => next() < shape.kit));
  const stands = Array.from({ length: PATTERNS }, () => whole(0, 12));
  const may = forms.filter(
    (form) =>
      !form.never && (form.needs === undefined || kit.has(form.needs)) && form.rung <= stands[form.pattern]! + 2,
  );
  const minutes = whole(...shape.minutes);
  const blocks: Block[] = [];
  for (let session = 0; session < shape.sessions; session++) {
    const order = Array.from({ length: PATTERNS }, (_, pattern) => ({ pattern, at: next() })).sort(
      (a, b) => a.at - b.at,
    );
    let slot = 0;
    while (slot < shape.slots) {
      const left = shape.slots - slot;
      const size = Math.min(left, next() < 0.2 ? 2 : next() < 0.06 ? 3 : 1);
      const sets = whole(2, 4);
      const restS = oneOf([60, 90, 120, 150]);
      const asked = Array.from({ length: size }, (_, at): Asked => {
        const pattern = order[(slot + at) % 7]!.pattern;
        return { key: `s${session}-${slot + at}`, pattern, rung: whole(2, 12), sets, reps: whole(5, 12), restS };
      });
      blocks.push({
        session,
        slots: asked.map(({ key }) => key),
        ways: waysOf(asked, may, stands, slot > 0),
        atOnce: new Map(Array.from({ length: STATIONS }, (_, station) => [`station ${station}`, 1])),
      });
      slot += size;
    }
  }
  const perWeek = shape.sessions * shape.slots;
  const rows = MUSCLES.map((muscle): FitTask["rows"][number] => {
    const low = perWeek < 16 ? 16 : 32;
    const points = { underPoints: 3, overPoints: 4 };
    return { id: muscle, muscle, level: "want", low: next() < 0.15 ? 0 : low, high: low * 2 + 8, ...points };
  });
  const balance = { level: "want", low: -8, high: 8, underPoints: 3, overPoints: 3 } as const;
  return {
    capacity: Array.from({ length: shape.sessions }, () => 12 * minutes - whole(36, 96)),
    stations: shape.stations,
    blocks,
    rows: [...rows, { id: "push − pull", ...balance }, { id: "knee − hip", ...balance }],
  };
}

function makeForms(count: number, next: () => number, whole: (from: number, to: number) => number): readonly Form[] {
  const drives = Array.from({ length: PATTERNS }, () => [whole(0, 19), whole(0, 19)]);
  const helps = Array.from({ length: PATTERNS }, () => [whole(0, 19), whole(0, 19), whole(0, 19)]);
  return Array.from({ length: count }, (_, index): Form => {
    const pattern = index % PATTERNS;
    const muscles = new Map<number, number>();
    for (const muscle of helps[pattern]!) if (next() < 0.7) muscles.set(muscle, 2);
    for (const muscle of drives[pattern]!) if (next() < 0.8) muscles.set(muscle, 4);
    if (next() < 0.2) muscles.set(whole(0, 19), 2);
    const slow = next() < 0.3;
    return {
      id: `form ${index}`,
      pattern,
      rung: Math.floor(index / PATTERNS),
      muscles,
      needs: next() < 0.65 ? whole(0, THINGS - 1) : undefined,
      repS: whole(2, 5),
      setUpS: slow ? whole(60, 120) : whole(10, 45),
      changeS: slow ? whole(10, 30) : whole(0, 8),
      moveS: whole(15, 30),
      watch: next() < 0.15 ? whole(1, 3) : 0,
      never: next() < 0.12,
      liked: next() < 0.06 ? 15 : next() < 0.06 ? -25 : 0,
      recorded: next() < 0.08,
    };
  });
}

function wantOf(form: Form, asked: Asked, stands: readonly number[], first: ReadonlyMap<number, number>): number {
  const same = form.pattern === asked.pattern;
  const wanted = Math.min(asked.rung + 2, Math.max(asked.rung - 3, stands[asked.pattern]!));
  const steps = Math.abs(form.rung - wanted);
  const away = Math.min(4, Math.abs(form.rung - stands[form.pattern]!));
  const rung = same ? Math.max(0, 100 - 30 * steps) : Math.max(0, 40 - 15 * (form.recorded ? 0 : away));
  const outside = same ? -10 * Math.max(0, asked.rung - 3 - form.rung, form.rung - asked.rung - 2) : 0;
  let [dot, a, b] = [0, 0, 0];
  for (let muscle = 0; muscle < MUSCLES.length; muscle++) {
    const [x, y] = [first.get(muscle) ?? 0, form.muscles.get(muscle) ?? 0];
    dot += x * y;
    a += x * x;
    b += y * y;
  }
  const alike = a > 0 && b > 0 ? Math.round((40 * dot) / Math.sqrt(a * b)) : 0;
  return rung + outside + (same ? 60 : 25) + alike + form.liked - 5 * form.watch;
}

function rowsOf(form: Form, sets: number): Option["rows"] {
  const muscles = [...form.muscles].sort(([a], [b]) => a - b).map(([muscle, each]) => [muscle, each * sets] as const);
  const side = [PUSH_PULL, PUSH_PULL, KNEE_HIP, KNEE_HIP][form.pattern % 8];
  const sign = form.pattern % 2 === 0 ? 4 : -4;
  return side === undefined ? muscles : [...muscles, [side, sign * sets] as const];
}

function waysOf(
  asked: readonly Asked[],
  may: readonly Form[],
  stands: readonly number[],
  moves: boolean,
): readonly Way[] {
  const open = asked.map(
    (slot): Option => ({
      exercise: undefined,
      sets: 0,
      must: 10,
      want: 0,
      time: 0,
      rows: [],
      stations: [],
      rank: 99,
      lines: [{ id: "fit/open-slot", level: "must", points: -10, data: { slot: slot.key } }],
    }),
  );
  const coach = asked[0]!.sets;
  const counts = [1, 2, 3, 4, 5].filter((sets) => sets >= coach - 2 && sets <= coach + 1);
  const nearest = counts.toSorted((a, b) => Math.abs(a - coach) - Math.abs(b - coach) || a - b);
  const candidates = asked.map((slot) => {
    const near = may.filter(({ pattern }) => pattern === slot.pattern || pattern === NEIGHBOUR(slot.pattern));
    const first = near.find(({ pattern, rung }) => pattern === slot.pattern && rung >= slot.rung) ?? near[0];
    const worth = near.map((form) => ({ form, want: wantOf(form, slot, stands, first?.muscles ?? new Map()) }));
    return worth.sort((a, b) => b.want - a.want || (a.form.id < b.form.id ? -1 : 1));
  });
  const optionOf = (at: number, rank: number, sets: number, alone: boolean): Option => {
    const { form, want } = candidates[at]![rank]!;
    const { reps, restS } = asked[at]!;
    const rest = alone ? (sets - 1) * restS : 0;
    const seconds = form.setUpS + sets * reps * form.repS + (sets - 1) * form.changeS + rest;
    const changed = sets > coach ? -20 * (sets - coach) : -8 * (coach - sets);
    const lines = [{ id: "made-up", level: "want", points: want + changed, data: {} } as const];
    return {
      exercise: form.id,
      sets,
      must: 0,
      want: want + changed,
      time: Math.ceil((seconds + (moves || at > 0 ? form.moveS : 0)) / 4),
      rows: rowsOf(form, sets),
      stations: form.needs !== undefined && form.needs < STATIONS ? [`station ${form.needs}`] : [],
      rank,
      lines,
    };
  };
  const alone = asked.map((_, at) =>
    candidates[at]!.flatMap((_, rank) => counts.map((sets) => optionOf(at, rank, sets, true))),
  );
  if (asked.length === 1) return [{ time: 0, steps: [[...alone[0]!, open[0]!]] }];
  const subsets = Array.from({ length: 2 ** asked.length }, (_, mask) =>
    asked.flatMap((_, at) => (Math.floor(mask / 2 ** at) % 2 === 1 ? [at] : [])),
  ).sort((a, b) => b.length - a.length);
  return subsets.flatMap((filled) => {
    const steps = (options: (at: number) => readonly Option[]) =>
      asked.map((_, at) => (filled.includes(at) ? options(at) : [open[at]!]));
    const ways: readonly Way[] =
      filled.length < 2
        ? [{ time: 0, steps: steps((at) => alone[at]!) }]
        : nearest.map((sets) => ({
            time: Math.ceil(((sets - 1) * asked[0]!.restS) / 4),
            steps: steps((at) => candidates[at]!.map((_, rank) => optionOf(at, rank, sets, false))),
          }));
    return ways.filter((way) => way.steps.every((step) => step.length > 0));
  });
}

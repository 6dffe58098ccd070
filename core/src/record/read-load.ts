import { sayMass } from "../loads/index.ts";
import {
  type Exercise,
  MAX_LOAD,
  type NumberCell,
  nameKey,
  OTHER_BARS,
  type Place,
  readWrittenLoad,
  type SetDone,
  type WrittenLoad,
} from "../model/index.ts";
import { type Load, type Mass, type MassUnit, massOf } from "../units.ts";
import { ask, repair, type Taken, taken } from "./taken.ts";

/** How many times what was asked is a slip until somebody says that it is meant. Ours, no source. */
const FAR = 3;

/** What a cell of loads is read beside. */
export interface LoadContext {
  readonly exercise: Exercise;
  /** The unit of numbers without one; undefined: nobody said. */
  readonly unit?: MassUnit;
  /** What a number means where there is one implement for each hand; undefined: nobody said. */
  readonly per?: "each" | "together";
  readonly place: Place;
  readonly massKnown: boolean;
  readonly machine?: string;
  /** What the plan asks, to tell a slip by. */
  readonly asked?: Load;
}

export type LoadSaid = Pick<SetDone, "load" | "pulledBy">;

/** Reads one cell; a blank one is a load that nobody touched. `!` at its end says that a far load is meant. */
export function readLoadCell(text: string, number: NumberCell, context: LoadContext): Taken<LoadSaid> {
  if (text === "") return taken({ load: "as asked" });
  const meant = text.endsWith("!");
  const bare = meant ? text.slice(0, -1).trim() : text;
  if (number.kind === "ask") return ask("record/load-doubt", { maybe: number.maybe.join(" or ") });
  const written: WrittenLoad =
    number.kind === "number" && !meant ? { kind: "number", value: number.value } : readWrittenLoad(bare);
  const read = meaningOf(written, context);
  if (!read.ok || typeof read.value.load === "string") return read;
  const { load } = read.value;
  if (load.value > MAX_LOAD[load.unit])
    return ask("record/load-far", { allowed: `at most ${MAX_LOAD[load.unit]} ${load.unit}` });
  const { asked } = context;
  const isFar = asked !== undefined && massOf(load) > FAR * massOf(asked);
  return isFar && !meant
    ? ask("record/load-far", { allowed: `${asked.value} ${asked.unit}`, maybe: `${text}!` })
    : read;
}

/** Reads one cell with a load for all sets, or one for each: `60/65/70`. */
export function readLoadsCell(
  text: string,
  number: NumberCell,
  context: LoadContext,
  sets: number,
): Taken<readonly LoadSaid[]> {
  const parts = text.split(/ ?\/ ?(?=[\d.])/);
  if (parts.length < 2 || parts.every((part) => part === parts[0])) {
    const one = readLoadCell(parts[0]!, number, context);
    return one.ok ? taken([one.value], ...one.repairs) : one;
  }
  if (parts.length !== sets) return ask("record/loads-of-sets", { allowed: `1 or ${sets}` });
  const unit = /[a-z#]+$/i.exec(parts.at(-1)!)?.[0] ?? "";
  const read = parts.map((part) =>
    readLoadCell(/[a-z#]$/i.test(part) ? part : `${part}${unit}`, { kind: "text", text: part }, context),
  );
  const wrong = read.find((each) => !each.ok);
  if (wrong !== undefined && !wrong.ok) return wrong;
  const good = read.flatMap((each) => (each.ok ? [each] : []));
  return taken(
    good.map(({ value }) => value),
    ...good.flatMap(({ repairs }) => repairs).slice(0, 1),
  );
}

function meaningOf(written: WrittenLoad, context: LoadContext): Taken<LoadSaid> {
  const { exercise, place, machine } = context;
  if (written.kind === "unknown") return ask("record/load");
  const meaning = exercise.loadMeaning;
  switch (written.kind) {
    case "number":
    case "load": {
      const load = asLoad(written, context.unit);
      if (load === undefined) return ask("record/unit", { allowed: "kg, lb" });
      if (meaning === "per hand") return ofHands(load, context);
      if (meaning === "added to body") return added(load, context, repair("record/as-added", { ...load }));
      if (meaning === "assist") return added(load, context, repair("record/as-help", { ...load }));
      return ["total", "one implement", "stack"].includes(meaning) ? taken({ load }) : ask("record/load-kind");
    }
    case "pair": {
      const load = asLoad({ kind: "number", value: written.each, ...unitIn(written) }, context.unit);
      if (load === undefined) return ask("record/unit", { allowed: "kg, lb" });
      return meaning === "per hand" ? taken({ load }) : ask("record/load-kind");
    }
    case "a side": {
      const plates = asLoad({ kind: "number", value: written.each, ...unitIn(written) }, context.unit);
      const [bar, ...more] = barsFor(exercise, place);
      if (plates === undefined) return ask("record/unit", { allowed: "kg, lb" });
      if (meaning !== "total") return ask("record/load-kind");
      if (bar === undefined || more.length > 0) return askBar(bar, ...more);
      const load = sayMass((massOf(bar) + 2 * massOf(plates)) as Mass, plates.unit);
      return taken({ load }, repair("record/with-bar", { ...load }));
    }
    case "added":
    case "help": {
      const load = asLoad({ kind: "number", value: written.value, ...unitIn(written) }, context.unit);
      if (load === undefined) return ask("record/unit", { allowed: "kg, lb" });
      const fits = meaning === (written.kind === "added" ? "added to body" : "assist");
      return fits ? added(load, context) : ask("record/load-kind");
    }
    case "body":
    case "nothing":
      return ["added to body", "body only", "height", "none"].includes(meaning)
        ? taken({ load: "none" })
        : ask("record/load-kind");
    case "empty bar": {
      const [bar, ...more] = barsFor(exercise, place);
      if (meaning !== "total") return ask("record/load-kind");
      if (bar === undefined || more.length > 0) return askBar(bar, ...more);
      return taken({ load: bar }, repair("record/only-bar", { ...bar }));
    }
    case "band": {
      const band = place.bands?.find((label) => nameKey(label) === nameKey(written.name));
      if (meaning !== "band") return ask("record/load-kind");
      return band === undefined
        ? ask("record/band-unknown", { allowed: (place.bands ?? []).join(", ") })
        : taken({ load: "none", pulledBy: { band } });
    }
    case "setting":
      if (meaning !== "stack" && meaning !== "assist") return ask("record/load-kind");
      return machine === undefined
        ? ask("record/machine-missing")
        : taken({ load: "none", pulledBy: { setting: written.value } });
  }
}

/** The bars that a movement can be done with. */
function barsFor({ needs }: Exercise, place: Place): readonly Load[] {
  const named = OTHER_BARS.filter((bar) => needs.flat().includes(bar)).flatMap((bar) => place.otherBars?.[bar] ?? []);
  return needs.flat().includes("barbell") ? [...(place.bars ?? []), ...named] : named;
}

function askBar(...bars: readonly (Load | undefined)[]) {
  return ask("record/bar-weight", { allowed: bars.map((each) => each && `${each.value} ${each.unit}`).join(", ") });
}

function unitIn({ unit }: { readonly unit?: MassUnit }) {
  return unit === undefined ? {} : { unit };
}

function asLoad(
  written:
    | { readonly kind: "number"; readonly value: number; readonly unit?: MassUnit }
    | { readonly kind: "load"; readonly load: Load },
  usual: MassUnit | undefined,
): Load | undefined {
  if (written.kind === "load") return written.load;
  const unit = written.unit ?? usual;
  return unit === undefined ? undefined : { value: written.value, unit };
}

function ofHands(load: Load, { per }: LoadContext): Taken<LoadSaid> {
  if (per === undefined) return ask("record/per-hand", { maybe: `2x${load.value}` });
  if (per === "each") return taken({ load });
  const half: Load = { value: Math.round(load.value * 500) / 1000, unit: load.unit };
  return taken({ load: half }, repair("record/halved", { ...half }));
}

function added(
  load: Load,
  { massKnown }: LoadContext,
  ...repairs: readonly ReturnType<typeof repair>[]
): Taken<LoadSaid> {
  return taken({ load }, ...repairs, ...(massKnown ? [] : [{ code: "record/mass-missing", data: {} } as const]));
}

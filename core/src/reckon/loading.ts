import { LOAD_STEP } from "../equations/index.ts";
import { barLoadings, type LoadSet, nearest } from "../loads/index.ts";
import { asLoad, type Load, type Mass, type MassUnit, massOf } from "../units.ts";
import { DIMENSIONS } from "./quantity.ts";
import type { Figure, Given, Reckoning } from "./reckoning.ts";

const OURS = [{ source: "ours", who: "plain sums; loads are taken as they are marked" }] as const;

/** A load in the unit it was written in, so that nothing is converted to and fro. */
function loadOf(given: Given, key: string): Load {
  const unit = given.unit(key) as MassUnit;
  return asLoad(massOf({ value: given.number(key) / DIMENSIONS.mass[unit], unit }), unit);
}

function loadFigure(what: string, { value, unit }: Load): Figure {
  return { what, source: "ours", value, unit, decimals: 3 };
}

/** What rises from one load to the next, and whether that is a usual step. */
function step(from: Mass, to: Mass): readonly Figure[] {
  if (!(from > 0)) return [];
  const percent = (100 * (to - from)) / from;
  const { from: least, to: most } = LOAD_STEP.percent;
  const name = percent > most + 1e-9 ? "over" : percent >= least - 1e-9 ? "within" : "under";
  return [
    { what: "load-step", source: "ours", value: percent, unit: "%", decimals: 1 },
    ...(percent > 0
      ? [{ what: "load-step-class", source: LOAD_STEP.source, value: `${name} ${least} to ${most} %` } as const]
      : []),
  ];
}

const barLoad: Reckoning = {
  name: "bar-load",
  asks: [
    { key: "load", dimension: "mass" },
    { key: "bar", dimension: "mass" },
    { key: "plates", list: "plates" },
    { key: "collars", dimension: "mass", optional: true },
  ],
  about: () => OURS,
  figures: (given) => {
    const wanted = massOf(loadOf(given, "load"));
    const collars = given.numberIf("collars") === undefined ? undefined : loadOf(given, "collars");
    const all = barLoadings(loadOf(given, "bar"), collars, given.plates("plates"));
    const down = all.findLast(({ total }) => massOf(total) <= wanted);
    const up = all.find(({ total }) => massOf(total) >= wanted);
    const figures = (what: string, found: typeof down): readonly Figure[] =>
      found === undefined
        ? []
        : [
            loadFigure(what, found.total),
            {
              what: "plates-a-side",
              source: "ours",
              value: found.side.map(({ value, unit }) => `${value} ${unit}`).join(" + ") || "none",
            },
          ];
    if (down === up) return figures("load-here", down);
    if (down === undefined) return figures("bar-too-heavy", all[0]);
    return [...figures("load-easier", down), ...figures("load-harder", up)];
  },
};

const nearestLoad: Reckoning = {
  name: "nearest-load",
  asks: [
    { key: "load", dimension: "mass" },
    { key: "loads", list: "loads" },
    { key: "help", of: ["yes", "no"], optional: true },
    { key: "mass", dimension: "mass", optional: true },
  ],
  about: () => OURS,
  figures: (given) => {
    const loads = given.loads("loads");
    const help = given.wordIf("help") === "yes";
    const pins = help ? loads.toReversed() : loads;
    const set: LoadSet = { kind: "masses", loads };
    const { down, up } = nearest(massOf(loadOf(given, "load")), set, "down");
    const [easier, harder] = help ? [up, down] : [down, up];
    if (easier !== undefined && easier === harder) {
      const next = pins[pins.indexOf(easier) + 1];
      return [
        loadFigure("load-here", easier),
        ...(next ? [loadFigure("load-next", next), ...stepOf(easier, next)] : []),
      ];
    }
    return [
      ...(easier === undefined ? [] : [loadFigure("load-easier", easier)]),
      ...(harder === undefined
        ? []
        : [loadFigure(easier === undefined ? "lightest-too-heavy" : "load-harder", harder)]),
      ...(easier === undefined || harder === undefined ? [] : stepOf(easier, harder)),
    ];
    /** What a step of help adds to the work depends on the body, so without its mass there is no share. */
    function stepOf(from: Load, to: Load): readonly Figure[] {
      if (!help) return step(massOf(from), massOf(to));
      if (given.numberIf("mass") === undefined) return [];
      const body = massOf(loadOf(given, "mass"));
      return step((body - massOf(from)) as Mass, (body - massOf(to)) as Mass);
    }
  },
};

const loadAtPercent: Reckoning = {
  name: "load-at-percent",
  asks: [
    { key: "max", dimension: "mass" },
    { key: "percent", dimension: "share" },
  ],
  about: () => OURS,
  figures: (given) => {
    const percent = given.number("percent");
    if (!(percent > 0 && percent <= 100))
      throw new RangeError(
        `Cannot take a share of a maximum as it must be over 0 and at most 100 %: current value is ${percent}`,
      );
    const { unit, ...max } = loadOf(given, "max");
    return [
      loadFigure("load-at-percent", asLoad(Math.round((massOf({ unit, ...max }) * percent) / 100) as Mass, unit)),
    ];
  },
};

const loadStep: Reckoning = {
  name: "load-step",
  asks: [
    { key: "from", dimension: "mass" },
    { key: "to", dimension: "mass" },
  ],
  about: () => [
    { source: LOAD_STEP.source, who: "adults in good health; 2 to 10 % after 1 to 2 repetitions over the target" },
  ],
  figures: (given) => {
    const [from, to] = [loadOf(given, "from"), loadOf(given, "to")];
    if (!(from.value > 0)) throw new RangeError("Cannot tell a step as the first load must be over 0");
    return step(massOf(from), massOf(to));
  },
};

const withBody: Reckoning = {
  name: "with-body",
  asks: [
    { key: "mass", dimension: "mass" },
    { key: "added", dimension: "mass", optional: true },
    { key: "help", dimension: "mass", optional: true },
    { key: "share", dimension: "share", optional: true },
  ],
  about: () => [{ source: "ours", who: "body mass of that day; its share where none is said is all of it" }],
  figures: (given) => {
    const [mass, percent] = [loadOf(given, "mass"), given.numberIf("share") ?? 100];
    if (!(percent > 0 && percent <= 100))
      throw new RangeError(
        `Cannot take a share of body mass as it must be over 0 and at most 100 %: current value is ${percent}`,
      );
    const of = (key: string) => (given.numberIf(key) === undefined ? 0 : massOf(loadOf(given, key)));
    const moved = Math.round((massOf(mass) * percent) / 100) + of("added") - of("help");
    if (!(moved >= 0)) throw new RangeError("Cannot tell what is moved as the help is more than the body");
    return [loadFigure("moved-in-all", asLoad(moved as Mass, mass.unit))];
  },
};

const held: Reckoning = {
  name: "held",
  asks: [
    { key: "load", dimension: "mass" },
    { key: "hands", of: ["one", "two"] },
    { key: "limit", dimension: "mass", optional: true },
  ],
  about: () => [{ source: "intPound1959", who: "1 lb = 0.45359237 kg; a limit counts all that is held at once" }],
  figures: (given) => {
    const load = loadOf(given, "load");
    const total = (given.word("hands") === "two" ? 2 * massOf(load) : massOf(load)) as Mass;
    const both = (what: string, mass: Mass) =>
      (["kg", "lb"] as const).map((unit) => loadFigure(what, asLoad(mass, unit)));
    if (given.numberIf("limit") === undefined) return both("held-in-all", total);
    const limit = massOf(loadOf(given, "limit"));
    return [
      ...both("held-in-all", total),
      ...both("limit", limit),
      { what: "against-limit", source: "ours", value: total > limit ? "over it" : "within it" },
    ];
  },
};

/** Loads that can be made ready, and what they come to. */
export const LOADING: readonly Reckoning[] = [barLoad, nearestLoad, loadAtPercent, loadStep, withBody, held];

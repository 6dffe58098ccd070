import { type Equipment, type Exercise, type OtherBar, type Place, USUAL } from "../model/index.ts";
import { type Load, massOf } from "../units.ts";
import { reachableTotals } from "./bar-loadings.ts";
import type { LoadSet } from "./load-set.ts";
import { barTotals } from "./loading-of.ts";
import { plateSums } from "./plate-sums.ts";
import { sayMass } from "./say-mass.ts";

const NONE: LoadSet = { kind: "none" };
/** What a filled bag can be put in or hung on; a place names their loads together, under `bags`. */
const FILLED: readonly Equipment[] = ["weighted ball", "sandbag", "bag", "backpack", "weight vest", "ankle weight"];

/**
 * Which loads exist for an exercise at a place, in the meaning of the exercise.
 *
 * total           any bar of the place with its plates; curl, hex and guided bars where the place says what they weigh
 * per hand        implements of which there are two
 * one implement   every single implement that the exercise can be done with
 * added to body   bags and single implements; with a dip belt, plates together, up to 10
 * stack, assist   the pins of the first machine named that is here
 * band            the labels
 *
 * @returns none for body mass and heights, and where the place does not say what it has
 * @source ours
 * @example
 * loadsFor(gobletSquat, home) //=> { kind: "masses", loads: [{ value: 10, unit: "kg" }] }
 */
export function loadsFor(exercise: Exercise, place: Place): LoadSet {
  const tools = exercise.needs.flat();
  switch (exercise.loadMeaning) {
    case "total":
      return masses(tools.flatMap((tool) => (tool === "barbell" ? barbells(place) : otherBar(tool, place))));
    case "per hand":
      return masses(tools.flatMap((tool) => inPairs(tool, place)));
    case "one implement":
      return masses(tools.flatMap((tool) => singly(tool, place)));
    case "added to body":
      return masses(tools.flatMap((tool) => (tool === "dip belt" ? onBelt(place) : singly(tool, place))));
    case "stack":
      return pins(tools, place, false);
    case "assist": {
      const machine = pins(tools, place, true);
      return machine.kind === "none" && tools.includes("band") ? bands(place) : machine;
    }
    case "band":
      return bands(place);
    default:
      return NONE;
  }
}

function masses(loads: readonly Load[]): LoadSet {
  const known = new Map(loads.map((load) => [massOf(load), load]));
  const rising = [...known].sort(([a], [b]) => a - b).map(([, load]) => load);
  return rising.length === 0 ? NONE : { kind: "masses", loads: rising };
}

/** A list of loads is itself the word that the thing is here, unless the place counts it as 0. */
function isHere(tool: Equipment, place: Place, listed: boolean): boolean {
  const count = place.equipment[tool];
  return count === undefined ? listed || USUAL.includes(tool) : count > 0;
}

function barbells(place: Place): readonly Load[] {
  return isHere("barbell", place, true) ? [...barTotals(place).values()].map((loading) => loading.total) : [];
}

function otherBar(tool: Equipment, place: Place): readonly Load[] {
  const bar = place.otherBars?.[tool as OtherBar];
  if (bar === undefined) return filled(tool, place);
  return isHere(tool, place, true) ? reachableTotals(bar, undefined, place.plates ?? []) : [];
}

function filled(tool: Equipment, place: Place): readonly Load[] {
  return FILLED.includes(tool) && isHere(tool, place, false) ? (place.bags ?? []) : [];
}

function singly(tool: Equipment, place: Place): readonly Load[] {
  if (!isHere(tool, place, true)) return [];
  if (tool === "dumbbell") return place.dumbbells?.loads ?? [];
  if (tool === "kettlebell") return place.kettlebells ?? [];
  if (tool === "plates") return wholePairs(place).map((plate) => plate.load);
  return filled(tool, place);
}

function inPairs(tool: Equipment, place: Place): readonly Load[] {
  const loads = singly(tool, place);
  if (tool === "plates" || (tool === "dumbbell" && place.dumbbells?.pairs === true)) return loads;
  return loads.filter((load) => loads.filter((other) => massOf(other) === massOf(load)).length >= 2);
}

function wholePairs(place: Place): NonNullable<Place["plates"]> {
  return (place.plates ?? []).filter((plate) => plate.pairs >= 1);
}

/** On a belt both plates of a pair hang singly. */
function onBelt(place: Place): readonly Load[] {
  if (!isHere("dip belt", place, false)) return [];
  const singles = wholePairs(place).map(({ load, pairs }) => ({ load, count: 2 * Math.floor(pairs) }));
  return plateSums(singles).flatMap(({ mass, plates }) => plates.slice(0, 1).map(({ unit }) => sayMass(mass, unit)));
}

function pins(tools: readonly Equipment[], place: Place, help: boolean): LoadSet {
  for (const machine of tools) {
    const stack = place.stacks?.[machine];
    if (stack !== undefined && isHere(machine, place, true)) return { kind: "stack", machine, stack, help };
  }
  return NONE;
}

function bands(place: Place): LoadSet {
  const labels = place.bands ?? [];
  return labels.length === 0 || !isHere("band", place, true) ? NONE : { kind: "bands", labels };
}

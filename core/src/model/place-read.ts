import { z } from "zod";
import { printDay, type Weekday } from "../day.ts";
import { EQUIPMENT, type Equipment, OTHER_BARS, USUAL } from "./equipment.ts";
import {
  ALWAYS,
  dayPiece,
  given,
  idPiece,
  loadPiece,
  loadsPiece,
  namePiece,
  tell,
  tellReversed,
  tellSameIds,
  textsPiece,
} from "./file-pieces.ts";
import type { Read } from "./finding.ts";
import { readLoad } from "./load-text.ts";
import type { Holiday, OpenHours, Place, Stack } from "./place.ts";
import { readOpenHours } from "./window-text.ts";
import { readYaml, type YamlDocument } from "./yaml-text.ts";

/** What can be wrong with a place beyond the form of its values. Each names a sentence. */
export const PLACE_PROBLEMS = [
  "place/zone",
  "place/has-and-lacks",
  "place/dumbbells",
  "place/stack-without-machine",
  "place/same-band",
  "place/plates-units",
  "place/same-plate",
] as const;

const MAX_PLACES = 500;
/** The look of an IANA name; whether the zone exists is for whoever has the tables. */
const ZONE = /^[A-Za-z][A-Za-z0-9_+-]*(?:\/[A-Za-z0-9_+-]+){0,2}$/;

const equipment = z.enum(EQUIPMENT);
const usual = z.enum(USUAL as unknown as readonly [Equipment, ...Equipment[]]);
const zone = z.string().transform((text, ctx): string => {
  if (ZONE.test(text) && text.length <= 64) return text;
  tell(ctx, [], { code: "place/zone", found: text.slice(0, 40), allowed: "Europe/Vienna, America/Toronto, UTC" });
  return z.NEVER;
});

const plates = z.record(z.string(), z.int().min(1).max(50)).transform((pairs, ctx) => {
  const seen = new Map<number, string>();
  return Object.entries(pairs).map(([text, count]) => {
    const load = readLoad(text);
    if (!load.ok || !(load.value.value > 0)) {
      const slip = load.ok ? { code: "load/size", found: text, allowed: "> 0" } : load.slip;
      tell(ctx, [text], { ...slip, name: true });
      return z.NEVER;
    }
    const unit = [...seen.values()][0] ?? load.value.unit;
    if (unit !== load.value.unit)
      tell(ctx, [text], { code: "place/plates-units", found: text, allowed: unit, name: true });
    if (seen.has(load.value.value)) tell(ctx, [text], { code: "place/same-plate", found: text, name: true });
    seen.set(load.value.value, load.value.unit);
    return { load: load.value, pairs: count };
  });
});

const stack = loadsPiece(2).transform(
  (loads): Stack => ({ unit: loads[0]?.unit ?? "kg", pins: loads.map((load) => load.value) }),
);

const bands = z
  .array(namePiece(20))
  .min(1)
  .max(40)
  .superRefine((labels, ctx) => {
    labels.forEach((label, i) => {
      if (labels.indexOf(label) < i) tell(ctx, [i], { code: "place/same-band", found: label });
    });
  });

const outage = z
  .strictObject({ what: equipment, from: dayPiece, to: dayPiece })
  .superRefine((said, ctx) => tellReversed(ctx, ["to"], said?.from, said?.to), ALWAYS)
  .transform(({ what, from, to }) => ({ what, from: printDay(from), to: printDay(to) }));

const holiday = z
  .strictObject({ from: dayPiece, to: dayPiece, open: textsPiece(readOpenHours).optional() })
  .superRefine((said, ctx) => tellReversed(ctx, ["to"], said?.from, said?.to), ALWAYS)
  .transform(({ from, to, open }): Holiday => ({ from: printDay(from), to: printDay(to), open: hoursOf(open ?? []) }));

const saidPiece = z
  .strictObject({
    id: idPiece,
    name: namePiece(80),
    zone,
    has: z.partialRecord(equipment, z.int().min(1).max(200)).optional(),
    lacks: z.array(usual).max(USUAL.length).optional(),
    dumbbells: z.strictObject({ pairs: loadsPiece(1).optional(), single: loadsPiece(1).optional() }).optional(),
    kettlebells: loadsPiece(1).optional(),
    bars: loadsPiece(1).optional(),
    "other bars": z.partialRecord(z.enum(OTHER_BARS), loadPiece).optional(),
    plates: plates.optional(),
    collars: loadPiece.optional(),
    bands: bands.optional(),
    stacks: z.partialRecord(equipment, stack).optional(),
    bags: loadsPiece(1).optional(),
    open: textsPiece(readOpenHours).optional(),
    holidays: z.array(holiday).max(200).optional(),
    outages: z.array(outage).max(200).optional(),
  })
  .superRefine((said, ctx) => {
    const { has, lacks, dumbbells, stacks } = said ?? {};
    if (Array.isArray(lacks)) {
      lacks.forEach((what, i) => {
        if (has?.[what] !== undefined) tell(ctx, ["lacks", i], { code: "place/has-and-lacks", found: what });
      });
    }
    if (dumbbells && (dumbbells.pairs === undefined) === (dumbbells.single === undefined)) {
      tell(ctx, ["dumbbells"], { code: "place/dumbbells", allowed: "pairs, single" });
    }
    for (const what of Object.keys(stacks ?? {})) {
      if (has?.[what as Equipment] === undefined) {
        tell(ctx, ["stacks", what], { code: "place/stack-without-machine", found: what, name: true });
      }
    }
  }, ALWAYS);

const placesFile = z
  .strictObject({
    stave: z.literal(1),
    places: z.array(saidPiece.transform(toPlace)).max(MAX_PLACES).superRefine(tellSameIds, ALWAYS).optional(),
    people: z.unknown().optional(),
  })
  .superRefine((file, ctx) => {
    if (file && file.places === undefined && file.people === undefined) {
      tell(ctx, ["places"], { code: "key/missing", allowed: "places, people" });
    }
  }, ALWAYS)
  .transform((file): readonly Place[] => file.places ?? []);

/**
 * Reads the places of a file. People may stand in the same file; they are left to `readRoster`.
 *
 * What nearly every place has (a floor, a wall, a chair …) is there unless it stands under `lacks`. Whatever has its
 * loads listed is there too, counted by them unless `has` counts it.
 *
 * @param file its name, for the problems
 */
export function readPlaces(text: string, file: string): Read<YamlDocument<readonly Place[]>> {
  return readYaml(text, file, placesFile);
}

function hoursOf(said: readonly { readonly days: readonly Weekday[]; readonly from: number; readonly to: number }[]) {
  return said.flatMap(({ days, from, to }) => days.map((day): OpenHours => ({ day, from, to })));
}

function toPlace(said: z.output<typeof saidPiece>): Place {
  const { has, lacks = [], dumbbells, open, id, name, zone: in_, ...rest } = said;
  const {
    kettlebells,
    bars,
    "other bars": otherBars,
    plates: discs,
    collars,
    bands: labels,
    stacks,
    bags,
    holidays,
    outages,
  } = rest;
  const loads = dumbbells?.pairs ?? dumbbells?.single;
  const pairs = dumbbells?.pairs !== undefined;
  const listed: Partial<Record<Equipment, number>> = {
    ...Object.fromEntries(USUAL.filter((what) => !lacks.includes(what)).map((what) => [what, 1])),
    ...(loads ? { dumbbell: loads.length * (pairs ? 2 : 1) } : {}),
    ...(kettlebells ? { kettlebell: kettlebells.length } : {}),
    ...(bars ? { barbell: bars.length } : {}),
    ...Object.fromEntries(Object.keys(otherBars ?? {}).map((what) => [what, 1])),
    ...(discs ? { plates: 1 } : {}),
    ...(labels ? { band: labels.length } : {}),
  };
  return given({
    id,
    name,
    zone: in_,
    equipment: { ...listed, ...has },
    dumbbells: loads && { loads, pairs },
    kettlebells,
    bars,
    otherBars: otherBars && given(otherBars),
    plates: discs,
    collars,
    bands: labels,
    stacks: stacks && given(stacks),
    bags,
    open: open && hoursOf(open),
    holidays,
    outages,
  });
}

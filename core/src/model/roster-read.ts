import { z } from "zod";
import { addDays } from "../day.ts";
import { inKg, massOf } from "../units.ts";
import type { Catalogue, Ladder } from "./exercise.ts";
import {
  ALWAYS,
  dayPiece,
  given,
  idPiece,
  knownPiece,
  loadPiece,
  namePiece,
  printLoad,
  settle,
  tell,
  tellReversed,
  tellSameIds,
  textsPiece,
  unknown,
} from "./file-pieces.ts";
import type { Read } from "./finding.ts";
import { type Away, type Cycle, type Instead, MISS_CAUSES, type Missed, type Person, type Window } from "./person.ts";
import { cautionPiece, limitPiece, screeningPiece } from "./person-health.ts";
import { pulsePiece, recentPiece } from "./person-training.ts";
import type { Place } from "./place.ts";
import { STATUSES } from "./programme.ts";
import {
  tellBeforeBirth,
  tellHours,
  tellLongWait,
  tellManyWindows,
  tellMissedTwice,
  tellOverlap,
} from "./roster-rules.ts";
import type { Slipped } from "./slip.ts";
import { STRESS_TAGS } from "./stress.ts";
import { type Hours, readHours, readHoursInstead, readRotaHours } from "./window-text.ts";
import { readYaml, type YamlDocument } from "./yaml-text.ts";

/** What can be wrong with a person beyond the form of their values. Each names a sentence. */
export const PERSON_PROBLEMS = [
  "person/no-day",
  "person/windows-and-cycle",
  "person/any-twice",
  "person/any-and-days",
  "person/mass",
  "person/age",
  "person/before-birth",
  "person/instead-twice",
  "person/long-wait",
  "person/many-windows",
  "person/missed-twice",
  "person/off-ladder",
  "lift/nothing-done",
  "lift/reps-and-hold",
] as const;

const MAX_PEOPLE = 5000;
const MAX_LIST = 200;

/** What the ids of a roster may name. Without a catalogue the ids of exercises are only looked at for their form. */
interface Known {
  readonly places?: ReadonlySet<string>;
  readonly exercises?: ReadonlySet<string>;
  readonly ladders?: ReadonlyMap<string, ReadonlySet<string>>;
}

/**
 * Reads the people of a file. Places may stand in the same file; they are left to `readPlaces`.
 *
 * @param file its name, for the problems
 * @param places where people may train; without them any place's id is taken
 * @param catalogue what people may do; without it any exercise's id is taken
 */
export function readRoster(
  text: string,
  file: string,
  places?: readonly Place[],
  catalogue?: Catalogue,
): Read<YamlDocument<readonly Person[]>> {
  const known: Known = given({
    places: places && new Set(places.map((place) => place.id)),
    exercises: catalogue && new Set(catalogue.exercises.keys()),
    ladders: catalogue && new Map(catalogue.ladders.map((ladder) => [ladder.id, formsOf(ladder)])),
  });
  return readYaml(text, file, peopleFile(known));
}

function formsOf(ladder: Ladder): ReadonlySet<string> {
  return new Set([ladder.start, ...ladder.steps.flatMap((step) => [step.from, step.to])]);
}

function peopleFile(known: Known) {
  return z
    .strictObject({
      stave: z.literal(1),
      places: z.unknown().optional(),
      people: z.array(personPiece(known)).max(MAX_PEOPLE).superRefine(tellSameIds, ALWAYS).optional(),
    })
    .superRefine((file, ctx) => {
      if (file && file.places === undefined && file.people === undefined) {
        tell(ctx, ["people"], { code: "key/missing", allowed: "places, people" });
      }
    }, ALWAYS)
    .transform((file): readonly Person[] => file.people ?? []);
}

function personPiece(known: Known) {
  const exercise = knownPiece(known.exercises);
  return z
    .strictObject({
      id: idPiece,
      name: namePiece(80),
      born: dayPiece,
      mass: z.strictObject({ load: massPiece, on: dayPiece }).optional(),
      status: z.enum(STATUSES),
      units: z.enum(["kg", "lb"]),
      place: knownPiece(known.places),
      programme: idPiece.optional(),
      windows: windowsPiece(known.places, readHours).optional(),
      cycle: cyclePiece(known.places).optional(),
      minutes: z.int().min(10).max(240),
      days: z.int().min(1).max(7).optional(),
      rungs: rungsPiece(known.ladders).default({}),
      lifts: z.array(liftPiece(exercise)).max(MAX_LIST).default([]),
      limits: z.array(limitPiece(known.exercises)).max(MAX_LIST).default([]),
      cautions: z.array(cautionPiece).max(MAX_LIST).default([]),
      cannot: z.array(z.enum(STRESS_TAGS)).max(STRESS_TAGS.length).default([]),
      likes: z.array(exercise).max(MAX_LIST).default([]),
      dislikes: z.array(exercise).max(MAX_LIST).default([]),
      pins: z.array(pinPiece(exercise)).max(MAX_LIST).default([]),
      away: z.array(awayPiece).max(MAX_LIST).superRefine(tellLongWait, ALWAYS).default([]),
      instead: z.array(insteadPiece(known.places)).max(MAX_LIST).superRefine(tellOverlap, ALWAYS).default([]),
      missed: z.array(missedPiece).max(MAX_LIST).superRefine(tellMissedTwice, ALWAYS).optional(),
      screening: screeningPiece.optional(),
      recent: recentPiece.optional(),
      pulse: pulsePiece.optional(),
      note: namePiece(2000, "lines").optional(),
    })
    .superRefine((said, ctx) => {
      if (typeof said !== "object" || said === null) return;
      tellHours(said, ctx);
      tellManyWindows(said, ctx);
      tellBeforeBirth(said, ctx);
    }, ALWAYS)
    .transform(({ days, windows, ...said }): Person => {
      const any = windows?.find((hours) => hours.any !== undefined)?.any;
      return given({ ...said, windows: (windows ?? []).flatMap(toWindows), perWeek: days ?? any });
    });
}

const massPiece = loadPiece.transform((load, ctx) => {
  const kilograms = inKg(massOf(load));
  if (!(kilograms >= 20 && kilograms <= 350)) {
    tell(ctx, [], {
      code: "person/mass",
      found: printLoad(load),
      allowed: load.unit === "kg" ? "20–350 kg" : "45–771 lb",
    });
  }
  return load;
});

/** Weekly hours; the ids of other places among them must be known. */
function windowsPiece(places: ReadonlySet<string> | undefined, readText: typeof readHours) {
  return textsPiece((text) => placesKnown(readText(text), places));
}

/** Hours at a place that must be among those known, if any are known. */
function placesKnown<D>(hours: Slipped<Hours<D>>, places: ReadonlySet<string> | undefined): Slipped<Hours<D>> {
  if (!hours.ok || !places || hours.value.place === undefined || places.has(hours.value.place)) return hours;
  const { place, placeOffset = 0 } = hours.value;
  const { code, found = place, allowed = "", maybe } = unknown(place, places);
  return { ok: false, slip: { code, offset: placeOffset, found, allowed, ...(maybe ? { maybe } : {}) } };
}

function toWindows({ days, from, to, cost, place }: Hours<Window["day"]>): Window[] {
  return days.map((day) => given({ day, from, to, cost, place }));
}

function cyclePiece(places: ReadonlySet<string> | undefined) {
  return z
    .strictObject({
      length: z.int().min(2).max(56),
      anchor: dayPiece,
      days: textsPiece((text) => ({ ok: true, value: text })),
    })
    .transform(({ length, anchor, days: texts }, ctx): Cycle => {
      const days = texts.flatMap((text, i) => {
        const { from, to, cost, place, ...hours } = settle(placesKnown(readRotaHours(text, length), places), ctx, [
          "days",
          i,
        ]);
        return (hours.days ?? []).map((day) => given({ day: day - 1, from, to, cost, place }));
      });
      return { length, anchor, days };
    });
}

/** Where somebody stands; one form for each ladder. */
function rungsPiece(ladders: Known["ladders"]) {
  return z.record(z.string(), idPiece).transform((rungs, ctx) => {
    for (const [ladder, form] of Object.entries(rungs)) {
      const forms = ladders?.get(ladder);
      if (ladders && !forms) tell(ctx, [ladder], { ...unknown(ladder, ladders.keys()), name: true });
      if (forms && !forms.has(form)) tell(ctx, [ladder], { ...unknown(form, forms), code: "person/off-ladder" });
    }
    return rungs;
  });
}

type ExercisePiece = ReturnType<typeof knownPiece>;

function liftPiece(exercise: ExercisePiece) {
  return z
    .strictObject({
      exercise,
      load: loadPiece.optional(),
      reps: z.int().min(1).max(200).optional(),
      hold: z.int().min(1).max(1800).optional(),
      reserve: z.number().min(0).max(10).optional(),
      on: dayPiece,
    })
    .superRefine((said, ctx) => {
      if (typeof said !== "object" || said === null) return;
      if (said.reps === undefined && said.hold === undefined) {
        tell(ctx, [], { code: "lift/nothing-done", found: "", allowed: "reps, hold" });
      }
      if (said.reps !== undefined && said.hold !== undefined) tell(ctx, ["hold"], { code: "lift/reps-and-hold" });
    }, ALWAYS)
    .transform(({ exercise: id, load, reps, hold, reserve, on }) =>
      given({ exercise: id, load, reps, holdS: hold, reserve, on }),
    );
}

function pinPiece(exercise: ExercisePiece) {
  return z
    .strictObject({ slot: idPiece, exercise: exercise.optional(), sets: z.int().min(1).max(20).optional() })
    .transform((said) => given(said));
}

const awayPiece = z
  .strictObject({ from: dayPiece, to: dayPiece, waits: z.boolean().optional() })
  .superRefine((said, ctx) => tellReversed(ctx, ["to"], said?.from, said?.to), ALWAYS)
  .transform(({ from, to, waits }): Away => (waits === true ? { from, to, waits } : { from, to }));

const missedPiece = z
  .strictObject({ on: dayPiece, because: z.enum(MISS_CAUSES), back: dayPiece.optional() })
  .superRefine((said, ctx) => {
    if (said && typeof said.on === "number") tellReversed(ctx, ["back"], addDays(said.on, 1), said.back);
  }, ALWAYS)
  .transform((said): Missed => given(said));

function insteadPiece(places: ReadonlySet<string> | undefined) {
  return z
    .strictObject({ from: dayPiece, to: dayPiece, windows: windowsPiece(places, readHoursInstead) })
    .superRefine((said, ctx) => tellReversed(ctx, ["to"], said?.from, said?.to), ALWAYS)
    .transform(({ from, to, windows }): Instead => ({ from, to, windows: windows.flatMap(toWindows) }));
}

import { z } from "zod";
import {
  type Catalogue,
  EQUIPMENT,
  type Exercise,
  type Grade,
  given,
  idPiece,
  MUSCLES,
  namePiece,
  nearNames,
  PATTERNS,
  type Problem,
  type Read,
  readYaml,
  STRESS_TAGS,
  type StressTag,
  tell,
} from "../model/index.ts";
import { CATALOGUE } from "./catalogue.ts";
import { type Entry, wholeEntry } from "./entry.ts";
import { changeEntries, type OwnChange } from "./own-change.ts";
import { mergeOwn, type OwnEntry } from "./own-merge.ts";
import type { EntryFault } from "./own-rules.ts";

const LIMBS = [
  "two arms",
  "one arm",
  "alternating",
  "two legs",
  "split stance",
  "one leg",
  "whole body",
  "trunk",
] as const;
const POSITIONS = [
  ...(["standing", "half-kneeling", "tall-kneeling", "seated, back supported", "seated", "supine", "prone"] as const),
  ...(["side-lying", "hands and knees", "hanging", "leaning"] as const),
] as const;
const LOADS = [
  ...(["total", "per hand", "one implement", "stack", "added to body", "assist", "band", "body only"] as const),
  ...(["height", "none"] as const),
] as const;

const yesNo = z.enum(["yes", "no"]).transform((word) => word === "yes");
const line = namePiece(120);
const equipment = z.enum(EQUIPMENT);
const seconds = z.int().min(0).max(600);
const grade = z.union([z.literal(0), z.literal(1), z.literal(2), z.literal(3)]);
const fault = z.strictObject({ see: line, why: line, fix: line });

/** A form that stands in the catalogue or before this one in the file; near names are told. */
function formPiece(known: ReadonlySet<string>) {
  return z.string().transform((text, ctx): string => {
    if (known.has(text)) return text;
    const near = nearNames(text, [...known]);
    tell(ctx, [], {
      code: "name/unknown",
      found: text.slice(0, 60),
      ...(near.length > 0 ? { maybe: near.join(", ") } : {}),
    });
    return z.NEVER;
  });
}

function ownShape(known: ReadonlySet<string>) {
  const form = formPiece(known);
  return z.strictObject({
    id: idPiece,
    name: namePiece(60),
    synonyms: z.array(namePiece(60)).max(10).optional(),
    pattern: z.enum(PATTERNS),
    "also counts": z.enum(PATTERNS).optional(),
    limb: z.enum(LIMBS),
    plane: z.enum(["sagittal", "frontal", "transverse", "mixed"]).optional(),
    position: z.enum(POSITIONS),
    mode: z.enum(["dynamic", "hold", "ballistic", "cyclic"]).optional(),
    hands: z.enum(["none", "one", "one, other braces", "two"]).optional(),
    amounts: z.enum(["reps", "hold", "metres", "time", "contacts"]).optional(),
    "each side": yesNo.optional(),
    muscles: z.partialRecord(z.enum(MUSCLES), z.union([z.literal(1), z.literal(0.5)])),
    needs: z
      .array(z.union([equipment, z.array(equipment).min(1).max(12)]))
      .max(8)
      .optional(),
    load: z.enum(LOADS),
    share: z.number().min(0.1).max(1).optional(),
    gate: z
      .strictObject({
        of: form,
        reps: z.int().min(1).max(100).optional(),
        hold: z.int().min(1).max(300).optional(),
        sets: z.int().min(1).max(10).optional(),
      })
      .optional(),
    conditions: z.array(line).max(6).optional(),
    stress: z.partialRecord(z.enum(STRESS_TAGS), grade),
    fixed: yesNo.optional(),
    "coach only": yesNo.optional(),
    "arms used": yesNo.optional(),
    seated: yesNo.optional(),
    lowering: yesNo.optional(),
    hold: z
      .strictObject({ from: z.int().min(1).max(300), to: z.int().min(1).max(600), step: z.int().min(1).max(60) })
      .optional(),
    "seconds per rep": z.number().min(0.5).max(30).optional(),
    "set-up seconds": seconds.optional(),
    "set-up": namePiece(300),
    move: namePiece(300),
    cues,
    faults: z.array(fault).length(3),
    easier: z.array(form).max(6).optional(),
    harder: z.array(form).max(6).optional(),
  });
}
type Said = z.output<ReturnType<typeof ownShape>>;

const cues = z.array(namePiece(100)).length(3);

/** What may be said otherwise of an entry of the catalogue: words, stresses, conditions and times. */
function changeShape(catalogued: ReadonlySet<string>) {
  return z.strictObject({
    id: formPiece(catalogued),
    "set-up": namePiece(300).optional(),
    move: namePiece(300).optional(),
    cues: cues.optional(),
    faults: z.array(fault).length(3).optional(),
    stress: z.partialRecord(z.enum(STRESS_TAGS), grade).optional(),
    conditions: z.array(line).max(6).optional(),
    "coach only": yesNo.optional(),
    "seconds per rep": z.number().min(0.5).max(30).optional(),
    "set-up seconds": seconds.optional(),
  });
}

function changeOf(said: z.output<ReturnType<typeof changeShape>>): OwnChange {
  return {
    id: said.id,
    ...given({
      setUp: said["set-up"],
      move: said.move,
      cues: said.cues as unknown as Exercise["cues"] | undefined,
      faults: said.faults as unknown as Exercise["faults"] | undefined,
      stress: said.stress as OwnChange["stress"] | undefined,
      conditions: said.conditions,
      coachOnly: said["coach only"],
      secondsPerRep: said["seconds per rep"],
      setupS: said["set-up seconds"],
    }),
  };
}

/** The entry of the catalogue that a coach's words make. */
function ownOf(said: Said): OwnEntry {
  const {
    id,
    name,
    pattern,
    limb,
    position,
    muscles,
    move,
    load,
    share,
    gate,
    faults,
    easier = [],
    harder = [],
  } = said;
  const tags = Object.entries(said.stress) as [StressTag, Grade][];
  const count = gate && given({ of: gate.of, reps: gate.reps, holdS: gate.hold, sets: gate.sets });
  const more = given({
    synonyms: said.synonyms,
    alsoCounts: said["also counts"],
    plane: said.plane,
    mode: said.mode,
    hands: said.hands,
    amounts: said.amounts,
    eachSide: said["each side"],
    needs: said.needs,
    bodyShare: share === undefined ? undefined : { share, source: "ours" as const },
    fixed: said.fixed,
    coachOnly: said["coach only"],
    armsUsed: said["arms used"],
    seated: said.seated,
    lowering: said.lowering,
    hold: said.hold,
    secondsPerRep: said["seconds per rep"],
    setupS: said["set-up seconds"],
  });
  const lines = faults.map(({ see, why, fix }) => [see, why, fix] as const);
  const exercise = wholeEntry({
    ...more,
    ...{ id, name, pattern, limb, position, muscles, move, loadMeaning: load, setUp: said["set-up"] },
    need: { ...(count === undefined ? {} : { count }), conditions: said.conditions ?? [] },
    stress: Object.fromEntries(tags.filter(([, value]) => value > 0)),
    cues: said.cues as unknown as Exercise["cues"],
    faults: lines as unknown as Entry["faults"],
  });
  return { exercise, easier, harder, none: tags.filter(([, value]) => value === 0).map(([tag]) => tag) };
}

/** Ids that stand in the text under `exercises`, so that one own entry may name another before the whole is read. */
function idsIn(text: string): readonly string[] {
  return [...text.matchAll(/^\s*(?:-\s*(?:\{\s*)?)?id:\s*["']?([a-z0-9-]{1,40})["']?\s*(?:#.*|,.*)?$/gm)].map(
    ([, id]) => id!,
  );
}

/**
 * Reads a coach's own exercises and puts them after the catalogue, under the rules that the catalogue keeps, with what
 * the file hides or says otherwise of the catalogue's own entries: everything that is wrong is told with its place.
 *
 * @returns the whole catalogue with them
 */
export function readOwnExercises(text: string, file: string, base: Catalogue = CATALOGUE): Read<Catalogue> {
  const known = new Set([...base.exercises.keys(), ...idsIn(text)]);
  const catalogued = new Set(base.exercises.keys());
  const shape = z.strictObject({
    stave: z.literal(1),
    exercises: z.array(ownShape(known).transform(ownOf)).max(200).default([]),
    change: z.array(changeShape(catalogued).transform(changeOf)).max(400).default([]),
    hide: z.array(formPiece(catalogued)).max(400).default([]),
  });
  const read = readYaml(text, file, shape);
  if (!read.ok) return read;
  const { value, positions } = read.value;
  const told = (list: string, all: readonly (readonly EntryFault[])[]) =>
    all.flatMap((faults, index) =>
      faults.map(({ at, ...fault }): Problem => {
        const path = [list, index, ...at];
        return { ...fault, file, at: path, ...positions.at(path) };
      }),
    );
  const changed = changeEntries(base, value.change, value.hide);
  const merged = mergeOwn(changed.catalogue, value.exercises);
  const problems = [...told("change", changed.faults), ...(merged.ok ? [] : told("exercises", merged.faults))];
  if (merged.ok && problems.length === 0) return { ok: true, value: merged.catalogue, problems: [] };
  return { ok: false, problems: problems.toSorted((a, b) => a.line - b.line || a.column - b.column) };
}

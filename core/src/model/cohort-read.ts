import { z } from "zod";
import type { Day } from "../day.ts";
import { type CsvRow, placeIn, startsOf } from "./csv-row.ts";
import type { Catalogue, Ladder } from "./exercise.ts";
import { ALWAYS, dayPiece, given, idPiece, knownPiece, tell, tellReversed, unknown } from "./file-pieces.ts";
import type { Problem, Read } from "./finding.ts";
import { OUTCOMES, type Person } from "./person.ts";
import { tellFar } from "./person-health.ts";
import type { Place } from "./place.ts";
import { STATUSES } from "./programme.ts";
import { tellBeforeBirth } from "./roster-rules.ts";
import { schemaFaults } from "./schema-faults.ts";
import { STATEMENTS, STRESS_TAGS } from "./stress.ts";
import type { Branch } from "./yaml-tree.ts";

/** What can be wrong with a table of answers beyond its values. Each names a sentence. */
export const COHORT_PROBLEMS = ["cohort/column-twice", "cohort/fields", "cohort/part-of-screening"] as const;

/** Columns that must be there, and those that may; those of ladders, named by the ladder, come on top. */
export const COHORT_COLUMNS = ["id", "born", "status", "place", "minutes", "days"] as const;
export const COHORT_MAY = ["outcome", "screened", "until", "cautions", "cannot", "likes", "dislikes"] as const;

/** Who says it, where the answers are all there is. */
const THE_ANSWERS = "the person's own answers";
const MAX_LIST = 20;

/** What answers may name, and from when they count. */
export interface CohortContext {
  readonly file: string;
  readonly places: readonly Place[];
  readonly catalogue: Catalogue;
  /** First day of the plan. */
  readonly on: Day;
}

/**
 * Reads people from a table of answers, one line each: columns of the same words as a roster, an empty field for what was
 * not said. Lists are parted by semicolons. A column named after a ladder holds the form that the person stands on.
 *
 * Any day of the week will do, so many a week. Cautions count from the day of the screening and are to be asked about
 * when it ends; without one they are due on the first day of the plan.
 *
 * @param header the first line
 * @returns the reader of all other lines, or what is wrong with the columns
 */
export function cohortReader(header: CsvRow, context: CohortContext): Read<(row: CsvRow) => Read<Person>> {
  const { file, places, catalogue, on } = context;
  const ladders = new Map(catalogue.ladders.map((ladder) => [ladder.id, formsOf(ladder)]));
  const problems = columnProblems(header, file, ladders);
  if (problems.length > 0) return { ok: false, problems };
  const placeIds = new Set(places.map(({ id }) => id));
  const schema = rowPiece(header.fields, placeIds, new Set(catalogue.exercises.keys()), ladders, on);
  const value = (row: CsvRow): Read<Person> => {
    if (row.fields.length !== header.fields.length) {
      const [found, allowed] = [String(row.fields.length), String(header.fields.length)];
      return {
        ok: false,
        problems: [{ code: "cohort/fields", file, at: [], line: row.line, column: 1, found, allowed }],
      };
    }
    const said = header.fields.flatMap((name, index) => (row.fields[index] === "" ? [] : [[name, row.fields[index]]]));
    const result = schema.safeParse(Object.fromEntries(said));
    if (result.success) return { ok: true, value: result.data, problems: [] };
    const faults = schemaFaults(branchOf(header.fields, row), schema, result.error.issues);
    return {
      ok: false,
      problems: faults.map(({ offset, at, code, ...pieces }) => ({
        code,
        file,
        at,
        ...placeIn(row, offset),
        ...pieces,
      })),
    };
  };
  return { ok: true, value, problems: [] };
}

function formsOf(ladder: Ladder): ReadonlySet<string> {
  return new Set([ladder.start, ...ladder.steps.flatMap(({ from, to }) => [from, to])]);
}

function columnProblems(header: CsvRow, file: string, ladders: ReadonlyMap<string, unknown>): readonly Problem[] {
  const known = [...COHORT_COLUMNS, ...COHORT_MAY, ...ladders.keys()];
  const starts = startsOf(header);
  const place = (index: number) => ({ file, at: [], line: header.line, column: (starts[index] ?? 0) + 1 });
  const told = header.fields.flatMap((name, index): Problem[] => {
    if (header.fields.indexOf(name) < index) return [{ code: "cohort/column-twice", ...place(index), found: name }];
    return known.includes(name) ? [] : [{ ...unknown(name, known), ...place(index), code: "key/unknown" }];
  });
  const missing = COHORT_COLUMNS.filter((name) => !header.fields.includes(name));
  return [...told, ...missing.map((name) => ({ code: "key/missing", ...place(0), at: [name], allowed: name }))];
}

/** A whole number in figures. */
function wholePiece(least: number, most: number) {
  return z.string().transform((text, ctx): number => {
    const value = Number(text);
    if (/^\d{1,4}$/.test(text) && value >= least && value <= most) return value;
    tell(ctx, [], { code: "value/type", found: text.slice(0, 40), allowed: `${least}–${most}` });
    return z.NEVER;
  });
}

/** Names parted by semicolons. */
function namesPiece<T extends string>(known: ReadonlySet<T>) {
  return z.string().transform((text, ctx): readonly T[] => {
    const names = text.split(";").map((name) => name.trim());
    if (names.length > MAX_LIST)
      tell(ctx, [], { code: "value/many", found: String(names.length), allowed: `1–${MAX_LIST}` });
    for (const name of names) if (!known.has(name as T)) tell(ctx, [], unknown(name, known));
    return names as T[];
  });
}

function rungPiece(forms: ReadonlySet<string>) {
  return z.string().transform((text, ctx): string => {
    if (!forms.has(text)) tell(ctx, [], { ...unknown(text, forms), code: "person/off-ladder" });
    return text;
  });
}

function rowPiece(
  columns: readonly string[],
  places: ReadonlySet<string>,
  exercises: ReadonlySet<string>,
  ladders: ReadonlyMap<string, ReadonlySet<string>>,
  on: Day,
) {
  const rungs = columns.flatMap((name) => {
    const forms = ladders.get(name);
    return forms === undefined ? [] : [[name, rungPiece(forms).optional()] as const];
  });
  const said = z.strictObject({
    id: idPiece,
    born: dayPiece,
    status: z.enum(STATUSES),
    place: knownPiece(places),
    minutes: wholePiece(10, 240),
    days: wholePiece(1, 7),
    outcome: z.enum(OUTCOMES).optional(),
    screened: dayPiece.optional(),
    until: dayPiece.optional(),
    cautions: namesPiece(new Set(STATEMENTS)).optional(),
    cannot: namesPiece(new Set(STRESS_TAGS)).optional(),
    likes: namesPiece(exercises).optional(),
    dislikes: namesPiece(exercises).optional(),
  });
  return z
    .strictObject({ ...said.shape, ...Object.fromEntries(rungs) })
    .superRefine((row, ctx) => {
      const { outcome, screened, until, born } = (row ?? {}) as Partial<z.infer<typeof said>>;
      const together = [outcome, screened, until].filter((each) => each !== undefined);
      if (together.length > 0 && together.length < 3) {
        tell(ctx, ["outcome"], { code: "cohort/part-of-screening", found: "", allowed: "outcome, screened, until" });
      }
      tellReversed(ctx, ["until"], screened, until);
      tellFar(ctx, "until", screened, until);
      tellBeforeBirth({ born, screening: { on: screened } }, ctx);
    }, ALWAYS)
    .transform((row): Person => {
      const {
        id,
        born,
        status,
        place,
        minutes,
        days,
        outcome,
        screened,
        until,
        cautions = [],
      } = row as z.infer<typeof said>;
      const { cannot = [], likes = [], dislikes = [] } = row as z.infer<typeof said>;
      const asked = { from: screened ?? on, recheck: until ?? on, who: THE_ANSWERS };
      const ladderSaid = rungs.flatMap(([name]) => {
        const form = (row as Readonly<Record<string, unknown>>)[name];
        return typeof form === "string" ? [[name, form] as const] : [];
      });
      return given({
        id,
        name: id,
        born,
        status,
        units: "kg" as const,
        place,
        windows: EVERY_DAY,
        minutes,
        perWeek: days,
        rungs: Object.fromEntries(ladderSaid),
        lifts: [],
        limits: [],
        cautions: cautions.map((statement) => ({ statement, ...asked })),
        cannot,
        likes,
        dislikes,
        pins: [],
        away: [],
        instead: [],
        screening:
          outcome === undefined || screened === undefined || until === undefined
            ? undefined
            : { outcome, on: screened, until, by: THE_ANSWERS },
      });
    });
}

const EVERY_DAY = (["mon", "tue", "wed", "thu", "fri", "sat", "sun"] as const).map((weekday) => ({
  day: weekday,
  from: 0,
  to: 1440,
  cost: 0,
}));

/** The row as the tree of values with places that faults are told from. */
function branchOf(columns: readonly string[], row: CsvRow): Branch {
  const starts = startsOf(row);
  const children = new Map<string, Branch>();
  for (const [index, name] of columns.entries()) {
    const text = row.fields[index]!;
    if (text === "") continue;
    const start = starts[index]!;
    const quoted = row.raw[start] === '"';
    children.set(name, { value: text, start: quoted ? start + 1 : start, written: { text, style: "plain" } });
  }
  return { value: Object.fromEntries([...children].map(([name, { value }]) => [name, value])), start: 0, children };
}

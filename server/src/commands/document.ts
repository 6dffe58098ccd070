import { z } from "zod";

/** Facts of a reason, a finding or a remedy: which ones stands beside each code in core. */
const data = z.record(z.string(), z.unknown());
const path = z.array(z.union([z.string(), z.int().min(0)]));
/** Lines and columns count from 1; 0 means that the input has no lines. */
const place = { file: z.string(), line: z.int().min(0), column: z.int().min(0) };

/** Codes grow with every release; each has a sentence in core's texts, which is tested and not a promise of this shape. */
const code = z.string().regex(/^[a-z-]+\/[a-z-]+$/);

/** A reason as data. */
export const reason = z.strictObject({ code, data }).meta({ id: "Reason" });

/** What is wrong with an input, with its place. */
export const problem = z
  .strictObject({
    code,
    at: path,
    ...place,
    found: z.string().exactOptional(),
    allowed: z.string().exactOptional(),
    maybe: z.string().exactOptional(),
  })
  .meta({ id: "Problem" });

const edit = z.discriminatedUnion("op", [
  z.strictObject({ op: z.literal("set"), at: path, value: z.unknown() }),
  z.strictObject({ op: z.literal("insert"), at: path, value: z.unknown() }),
  z.strictObject({ op: z.literal("remove"), at: path }),
]);
const remedy = z
  .strictObject({ id: z.string().regex(/^[a-z-]+$/), data, edits: z.array(edit).min(1) })
  .meta({ id: "Remedy" });

/** What a check says, with its place in the file. */
export const finding = z
  .strictObject({
    check: code,
    severity: z.enum(["stop", "warn", "note"]),
    at: path,
    data,
    remedies: z.array(remedy),
    ...place,
  })
  .meta({ id: "Finding" });

/** YYYY-MM-DD */
export const dayText = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);
export const sha256Text = z.string().regex(/^[0-9a-f]{64}$/);
export const whole = z.int().min(0);

/** A file that was written. */
export const written = z
  .strictObject({ path: z.string().min(1), bytes: whole, sha256: sha256Text })
  .meta({ id: "WrittenFile" });

/**
 * The one document that a command prints with `--json`: its result, or null where its input could not be read, and
 * beside it what the checks say and what is wrong with the input.
 */
export function documentOf<T extends z.ZodType>(command: string, result: T) {
  return z.strictObject({
    stave: z.literal(1),
    command: z.literal(command),
    ok: z.boolean(),
    result: result.nullable(),
    findings: z.array(finding),
    problems: z.array(problem),
  });
}

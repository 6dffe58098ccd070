import { z } from "zod";
import type { Day } from "../day.ts";
import { printDay } from "../day.ts";
import { ALWAYS, dayPiece, given, idPiece, loadPiece, namePiece, tell, tellReversed, unknown } from "./file-pieces.ts";
import { PATTERNS, type Pattern } from "./pattern.ts";
import { type Caution, type Limit, OUTCOMES, type Screening } from "./person.ts";
import { STATEMENTS, STRESS_TAGS, type Statement } from "./stress.ts";

/** What can be wrong with limits, cautions and screening beyond the form of their values. Each names a sentence. */
export const HEALTH_PROBLEMS = [
  "caution/unknown",
  "date/far",
  "screening/agreed-not-asked",
  "screening/agreed-late",
] as const;

/** A date further off than this is a slip of the year. Common practice, no source. */
const MAX_DAYS = 731;

const who = namePiece(120);
const lifted = z.strictObject({ on: dayPiece, who });
const side = z.enum(["left", "right", "both"]).default("both");

/** A pattern or an exercise, told with near names where it is neither. */
function movementPiece(exercises: ReadonlySet<string> | undefined) {
  return z.string().transform((text, ctx): string => {
    if ((PATTERNS as readonly string[]).includes(text)) return text;
    if (exercises ? exercises.has(text) : idPiece.safeParse(text).success) return text;
    tell(ctx, [], unknown(text, [...PATTERNS, ...(exercises ?? [])]));
    return z.NEVER;
  });
}

/** A clinician's written limit, by its kind. */
export function limitPiece(exercises: ReadonlySet<string> | undefined) {
  const span = { from: dayPiece, to: dayPiece, who, side, lifted: lifted.optional() };
  const movement = movementPiece(exercises);
  return z
    .discriminatedUnion("kind", [
      z.strictObject({
        kind: z.literal("load"),
        most: loadPiece,
        held: z.enum(["total", "hand"]),
        movement: movement.optional(),
        ...span,
      }),
      z.strictObject({ kind: z.literal("rest"), part: z.enum(["arm", "leg", "trunk"]), ...span }),
      z.strictObject({ kind: z.literal("movement"), movement, ...span }),
    ])
    .superRefine((said, ctx) => {
      tellReversed(ctx, ["to"], said?.from, said?.to);
      tellReversed(ctx, ["lifted", "on"], said?.from, said?.lifted?.on);
    }, ALWAYS)
    .transform((said): Limit => {
      const { from, to, who: by, side: which, lifted: ended } = said;
      return given({
        kind: said.kind,
        atMost: said.kind === "load" ? said.most : undefined,
        applies: said.kind === "load" ? said.held : undefined,
        part: said.kind === "rest" ? said.part : undefined,
        side: which,
        movement: said.kind === "rest" ? undefined : (said.movement as Pattern | undefined),
        from,
        to,
        who: by,
        lifted: ended,
      });
    });
}

/** A condition that Stave has a row of ceilings for. Any other is asked about, never taken for one that is near. */
const statementPiece = z.string().transform((text, ctx): Statement => {
  const known = STATEMENTS.find((one) => one === text);
  if (known !== undefined) return known;
  tell(ctx, [], { ...unknown(text, STATEMENTS), code: "caution/unknown" });
  return z.NEVER;
});

const dates = { from: dayPiece, recheck: dayPiece, who };
export const cautionPiece = z
  .union([
    z.strictObject({ statement: statementPiece, ...dates }),
    z.strictObject({ tag: z.enum(STRESS_TAGS), ceiling: z.int().min(0).max(3), ...dates }),
  ])
  .superRefine((said, ctx) => {
    tellReversed(ctx, ["recheck"], said?.from, said?.recheck);
    tellFar(ctx, "recheck", said?.from, said?.recheck);
  }, ALWAYS)
  .transform((said): Caution => said as Caution);

export const screeningPiece = z
  .strictObject({
    outcome: z.enum(OUTCOMES),
    on: dayPiece,
    until: dayPiece,
    by: who,
    agreed: z.strictObject({ on: dayPiece, who }).optional(),
    effort: z.enum(["light", "moderate", "vigorous"]).optional(),
  })
  .superRefine((said, ctx) => {
    const { outcome, on, until, agreed } = said ?? {};
    tellReversed(ctx, ["until"], on, until);
    tellFar(ctx, "until", on, until);
    if (agreed !== undefined && typeof outcome === "string" && outcome !== "ask a doctor first") {
      tell(ctx, ["agreed"], { code: "screening/agreed-not-asked", found: outcome, allowed: "ask a doctor first" });
    }
    if (typeof agreed?.on === "number" && typeof until === "number" && agreed.on > until) {
      tell(ctx, ["agreed", "on"], {
        code: "screening/agreed-late",
        found: printDay(agreed.on),
        allowed: `≤ ${printDay(until)}`,
      });
    }
  }, ALWAYS)
  .transform((said): Screening => given(said));

/** Tells it when a date lies so far off that it is likely a slip of the year. */
export function tellFar(ctx: z.core.$RefinementCtx, key: string, from: unknown, to: unknown): void {
  if (typeof from !== "number" || typeof to !== "number" || !(to - from > MAX_DAYS)) return;
  const last = (from + MAX_DAYS) as Day;
  tell(ctx, [key], { code: "date/far", found: printDay(to as Day), allowed: `≤ ${printDay(last)}` });
}

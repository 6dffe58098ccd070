import { z } from "zod";
import type { Dose, Span, WayUp } from "./dose.ts";
import { WAYS_UP } from "./dose.ts";
import { DOSE_BOUNDS } from "./dose-bounds.ts";
import { readDose } from "./dose-read.ts";
import { DOSE_EXAMPLE } from "./dose-scan.ts";
import { ALWAYS, idPiece, namePiece, settle, tell } from "./file-pieces.ts";
import { MUSCLES } from "./muscle.ts";
import { PATTERNS } from "./pattern.ts";
import { GOALS, type Programme, STATUSES } from "./programme.ts";
import { tellProgrammeFaults } from "./programme-rules.ts";
import { RUN_WALK_BOUNDS } from "./run-walk.ts";
import { readSpan } from "./span-text.ts";

/** How far below and above its first choice a slot may go when its file says nothing: all the way down, not up. */
export const DOWN_UNSAID = 99;
export const UP_UNSAID = 0;

/** What is run where the file does not say. */
const RUN_UNSAID = "run";

const MAX_WEEKLY_SETS = 60;
const KEBAB = "[a-z0-9]+(?:-[a-z0-9]+)*";

const id = idPiece.meta({ pattern: `^${KEBAB}$`, maxLength: 40 });
const title = namePiece(80).meta({ pattern: "\\S", maxLength: 80 });
const line = namePiece(200).meta({ pattern: "\\S", maxLength: 200 });
const lines = namePiece(2000, "lines").meta({ pattern: "\\S", maxLength: 2000 });
const restS = z.int().min(DOSE_BOUNDS.rest.from).max(DOSE_BOUNDS.rest.to);

/** The version of the shape itself; anything else was written for another Stave. */
const shape = z
  .unknown()
  .transform((said, ctx): 1 => {
    if (said === 1) return 1;
    tell(ctx, [], {
      code: "programme/shape-version",
      ...(said === undefined ? { found: "nothing" } : {}),
      allowed: "1",
      maybe: "stave: 1",
    });
    return z.NEVER;
  })
  .meta({ const: 1 });

const dose = z.string().transform((text, ctx): Dose => {
  const read = readDose(text);
  if (read.ok) return read.value;
  for (const problem of read.problems) tell(ctx, [], problem);
  return z.NEVER;
});

const weeklySets = z
  .union([z.string(), z.number()])
  .transform((said, ctx): Span => settle(readSpan(String(said), MAX_WEEKLY_SETS), ctx, []));

const slot = z
  .strictObject({
    slot: id,
    pattern: z.enum(PATTERNS),
    muscles: z.array(z.enum(MUSCLES)).min(1).max(MUSCLES.length).exactOptional(),
    first: id,
    down: z.int().min(0).max(DOWN_UNSAID).default(DOWN_UNSAID),
    up: z.int().min(0).max(99).default(UP_UNSAID),
    dose,
    changes: z
      .array(z.strictObject({ week: z.int().min(2).max(52), dose }))
      .max(52)
      .exactOptional(),
    way: z.enum(WAYS_UP).exactOptional(),
    note: lines.exactOptional(),
  })
  .transform((said) => ({ ...said, way: said.way ?? wayUnsaid(said.dose) }))
  .meta({ id: "slot" });

const pair = z.strictObject({ pair: z.array(slot).min(2).max(2), restS: restS.exactOptional() }).meta({ id: "pair" });
const round = z
  .strictObject({ round: z.array(slot).min(3).max(6), restS: restS.exactOptional() })
  .meta({ id: "round" });
const others = z.array(id).max(10);
const effort = z.enum(["easy", "steady", "hard"]);

const session = z
  .strictObject({
    key: id,
    title,
    minutes: z.int().min(5).max(240),
    warmup: z
      .array(
        z.union([
          z.strictObject({ do: id, dose, or: others.exactOptional() }),
          z.strictObject({ ramp: id, sets: z.int().min(1).max(6) }),
        ]),
      )
      .max(10)
      .exactOptional(),
    work: z.array(z.union([slot, pair, round])).max(20),
    conditioning: z
      .array(
        z.union([
          z.strictObject({ do: id, dose, effort, or: others.exactOptional() }),
          z.strictObject({
            slot: id,
            runWalk: z.int().min(RUN_WALK_BOUNDS.from).max(RUN_WALK_BOUNDS.to),
            do: id.default(RUN_UNSAID),
            effort,
            or: others.exactOptional(),
          }),
        ]),
      )
      .max(10)
      .exactOptional(),
  })
  .meta({ id: "session" });

const phase = z
  .strictObject({
    key: id,
    title,
    weeks: z.int().min(1).max(52),
    light: z.array(z.int().min(1).max(52)).max(52).exactOptional(),
    sessions: z.array(session).min(1).max(14),
  })
  .meta({ id: "phase" });

const weekly = z.strictObject({
  sets: z.partialRecord(z.enum(MUSCLES), weeklySets).exactOptional(),
  must: z.array(z.enum(MUSCLES)).max(MUSCLES.length).exactOptional(),
  gap: z.int().min(0).max(168).exactOptional(),
});

const silence = z.strictObject({
  check: z
    .string()
    .max(80)
    .regex(new RegExp(`^${KEBAB}(?:/${KEBAB})*$`)),
  slot: id.exactOptional(),
  reason: line,
});

/** The shape of a programme file: the names and the nesting of `Programme`, doses and spans as text. */
export const programmeSchema: z.ZodType<Programme> = z
  .strictObject({
    stave: shape,
    id,
    title,
    version: z.int().min(1).max(99_999),
    about: lines.exactOptional(),
    goal: z.enum(GOALS),
    status: z.enum(STATUSES),
    units: z.enum(["kg", "lb"]),
    weekly: weekly.exactOptional(),
    silence: z.array(silence).max(100).exactOptional(),
    phases: z.array(phase).min(1).max(12),
  })
  .superRefine(tellProgrammeFaults, ALWAYS);

/** The way up of a slot whose file does not say one, by what its first set asks for. */
export function wayUnsaid(asked: Dose): WayUp {
  switch (asked.sets[0]?.amount.kind) {
    case "reps":
      return "reps then load";
    case "hold":
      return "hold time";
    case "contacts":
      return "contacts";
    default:
      return "stay";
  }
}

/**
 * The shape as JSON Schema, draft 2020-12, for editors. It refuses nothing that Stave reads; what it cannot say (the
 * grammar of a dose, keys that must differ, weeks inside their phase) is told when the file is read.
 */
export function programmeJsonSchema(): object {
  const shown = new Map<z.core.$ZodType, readonly (string | number)[]>([
    [dose, [DOSE_EXAMPLE, "3 × 30 s each side", "1 × 5 @85 % + 2 × 8 @75 %", "1 × 8 min"]],
    [weeklySets, ["4–10", 6]],
  ]);
  return z.toJSONSchema(programmeSchema, {
    target: "draft-2020-12",
    io: "input",
    override: ({ zodSchema, jsonSchema }) => {
      const examples = shown.get(zodSchema);
      if (examples) jsonSchema.examples = [...examples];
    },
  });
}

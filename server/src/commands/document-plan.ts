import { z } from "zod";
import { reason, sha256Text, whole } from "./document.ts";

const text = z.string().min(1);

export const load = z.strictObject({ value: z.number().min(0), unit: z.enum(["kg", "lb"]) }).meta({ id: "Load" });

const span = z.strictObject({ from: whole, to: whole }).meta({ id: "Span" });
const amount = z
  .discriminatedUnion("kind", [
    z.strictObject({ kind: z.literal("most"), least: whole.exactOptional() }),
    ...(["reps", "hold", "metres", "time", "contacts"] as const).map((kind) =>
      z.strictObject({ kind: z.literal(kind), span }),
    ),
  ])
  .meta({ id: "Amount" });

const set = z
  .strictObject({
    amount,
    eachSide: z.boolean(),
    percent: z.int().min(1).max(100).exactOptional(),
    reserve: span.exactOptional(),
    load: load.exactOptional(),
    within: z.strictObject({ bouts: z.array(whole), restS: whole }).exactOptional(),
  })
  .meta({ id: "Set" });

const dose = z
  .strictObject({
    sets: z.array(set).min(1),
    restS: whole.exactOptional(),
    /** Seconds for lowering, pause, lifting, pause. */
    tempo: z.array(whole).length(4).exactOptional(),
  })
  .meta({ id: "Dose" });

const slot = z
  .strictObject({
    key: text,
    exercise: text,
    dose,
    side: z.enum(["left", "right"]).exactOptional(),
    load: load.exactOptional(),
    loads: z.array(load).exactOptional(),
    find: z.strictObject({ from: load.exactOptional(), because: reason }).exactOptional(),
    why: z.array(reason),
    offer: z.array(text),
  })
  .meta({ id: "PlanSlot" });

const session = z
  .strictObject({
    key: text,
    title: text,
    warmup: z.array(z.strictObject({ exercise: text, dose, load: load.exactOptional(), for: text.exactOptional() })),
    blocks: z.array(
      z.strictObject({
        kind: z.enum(["straight", "pair", "round"]),
        restS: whole.exactOptional(),
        slots: z.array(slot).min(1),
      }),
    ),
    conditioning: z.array(
      z.strictObject({
        exercise: text,
        dose,
        effort: z.enum(["easy", "steady", "hard"]),
        run: z.strictObject({ slot: text, level: z.int().min(1).max(9) }).exactOptional(),
        pulse: z.strictObject({ from: z.int(), to: z.int(), miss: z.int() }).exactOptional(),
      }),
    ),
    open: z.array(z.strictObject({ key: text, why: z.array(reason).min(1) })),
    minutes: z.strictObject({ low: whole, high: whole }),
  })
  .meta({ id: "PlanSession" });

const phase = z
  .strictObject({
    key: text,
    title: text,
    score: z.strictObject({ must: whole, want: z.int(), bound: z.int(), proven: z.boolean() }),
    weeks: z
      .array(z.strictObject({ week: z.int().min(1), light: z.boolean(), sessions: z.array(session).min(1) }))
      .min(1),
  })
  .meta({ id: "PlanPhase" });

/** A programme fitted to one person. */
export const plan = z
  .strictObject({
    id: text,
    person: text,
    programme: sha256Text,
    made: z.strictObject({ engine: text, catalogue: sha256Text, state: sha256Text, decisions: sha256Text }),
    firmTo: z.strictObject({ phase: text }),
    notes: z.array(reason),
    phases: z.array(phase).min(1),
  })
  .meta({ id: "Plan" });

import { z } from "zod";
import { documentOf, reason, whole } from "./document.ts";

const level = z.enum(["must", "want"]);

/** Why not another form: set aside, or forced and solved again, with the points it costs. */
const answer = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("chosen") }),
  z.strictObject({ kind: z.literal("set aside"), why: z.array(reason).min(1) }),
  z.strictObject({ kind: z.literal("pinned"), exercise: z.string().min(1) }),
  z.strictObject({ kind: z.literal("not thought of") }),
  z.strictObject({ kind: z.literal("does not fit") }),
  z.strictObject({
    kind: z.literal("costs"),
    must: whole,
    want: z.int(),
    /** Both plans are proven best. */
    proven: z.boolean(),
    lines: z.array(z.strictObject({ id: z.string().min(1), level, best: z.int(), forced: z.int() })),
  }),
]);

/** What `stave why --json` prints. */
export const whyDocument = documentOf(
  "why",
  z.strictObject({
    person: z.string().min(1),
    slot: z.string().min(1),
    exercise: z.string().min(1).nullable(),
    why: z.array(reason),
    /** What the form in the slot counts, constraint by constraint; weekly sums count for the week and are not here. */
    points: z.array(z.strictObject({ id: z.string().min(1), level, points: z.int() })),
    not: z.strictObject({ exercise: z.string().min(1), answer }).exactOptional(),
    /** Of a slot that stays open: rules that cannot all be kept; drop any one, and the others can. */
    conflict: z.array(reason).min(1).exactOptional(),
    /** What single changes gain for the phase: must points fewer and want points more, the most first. */
    helps: z.array(z.strictObject({ change: reason, must: whole, want: z.int(), proven: z.boolean() })).exactOptional(),
  }),
);

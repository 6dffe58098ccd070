import { z } from "zod";
import { documentOf, reason, whole } from "./document.ts";

/** Why not another form: set aside, or forced and solved again, with the points it costs. */
const answer = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("chosen") }),
  z.strictObject({ kind: z.literal("set aside"), why: z.array(reason).min(1) }),
  z.strictObject({ kind: z.literal("not thought of") }),
  z.strictObject({ kind: z.literal("does not fit") }),
  z.strictObject({
    kind: z.literal("costs"),
    must: whole,
    want: z.int(),
    lines: z.array(z.strictObject({ id: z.string().min(1), best: z.int(), forced: z.int() })),
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
    not: z.strictObject({ exercise: z.string().min(1), answer }).exactOptional(),
  }),
);

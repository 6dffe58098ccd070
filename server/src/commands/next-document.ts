import { WAYS_UP } from "@stave/core/model";
import { z } from "zod";
import { dayText, documentOf, reason, whole } from "./document.ts";

const id = z.string().min(1);
/** A change to a slot, as an event of a decision holds it. */
const patch = z.record(z.string(), z.unknown()).meta({ id: "Patch" });

/** What `stave next --json` prints. */
export const nextDocument = documentOf(
  "next",
  z.strictObject({
    people: z.array(
      z.strictObject({
        person: id,
        day: dayText,
        slots: z.array(
          z.strictObject({
            slot: id,
            exercise: id,
            way: z.enum([...WAYS_UP, "run-walk"]),
            kind: z.enum(["up", "stay", "down", "unknown"]),
            /** What is proposed; left out where nothing is. */
            title: reason.exactOptional(),
            patch: patch.exactOptional(),
            /** With what it rests; for what is unknown, what is missing. */
            evidence: z.array(reason),
            /** How sure it is that it will be done, 0 to 1, and from how many sessions that is known. */
            certainty: z.strictObject({ chance: z.number().min(0).max(1), sessions: whole }).exactOptional(),
            /** What is carried from another form, where too little is known of this one: a range and no figure. */
            carried: reason.exactOptional(),
            /** What would have been asked, and why it is not. */
            refused: z.array(reason),
            others: z.array(z.strictObject({ title: reason, patch })),
          }),
        ),
        /** Light weeks: whether one is proposed, comes later or is not needed. How sure nobody can say. */
        light: z.strictObject({
          kind: z.enum(["light", "move", "full", "none", "unknown"]),
          title: reason.exactOptional(),
          patch: patch.exactOptional(),
          evidence: z.array(reason),
          refused: z.array(reason),
          others: z.array(z.strictObject({ title: reason, patch })),
        }),
        /** What calls for a look, as in the morning list. */
        notes: z.array(reason),
        /** The session that comes next, and which of its sets tell most, best first. */
        session: z
          .strictObject({
            day: dayText,
            id,
            title: z.string(),
            tells: z.array(
              z.strictObject({
                slot: id,
                exercise: id,
                seconds: whole,
                /** Open decisions settled on average. */
                settles: z.number().min(0),
                bearsOn: z.array(id),
                because: reason,
              }),
            ),
          })
          .exactOptional(),
      }),
    ),
  }),
);

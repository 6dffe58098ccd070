import { z } from "zod";
import { documentOf } from "./document.ts";

const id = z.string().min(1);
const kind = z.enum(["accepted", "changed", "refused", "pinned", "undone"]);

/** What `stave decide --json` prints. */
export const decideDocument = documentOf(
  "decide",
  z.strictObject({
    answers: z.array(
      z.union([
        /** Taken: the decision's own id, and the plan that now stands. */
        z.strictObject({ id, plan: id, kind, person: id }),
        z.strictObject({ id, why: z.enum(["no such person", "unknown", "stale", "taken"]), kind, person: id }),
      ]),
    ),
  }),
);

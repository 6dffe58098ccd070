import { z } from "zod";
import { documentOf, sha256Text } from "./document.ts";

const id = z.string().min(1);

/** What `stave import --json` prints. */
export const importDocument = documentOf(
  "import",
  z.strictObject({
    plans: z.array(z.strictObject({ person: id, plan: id })),
    places: z.array(id),
    programmes: z.array(z.strictObject({ programme: id, hash: sha256Text })),
    /** What the own exercises make of the catalogue; null where no file of them was given. */
    exercises: z.strictObject({ added: z.array(id), changed: z.array(id), hidden: z.array(id) }).nullable(),
    without: z.array(z.strictObject({ person: id, programme: id.nullable() })),
  }),
);

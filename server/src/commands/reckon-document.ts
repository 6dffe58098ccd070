import { DIMENSIONS } from "@stave/core/reckon";
import { SOURCES } from "@stave/core/sources";
import { z } from "zod";
import { documentOf } from "./document.ts";

const text = z.string().min(1);
const source = z.enum(Object.keys(SOURCES));
const span = z.strictObject({ from: z.number(), to: z.number() });

/** What is asked for: a quantity with one of its units, one of some words, bytes, or a list of loads. */
const asked = z.union([
  z.strictObject({ key: text, dimension: z.enum(Object.keys(DIMENSIONS)), optional: z.literal(true).exactOptional() }),
  z.strictObject({
    key: text,
    list: z.enum(["loads", "plates", "sessions"]),
    optional: z.literal(true).exactOptional(),
  }),
  z.strictObject({ key: text, of: z.array(text).min(1), optional: z.literal(true).exactOptional() }),
  z.strictObject({ key: text, mostBytes: z.int().min(1), optional: z.literal(true).exactOptional() }),
  z.strictObject({ key: text, clock: z.literal("wall"), optional: z.literal(true).exactOptional() }),
]);

const figure = z.strictObject({
  what: text,
  source,
  value: z.union([z.number(), text]),
  unit: text.exactOptional(),
  /** Ends of an interval or of a band. */
  low: z.number().exactOptional(),
  high: z.number().exactOptional(),
  decimals: z.int().min(0).max(6).exactOptional(),
});

/** On whom a formula was made and how far single people lie from it; what could not be read is left out. */
const about = z.strictObject({
  source,
  who: text,
  people: z.int().min(1).exactOptional(),
  ageY: span.exactOptional(),
  miss: z
    .strictObject({ kind: text, from: z.number(), to: z.number().exactOptional(), unit: text, source })
    .exactOptional(),
});

/** What `stave reckon --json` prints: the list, or one thing reckoned. */
export const reckonDocument = documentOf(
  "reckon",
  z.union([
    z.strictObject({ list: z.array(z.strictObject({ name: text, asks: z.array(asked).min(1) })).min(1) }),
    z.strictObject({
      name: text,
      /** As it was written. */
      given: z.record(z.string(), z.string()),
      figures: z.array(figure).min(1),
      about: z.array(about).min(1),
    }),
  ]),
);

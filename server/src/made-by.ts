import { createHash } from "node:crypto";
import { CATALOGUE } from "@stave/core/exercises";
import { canonicalJson } from "@stave/core/model";

/** Version of the code that plans are made by; a plan of another engine is not comparable byte by byte. */
export const ENGINE = "0.1.0";

/** @returns the SHA-256 of a text's UTF-8 bytes, 64 digits in hex */
export function sha256(text: string): string {
  return createHash("sha256").update(text, "utf8").digest("hex");
}

export const CATALOGUE_HASH = sha256(canonicalJson([...CATALOGUE.exercises.values(), CATALOGUE.ladders]));

import { createHash } from "node:crypto";
import { CATALOGUE } from "@stave/core/exercises";
import { type Catalogue, canonicalJson } from "@stave/core/model";

/** Version of the code that plans are made by; a plan of another engine is not comparable byte by byte. */
export const ENGINE = "0.1.0";

/** @returns the SHA-256 of a text's UTF-8 bytes, 64 digits in hex */
export function sha256(text: string): string {
  return createHash("sha256").update(text, "utf8").digest("hex");
}

const HASHES = new WeakMap<Catalogue, string>();

/** @returns the SHA-256 of a catalogue's entries and ladders, reckoned once for each */
export function catalogueHash(catalogue: Catalogue): string {
  const known = HASHES.get(catalogue);
  if (known !== undefined) return known;
  const hash = sha256(canonicalJson([...catalogue.exercises.values(), catalogue.ladders]));
  HASHES.set(catalogue, hash);
  return hash;
}

export const CATALOGUE_HASH = catalogueHash(CATALOGUE);

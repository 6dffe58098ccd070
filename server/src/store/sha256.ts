import { createHash } from "node:crypto";

/** @returns the SHA-256 of a text's UTF-8 bytes, 64 digits in hex */
export function sha256(text: string): string {
  return createHash("sha256").update(text, "utf8").digest("hex");
}

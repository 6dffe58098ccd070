import { createHash, randomBytes } from "node:crypto";

/** @returns 32 random bytes in base64url, 43 letters */
export function newToken(): string {
  return randomBytes(32).toString("base64url");
}

/** @returns what is kept of a token. A token is random and long, so that its plain SHA-256 tells nothing of it. */
export function hashOf(token: string): string {
  return createHash("sha256").update(token, "utf8").digest("hex");
}

/** What this phone makes by itself: ids and its token. */

function base64url(bytes: Uint8Array): string {
  return btoa(String.fromCharCode(...bytes))
    .replaceAll("+", "-")
    .replaceAll("/", "_")
    .replaceAll("=", "");
}

/** 32 random bytes, base64url. */
export function makeToken(): string {
  return base64url(crypto.getRandomValues(new Uint8Array(32)));
}

/**
 * A version 7 UUID: 48 bits of time, then chance, so that ids of one phone stand about in the order they were made.
 *
 * @param now epoch milliseconds by this phone's clock, which may be wrong: chance alone keeps ids apart
 * @source RFC 9562, section 5.7
 */
export function makeId(now: number): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  const time = Math.max(0, Math.floor(now)) % 2 ** 48;
  for (let at = 0; at < 6; at++) bytes[at] = Math.floor(time / 2 ** (8 * (5 - at))) % 256;
  bytes[6] = (bytes[6]! & 0x0f) | 0x70;
  bytes[8] = (bytes[8]! & 0x3f) | 0x80;
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join("-");
}

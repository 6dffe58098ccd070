import type { Store } from "../store/index.ts";
import { hashOf, newToken } from "./token.ts";

const DAY_MS = 86_400_000;
/** A coach's page stays signed in so long after it was opened. Ours, no source. */
const SESSION_DAYS = 30;

/** Cookies are shared by all ports of a machine, so that each server's has a name of its own. */
function cookieName(port: number): string {
  return `stave-${port}`;
}

/** Begins a session of the owner. @returns the value of a Set-Cookie header */
export async function beginSession(store: Store, practice: string, port: number, now: number): Promise<string> {
  const token = newToken();
  await store.putSession(practice, { token: hashOf(token), expires: now + SESSION_DAYS * DAY_MS }, now);
  return `${cookieName(port)}=${token}; Path=/; Max-Age=${SESSION_DAYS * 86_400}; HttpOnly; SameSite=Strict`;
}

/** @returns the practice whose owner's session the cookies hold */
export async function sessionIn(
  store: Store,
  cookies: string | undefined,
  port: number,
  now: number,
): Promise<string | undefined> {
  const name = cookieName(port);
  const values = (cookies ?? "")
    .split("; ")
    .flatMap((pair) => (pair.startsWith(`${name}=`) ? [pair.slice(name.length + 1)] : []));
  const [token] = values;
  if (values.length !== 1 || token === undefined || !/^[\w-]{43}$/.test(token)) return undefined;
  return await store.sessionByToken(hashOf(token), now);
}

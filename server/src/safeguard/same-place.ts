import { isIP } from "node:net";
import { networkInterfaces } from "node:os";
import { Refusal } from "./problem.ts";

/** Names under which this machine reaches itself. */
const LOOPBACK = ["localhost", "127.0.0.1", "[::1]"];
const ALL = new Set(["0.0.0.0", "::"]);

/**
 * Names by which the server may be asked. A page from elsewhere can make its own name lead here (DNS rebinding), but it
 * cannot make a browser send one of these.
 *
 * @param host the address or name that the server listens on
 * @returns what may stand in the Host header before the port, in lower case
 */
export function ownNames(host: string): ReadonlySet<string> {
  const written = (address: string) => (isIP(address) === 6 ? `[${address.replace(/%.*/, "")}]` : address);
  const here = ALL.has(host)
    ? Object.values(networkInterfaces()).flatMap((cards) => (cards ?? []).map(({ address }) => address))
    : [host];
  return new Set([...LOOPBACK, ...here.map(written)].map((name) => name.toLowerCase()));
}

/** What of a request tells where it comes from. */
export interface Asked {
  readonly method: string;
  readonly headers: Readonly<Record<string, string | readonly string[] | undefined>>;
  readonly isApi: boolean;
}

/**
 * Refuses a request that names another host, or that a page of another origin makes. Pages may be opened from anywhere;
 * the API answers only its own pages and programs that are no pages.
 *
 * @throws Refusal
 */
export function checkPlace({ headers, isApi }: Asked, names: ReadonlySet<string>, port: number): void {
  const host = typeof headers["host"] === "string" ? headers["host"].toLowerCase() : "";
  const name = /^(\[[0-9a-f:.]+\]|[^:[\]]+)(?::(\d+))?$/.exec(host);
  if (!name || !names.has(name[1]!) || Number(name[2] ?? 80) !== port)
    throw new Refusal(421, "request/wrong-host", "This server does not go by that name");
  if (!isApi) return;
  const origin = headers["origin"];
  const site = headers["sec-fetch-site"];
  if (origin !== undefined && origin !== `http://${host}`)
    throw new Refusal(403, "request/wrong-origin", "Pages of another origin are not answered");
  if (site !== undefined && site !== "same-origin" && site !== "none")
    throw new Refusal(403, "request/wrong-origin", "Pages of another site are not answered");
}

/** A coach's word may only come from a page of this server: a browser always says so. @throws Refusal */
export function checkOwnPage({ method, headers }: Asked): void {
  if (method !== "GET" && method !== "HEAD" && headers["origin"] === undefined)
    throw new Refusal(403, "request/wrong-origin", "A change needs the Origin header of this server's own page");
}

/** @returns whether a request came from this machine itself, and not through something that passes requests on */
export function isFromHere(address: string | undefined, headers: Asked["headers"]): boolean {
  const passedOn = ["forwarded", "via", "x-forwarded-for", "x-forwarded-host", "x-real-ip"];
  if (passedOn.some((name) => headers[name] !== undefined)) return false;
  return address !== undefined && /^(?:::1|(?:::ffff:)?127(?:\.\d{1,3}){3})$/.test(address);
}

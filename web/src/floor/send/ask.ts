import type {
  BundleOutput,
  EventsInput,
  EventsOutput,
  EventsSince,
  ExchangeInput,
  ExchangeOutput,
} from "@stave/core/api";

/** Longest that an answer is waited for. Ours, no source: a sender that waits for ever never tries again. */
const PATIENCE_MS = 20_000;
const ROOT = "/api/v1";

/** What came back: an answer, a refusal by its HTTP status, or nothing at all. */
export type Answer<Body> =
  | { readonly ok: true; readonly body: Body; readonly etag: string }
  | { readonly ok: false; readonly status: number }
  | { readonly ok: false; readonly status: "nothing" };

/** How an errand ended: it is done, it is worth trying again, or the server does not know this phone. */
export type Outcome = "done" | "try again" | "unknown phone";

export function outcomeOf({ status }: { readonly status: number | "nothing" }): Outcome {
  return status === 401 ? "unknown phone" : "try again";
}

interface Asking {
  readonly token?: string;
  readonly body?: unknown;
  readonly etag?: string;
}

async function ask<Body>(method: "GET" | "POST", path: string, { token, body, etag }: Asking): Promise<Answer<Body>> {
  const patience = new AbortController();
  const timer = setTimeout(() => patience.abort(), PATIENCE_MS);
  try {
    const response = await fetch(ROOT + path, {
      method,
      cache: "no-store",
      credentials: "omit",
      signal: patience.signal,
      headers: {
        ...(token === undefined ? {} : { authorization: `Bearer ${token}` }),
        ...(etag === undefined ? {} : { "if-none-match": etag }),
        ...(body === undefined ? {} : { "content-type": "application/json" }),
      },
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    });
    if (!response.ok) return { ok: false, status: response.status };
    return { ok: true, body: (await response.json()) as Body, etag: response.headers.get("etag") ?? "" };
  } catch {
    // No network, no answer in time, or half of one: all the same to a sender that will ask again.
    return { ok: false, status: "nothing" };
  } finally {
    clearTimeout(timer);
  }
}

export const exchangeLink = (input: ExchangeInput) => ask<ExchangeOutput>("POST", "/links/exchange", { body: input });

export const askBundle = (token: string, etag?: string) =>
  ask<BundleOutput>("GET", "/bundle", { token, ...(etag === undefined || etag === "" ? {} : { etag }) });

export const sendEvents = (token: string, input: EventsInput) =>
  ask<EventsOutput>("POST", "/events", { token, body: input });

export const askEvents = (token: string, after: number) => ask<EventsSince>("GET", `/events?after=${after}`, { token });

import { type Fault, refusal } from "./fault.ts";

export type Answer<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly fault: Fault };

const API = "/api/v1/";
const WAIT_MS = 15_000;

async function json(response: Response): Promise<unknown> {
  try {
    return await response.json();
  } catch {
    return undefined;
  }
}

async function request<T>(place: string, how: RequestInit): Promise<Answer<T>> {
  const stop = new AbortController();
  const timer = setTimeout(() => stop.abort(), WAIT_MS);
  try {
    const response = await fetch(API + place, { ...how, cache: "no-store", signal: stop.signal });
    const value = await json(response);
    if (!response.ok) return { ok: false, fault: refusal(place, response.status, value) };
    return value === undefined ? { ok: false, fault: { kind: "garbled", place } } : { ok: true, value: value as T };
  } catch {
    return { ok: false, fault: { kind: "unreachable" } };
  } finally {
    clearTimeout(timer);
  }
}

/**
 * Asks the server. Never throws: what goes wrong is the answer.
 *
 * @param place below /api/v1/, as `people/bao-linh`
 */
export function ask<T>(place: string): Promise<Answer<T>> {
  return request(place, {});
}

/** Tells the server something, by POST; without a body the place alone says it. Never throws. */
export function tell<T>(place: string, body?: object): Promise<Answer<T>> {
  const sent =
    body === undefined ? {} : { headers: { "content-type": "application/json" }, body: JSON.stringify(body) };
  return request(place, { method: "POST", ...sent });
}

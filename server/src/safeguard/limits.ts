import { Refusal } from "./problem.ts";

export interface Rate {
  /** So many at once. */
  readonly burst: number;
  /** So many a minute after that. */
  readonly aMinute: number;
}

/** Callers remembered at once; the one that was seen longest ago goes first. */
const MOST_CALLERS = 10_000;

/** How often each caller may ask: a bucket for each, filled again as time passes. */
export class Limits {
  readonly #rate: Rate;
  readonly #buckets = new Map<string, { left: number; at: number }>();

  constructor(rate: Rate) {
    this.#rate = rate;
  }

  /**
   * @param now epoch milliseconds
   * @throws Refusal that says after how many seconds to ask again
   */
  take(caller: string, now: number): void {
    const { burst, aMinute } = this.#rate;
    const old = this.#buckets.get(caller);
    const passed = old === undefined ? 0 : Math.max(0, now - old.at);
    const left = old === undefined ? burst : Math.min(burst, old.left + (passed * aMinute) / 60_000);
    this.#buckets.delete(caller);
    this.#buckets.set(caller, { left: left < 1 ? left : left - 1, at: now });
    if (this.#buckets.size > MOST_CALLERS) this.#buckets.delete(this.#buckets.keys().next().value!);
    if (left < 1) {
      const seconds = Math.ceil(((1 - left) * 60) / aMinute);
      throw new Refusal(429, "request/too-many", `Ask again in ${seconds} s`, {
        headers: { "retry-after": String(seconds) },
      });
    }
  }
}

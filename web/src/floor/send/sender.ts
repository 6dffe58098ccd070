import { type Kept, readAll } from "../kept/index.ts";
import { backOff } from "./back-off.ts";
import { fetchNews } from "./fetch-news.ts";
import { emptyOutbox } from "./outbox.ts";

/** The name of the lock under which one tab sends at a time. */
const LOCK = "stave-floor-send";
/** How often an open page asks for news. Ours, no source. */
const NEWS_MS = 60_000;

export type SenderState = "idle" | "sending" | "waiting" | "unknown phone";

/**
 * Sends what waits and fetches what is new: when something was said, when the network comes back, when the page is
 * looked at again, and once a minute. One tab at a time; after a failure it waits longer and longer.
 */
export class Sender {
  state: SenderState = "idle";
  readonly #kept: Kept;
  readonly #changed: () => Promise<void>;
  #failures = 0;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #asked = false;
  #running = false;

  /** @param changed called whenever what is kept, or the state, has changed */
  constructor(kept: Kept, changed: () => Promise<void>) {
    this.#kept = kept;
    this.#changed = changed;
  }

  /** Begins to listen to the network and to the eye. */
  listen(): void {
    addEventListener("online", () => this.now());
    document.addEventListener("visibilitychange", () => {
      if (document.visibilityState === "visible") this.now();
    });
    this.now();
  }

  /** Tries at once, whatever it was waiting for. */
  now(): void {
    this.#asked = true;
    clearTimeout(this.#timer);
    if (!this.#running) void this.#run();
  }

  async #run(): Promise<void> {
    this.#running = true;
    while (this.#asked) {
      this.#asked = false;
      // Browsers give locks only to pages from a safe address; without them the server still takes each event once.
      const round = () => this.#round().catch(() => false);
      const reached = await (navigator.locks?.request(LOCK, round) ?? round());
      this.#failures = reached ? 0 : this.#failures + 1;
    }
    this.#running = false;
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.now(), this.#failures === 0 ? NEWS_MS : backOff(this.#failures, Math.random()));
  }

  async #round(): Promise<boolean> {
    const { device } = await readAll(this.#kept);
    if (device === undefined) return true;
    this.state = "sending";
    await this.#changed();
    const sent = await emptyOutbox(this.#kept, device.token, this.#changed);
    const done = sent === "done" ? await fetchNews(this.#kept, await readAll(this.#kept)) : sent;
    this.state = done === "done" ? "idle" : done === "unknown phone" ? "unknown phone" : "waiting";
    await this.#changed();
    return done === "done";
  }
}

import type { ServerResponse } from "node:http";
import type { Changed } from "@stave/core/api";
import { Refusal } from "../safeguard/index.ts";
import type { Handlers, Serving } from "./handlers.ts";

/** A line is sent so often where nothing happens, so that a lost connection is noticed. Ours, no source. */
const BEAT_MS = 15_000;
const AGAIN_MS = 2000;
const MOST_STREAMS = 500;
const MOST_OF_ONE = 12;
/** Who reads so slowly that so much waits for them is let go, and asks again. */
const MOST_WAITING_BYTES = 65_536;

/** Streams that are open, so that they can be ended when the server stops. */
export class Streams {
  readonly #open = new Map<ServerResponse, string>();

  /** @throws Refusal */
  add(response: ServerResponse, caller: string): void {
    const mine = [...this.#open.values()].filter((one) => one === caller).length;
    if (this.#open.size >= MOST_STREAMS || mine >= MOST_OF_ONE)
      throw new Refusal(429, "request/too-many", "Too many streams are open", { headers: { "retry-after": "60" } });
    this.#open.set(response, caller);
    response.once("close", () => this.#open.delete(response));
  }

  end(): void {
    for (const response of this.#open.keys()) response.end();
  }
}

/** Server-sent events: `changed` with the person, to the coach for everybody, to a person for themselves. */
export function stream({ changes }: Serving, streams: Streams): Pick<Handlers, "stream"> {
  return {
    async stream({ caller, reply }) {
      const { raw } = reply;
      const person = "person" in caller ? caller.person : undefined;
      streams.add(raw, `${caller.practice}/${person ?? ""}`);
      reply.hijack();
      const headers = { ...reply.getHeaders(), "content-type": "text/event-stream", "cache-control": "no-store" };
      raw.writeHead(200, headers as Record<string, string>);
      const write = (text: string) => {
        if (raw.writableLength > MOST_WAITING_BYTES) raw.destroy();
        else raw.write(text);
      };
      write(`retry: ${AGAIN_MS}\n\n`);
      const beat = setInterval(() => write(": \n\n"), BEAT_MS);
      const stop = changes.listen(caller.practice, (changed) => {
        if (person !== undefined && changed !== person) return;
        const data: Changed = { person: changed };
        write(`event: changed\ndata: ${JSON.stringify(data)}\n\n`);
      });
      raw.once("close", () => {
        clearInterval(beat);
        stop();
      });
      return reply;
    },
  };
}

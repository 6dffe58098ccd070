import { type IncomingHttpHeaders, request } from "node:http";

/** A stream of server-sent events that is being read. */
export interface Listening {
  readonly headers: IncomingHttpHeaders;
  readonly events: readonly { readonly event: string; readonly data: unknown }[];
  /** Waits until so many came. */
  until(count: number): Promise<void>;
  /** Resolves when the server ends it. */
  readonly ended: Promise<void>;
  end(): void;
}

/** Reads server-sent events as the HTML standard says they are read (9.2.6), as far as we send them. */
export async function listen(
  port: number,
  path: string,
  headers: Readonly<Record<string, string>>,
): Promise<Listening> {
  return await new Promise((resolve, reject) => {
    const asked = request({ port, path, host: "127.0.0.1", agent: false, headers: { ...headers } }, (answer) => {
      const events: { event: string; data: unknown }[] = [];
      let waiting: (() => void)[] = [];
      let text = "";
      answer.setEncoding("utf8");
      answer.on("data", (chunk: string) => {
        text += chunk;
        const blocks = text.split("\n\n");
        text = blocks.pop()!;
        for (const block of blocks) {
          const fields = new Map(block.split("\n").map((line) => line.split(/: ?(.*)/s, 2) as [string, string]));
          if (fields.has("data"))
            events.push({ event: fields.get("event") ?? "message", data: JSON.parse(fields.get("data")!) });
        }
        for (const go of waiting.splice(0)) go();
      });
      const ended = new Promise<void>((over) => answer.once("close", over));
      answer.on("error", () => undefined);
      resolve({
        headers: answer.headers,
        events,
        ended,
        async until(count) {
          while (events.length < count) await new Promise<void>((go) => waiting.push(go));
        },
        end: () => asked.destroy(),
      });
      waiting = [];
    });
    asked.on("error", reject);
    asked.end();
  });
}

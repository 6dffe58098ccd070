import { type IncomingHttpHeaders, request } from "node:http";

export interface Sent {
  readonly method?: string;
  readonly headers?: Readonly<Record<string, string | readonly string[]>>;
  /** An object is sent as JSON. */
  readonly body?: unknown;
}

export interface Got {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly bytes: Buffer;
  readonly text: string;
  // biome-ignore lint/suspicious/noExplicitAny: bodies are looked into by the tests, whatever they are
  readonly json: any;
}

/** One request on a connection of its own; unlike a browser it sends any header as told, Host and Origin too. */
export async function send(port: number, path: string, { method, headers = {}, body }: Sent = {}): Promise<Got> {
  const raw =
    typeof body === "string" || body instanceof Buffer ? body : body === undefined ? undefined : JSON.stringify(body);
  return await new Promise((resolve, reject) => {
    const asked = request(
      {
        port,
        path,
        host: "127.0.0.1",
        agent: false,
        method: method ?? (raw === undefined ? "GET" : "POST"),
        headers: { ...(raw === undefined ? {} : { "content-type": "application/json" }), ...headers } as Record<
          string,
          string
        >,
      },
      (answer) => {
        const chunks: Buffer[] = [];
        answer.on("error", reject);
        answer.on("data", (chunk: Buffer) => chunks.push(chunk));
        answer.on("end", () => {
          const bytes = Buffer.concat(chunks);
          const text = bytes.toString();
          const isJson = /json/.test(answer.headers["content-type"] ?? "") && text !== "";
          resolve({
            status: answer.statusCode!,
            headers: answer.headers,
            bytes,
            text,
            json: isJson ? JSON.parse(text) : undefined,
          });
        });
      },
    );
    asked.on("error", reject);
    asked.end(raw);
  });
}

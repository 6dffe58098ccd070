import { createServer, type IncomingHttpHeaders, request, type Server } from "node:http";
import type { AddressInfo } from "node:net";

/** What happens to what is asked of the server. */
export type Weather =
  /** All arrives. */
  | "open"
  /** The server is asked, and its answer never arrives. */
  | "answers lost"
  /** Nothing arrives. */
  | "closed";

export interface Passed {
  readonly method: string;
  readonly path: string;
  readonly headers: IncomingHttpHeaders;
  readonly body: Buffer;
}

/** The way between the phone and the server: a real port that forwards, loses answers or is shut. */
export class Way {
  weather: Weather = "open";
  /** Everything that reached the server, in order. */
  readonly passed: Passed[] = [];
  /** Which paths the weather is over. */
  over: (path: string) => boolean = () => true;
  #server: Server | undefined;
  #port = 0;
  readonly #to: () => number;

  /** @param to port of the server, asked anew each time, since it may start again elsewhere */
  constructor(to: () => number) {
    this.#to = to;
  }

  get origin(): string {
    return `http://127.0.0.1:${this.#port}`;
  }

  async start(): Promise<void> {
    this.#server = createServer((asked, answer) => {
      const chunks: Buffer[] = [];
      asked.on("data", (chunk: Buffer) => chunks.push(chunk));
      asked.on("end", () => {
        const { method = "GET", url = "/", headers } = asked;
        const weather = this.over(url) ? this.weather : "open";
        if (weather === "closed") return void asked.socket.destroy();
        const body = Buffer.concat(chunks);
        const port = this.#to();
        const origin = `http://127.0.0.1:${port}`;
        const there = request(
          {
            port,
            host: "127.0.0.1",
            method,
            path: url,
            headers: {
              ...headers,
              host: `127.0.0.1:${port}`,
              ...(headers.origin === undefined ? {} : { origin }),
              ...(headers.referer === undefined ? {} : { referer: `${origin}/` }),
            },
          },
          (back) => {
            this.passed.push({ method, path: url, headers, body });
            if (weather === "answers lost") {
              back.resume();
              back.on("end", () => asked.socket.destroy());
              return;
            }
            answer.writeHead(back.statusCode ?? 500, back.headers);
            back.pipe(answer);
          },
        );
        there.on("error", () => asked.socket.destroy());
        there.end(body);
      });
    });
    await new Promise<void>((ready) => this.#server!.listen(this.#port, "127.0.0.1", ready));
    this.#port = (this.#server.address() as AddressInfo).port;
  }

  async stop(): Promise<void> {
    const server = this.#server!;
    await new Promise((closed) => {
      server.close(closed);
      server.closeAllConnections();
    });
  }
}

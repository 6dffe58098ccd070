import { readFileSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join } from "node:path";
import type { Bundle, StaveEvent } from "@stave/core/model";

const TYPES: Record<string, string> = {
  ".html": "text/html",
  ".js": "text/javascript",
  ".css": "text/css",
  ".woff2": "font/woff2",
};

export class StandIn {
  events = new Map<string, StaveEvent>();
  bundle: Bundle;
  etag = '"1"';
  server: Server;
  port = 0;
  constructor(bundle: Bundle) {
    this.bundle = bundle;
    this.server = createServer(async (request, response) => {
      const url = new URL(request.url!, "http://x");
      const chunks: Buffer[] = [];
      for await (const chunk of request) chunks.push(chunk as Buffer);
      const body = chunks.length > 0 ? JSON.parse(Buffer.concat(chunks).toString()) : undefined;
      const json = (value: unknown, headers = {}) =>
        response.writeHead(200, { "content-type": "application/json", ...headers }).end(JSON.stringify(value));
      if (url.pathname === "/api/v1/links/exchange") return json({ person: this.bundle.person.id });
      if (url.pathname === "/api/v1/bundle") {
        if (request.headers["if-none-match"] === this.etag) return response.writeHead(304).end();
        return json(this.bundle, { etag: this.etag });
      }
      if (url.pathname === "/api/v1/events" && request.method === "GET") return json({ events: [], after: 0 });
      if (url.pathname === "/api/v1/events") {
        const acks = (body.events as StaveEvent[]).map((event) => {
          const ack = this.events.has(event.id) ? "known" : "stored";
          this.events.set(event.id, event);
          return { id: event.id, ack };
        });
        return json({ acks });
      }
      const file = url.pathname.replace(/^\/go\//, "") || "index.html";
      try {
        const bytes = readFileSync(join("server/dist/pages/floor", file));
        response.writeHead(200, { "content-type": TYPES[extname(file)] ?? "text/plain" }).end(bytes);
      } catch {
        response.writeHead(404).end();
      }
    });
  }
  async start(): Promise<string> {
    await new Promise<void>((done) => this.server.listen(this.port, "127.0.0.1", done));
    this.port = (this.server.address() as AddressInfo).port;
    return `http://127.0.0.1:${this.port}`;
  }
  async stop() {
    this.server.closeAllConnections();
    await new Promise((done) => this.server.close(done));
  }
}

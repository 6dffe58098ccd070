import { join } from "node:path";
import { API_ROOT } from "@stave/core/api";
import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { beginSession, isFromHere, Refusal, sessionIn } from "../safeguard/index.ts";
import type { Serving } from "./handlers.ts";
import { type PageFile, readPageFiles } from "./page-files.ts";

const DESK = "/";
const FLOOR = "/go/";

/** Serves the coach's page at `/`, with a session of the owner for who opens it on this machine, and the phone's at `/go/`. */
export function pages(app: FastifyInstance, { store, clock }: Serving, folder: string, practice: string): void {
  const files = new Map([...readPageFiles(join(folder, "desk"), DESK), ...readPageFiles(join(folder, "floor"), FLOOR)]);
  const desk = files.get(DESK);

  app.get("/go", { schema: { hide: true } }, (_, reply) => reply.redirect(FLOOR, 308));
  app.get("/*", { schema: { hide: true } }, async (request, reply) => {
    const path = request.url.replace(/[?#].*$/s, "");
    const file = files.get(path) ?? (isPlaceOnDesk(path, request) ? desk : undefined);
    if (file === undefined) throw new Refusal(404, "route/unknown", "There is nothing at this address");
    if (file === desk) await signIn(request, reply);
    return send(file, request, reply);
  });

  async function signIn({ headers, ip, socket }: FastifyRequest, reply: FastifyReply): Promise<void> {
    if (!isFromHere(ip, headers)) return;
    const port = socket.localPort!;
    if ((await sessionIn(store, headers.cookie, port, clock())) !== undefined) return;
    reply.header("set-cookie", await beginSession(store, practice, port, clock()));
  }
}

/** The coach's page finds its places by itself, so that any of them may be opened or loaded anew. */
function isPlaceOnDesk(path: string, { headers }: FastifyRequest): boolean {
  const isElsewhere = [API_ROOT.replace(/v1$/, ""), FLOOR, "/assets/"].some((base) => path.startsWith(base));
  return !isElsewhere && (headers.accept ?? "").includes("text/html");
}

function send(
  { type, body, gzipped, etag, cache }: PageFile,
  request: FastifyRequest,
  reply: FastifyReply,
): FastifyReply {
  const zip =
    gzipped !== undefined &&
    /\bgzip\b(?!\s*;\s*q=0(?:\.0*)?(?:,|$))/.test(String(request.headers["accept-encoding"] ?? ""));
  const tag = `"${etag}${zip ? "-gzip" : ""}"`;
  reply.header("cache-control", cache).header("etag", tag).header("vary", "accept-encoding");
  if (request.headers["if-none-match"] === tag) return reply.code(304).send();
  reply.type(type);
  if (zip) reply.header("content-encoding", "gzip");
  return reply.send(zip ? gzipped : body);
}

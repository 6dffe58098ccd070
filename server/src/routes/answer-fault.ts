import type { Socket } from "node:net";
import type { FastifyReply, FastifyRequest } from "fastify";
import { PROBLEM_TYPE, type ProblemCode, problemOf, Refusal, SECURITY_HEADERS } from "../safeguard/index.ts";

type Thrown = Error & { readonly code?: string; readonly statusCode?: number };

/** The framework's own refusals, in our words. */
const CODES: Readonly<Record<number, readonly [code: ProblemCode, detail: string]>> = {
  404: ["route/unknown", "There is nothing at this address"],
  408: ["request/timed-out", "The request did not arrive in time"],
  413: ["request/too-large", "The body is larger than is taken"],
  414: ["request/too-large", "The address is longer than is taken"],
  415: ["request/not-json", "The body must be application/json"],
  431: ["request/too-large", "The headers are larger than is taken"],
};

/** @returns the refusal that an error is, or undefined for a fault of our own */
export function toRefusal(error: Thrown): Refusal | undefined {
  if (error instanceof Refusal) return error;
  const status = error.statusCode ?? 500;
  if (!(status >= 400 && status < 500)) return undefined;
  const [code, detail] = CODES[status] ?? ["request/malformed", "The request cannot be read"];
  return new Refusal(CODES[status] === undefined ? 400 : status, code, detail);
}

/** Ends a request with a problem. A fault of our own is told to the machine's owner without what people sent. */
export function answerFault(
  error: unknown,
  request: FastifyRequest,
  reply: FastifyReply,
  onFault: (line: string) => void,
): void {
  const thrown = error instanceof Error ? (error as Thrown) : new Error(String(error));
  const refusal = toRefusal(thrown) ?? new Refusal(500, "server/fault", "This is a fault in Stave, and it was noted");
  if (refusal.statusCode >= 500) onFault(faultLine(thrown, request));
  reply
    .code(refusal.statusCode)
    .headers(refusal.headers)
    .type(PROBLEM_TYPE)
    .serializer(JSON.stringify)
    .send(problemOf(refusal));
}

/** Where a fault happened. Its message may hold what somebody sent, so it is left out. */
function faultLine(error: Thrown, request: FastifyRequest): string {
  const frames = (error.stack ?? "").split("\n").filter((line) => /^\s+at /.test(line));
  return [`${request.method} ${request.routeOptions.url ?? ""}: ${error.code ?? error.name}`, ...frames].join("\n");
}

/** Ends a connection on which no request could be read. */
export function refuseRaw(error: Error & { readonly code?: string }, socket: Socket): void {
  if (error.code === "ECONNRESET" || !socket.writable) return void socket.destroy();
  const status = { HPE_HEADER_OVERFLOW: 431, ERR_HTTP_REQUEST_TIMEOUT: 408 }[error.code ?? ""] ?? 400;
  const refusal = toRefusal(Object.assign(new Error(), { statusCode: status }))!;
  const body = JSON.stringify(problemOf(refusal));
  const headers = {
    ...SECURITY_HEADERS,
    "content-type": PROBLEM_TYPE,
    "content-length": String(Buffer.byteLength(body)),
    connection: "close",
  };
  const lines = Object.entries(headers).map(([name, value]) => `${name}: ${value}`);
  socket.end([`HTTP/1.1 ${status} ${problemOf(refusal).title}`, ...lines, "", body].join("\r\n"));
}

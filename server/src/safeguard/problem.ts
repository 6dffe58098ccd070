import { STATUS_CODES } from "node:http";
import { z } from "zod";

/** Why a request was not answered. The pages have a sentence for each; `detail` is for whoever reads the wire. */
export type ProblemCode =
  | "request/malformed"
  | "request/invalid"
  | "request/too-large"
  | "request/not-json"
  | "request/too-many"
  | "request/timed-out"
  | "request/wrong-host"
  | "request/wrong-origin"
  | "route/unknown"
  | "sign-in/missing"
  | "link/not-open"
  | "person/unknown"
  | "event/other-person"
  | "event/reserved-device"
  | "decision/stale"
  | "decision/unknown"
  | "decision/id-taken"
  | "rule/version-taken"
  | "server/fault";

/** Where in the request it is wrong, and what is wrong there. */
export interface Fault {
  readonly at: readonly (string | number)[];
  readonly message: string;
}

export const PROBLEM_TYPE = "application/problem+json";

/** RFC 9457. The type is `about:blank`, so the title is that of the status; `code` and `faults` are our members. */
export const problemPiece = z.strictObject({
  type: z.literal("about:blank"),
  title: z.string(),
  status: z.int().min(400).max(599),
  code: z.string(),
  detail: z.exactOptional(z.string()),
  faults: z.exactOptional(
    z.array(z.strictObject({ at: z.array(z.union([z.string(), z.number()])), message: z.string() })),
  ),
});
export type Problem = z.infer<typeof problemPiece>;

const MOST_FAULTS = 20;
const MOST_TEXT = 300;

/** Thrown to end a request with a problem. */
export class Refusal extends Error {
  override readonly name = "Refusal";
  readonly statusCode: number;
  readonly code: ProblemCode;
  readonly faults: readonly Fault[];
  /** Headers that the answer must carry. */
  readonly headers: Readonly<Record<string, string>>;

  constructor(
    statusCode: number,
    code: ProblemCode,
    detail: string,
    { faults = [], headers = {} }: { faults?: readonly Fault[]; headers?: Readonly<Record<string, string>> } = {},
  ) {
    super(detail);
    this.statusCode = statusCode;
    this.code = code;
    this.faults = faults;
    this.headers = headers;
  }
}

/** @returns the body of a problem, bounded in size whatever was sent */
export function problemOf({ statusCode, code, message, faults }: Refusal): Problem {
  return {
    type: "about:blank",
    title: STATUS_CODES[statusCode] ?? "Error",
    status: statusCode,
    code,
    ...(message === "" ? {} : { detail: message.slice(0, MOST_TEXT) }),
    ...(faults.length === 0
      ? {}
      : {
          faults: faults.slice(0, MOST_FAULTS).map(({ at, message: text }) => ({
            at: at.map((step) => (typeof step === "string" ? step.slice(0, MOST_TEXT) : step)),
            message: text.slice(0, MOST_TEXT),
          })),
        }),
  };
}

import { words } from "../words.ts";

/** Why there is no answer. `place` is the part of the interface that was asked. */
export type Fault =
  | { readonly kind: "unreachable" }
  | { readonly kind: "garbled"; readonly place: string }
  | { readonly kind: "refused"; readonly place: string; readonly status: number; readonly what: string };

/** @returns what happened, as a sentence */
export function sayFault(fault: Fault): string {
  switch (fault.kind) {
    case "unreachable":
      return words.faults.unreachable;
    case "garbled":
      return words.faults.garbled(fault.place);
    case "refused":
      return words.faults.refused(fault.place, fault.status, fault.what);
  }
}

function textIn(body: object, name: string): string | undefined {
  const value = (body as Readonly<Record<string, unknown>>)[name];
  return typeof value === "string" && value !== "" ? value : undefined;
}

/**
 * What a server says when it refuses: `detail`, else `title`.
 *
 * @param body anything that came as JSON, undefined where nothing could be read
 * Source: RFC 9457, section 3.1
 */
export function refusal(place: string, status: number, body: unknown): Fault {
  const told =
    typeof body === "object" && body !== null ? (textIn(body, "detail") ?? textIn(body, "title")) : undefined;
  return told === undefined ? { kind: "garbled", place } : { kind: "refused", place, status, what: told };
}

import { Refusal } from "./problem.ts";

/** Levels of lists and objects in each other. The deepest that is sent has fewer than ten. */
const MOST_DEPTH = 32;

/**
 * Reads a body as JSON: UTF-8 or refused, bounded in depth, and nothing in it that a database would alter or that could
 * pass for a part of an object.
 *
 * @throws Refusal
 */
export function readJson(body: Buffer): unknown {
  const value = parse(body);
  const waiting: { value: unknown; depth: number }[] = [{ value, depth: 0 }];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    checkText(next.value);
    if (typeof next.value !== "object" || next.value === null) continue;
    if (next.depth >= MOST_DEPTH) throw malformed(`The body is nested more than ${MOST_DEPTH} levels deep`);
    for (const [name, inner] of Object.entries(next.value)) {
      if (name === "__proto__") throw malformed(`No member may be called ${name}`);
      checkText(name);
      waiting.push({ value: inner, depth: next.depth + 1 });
    }
  }
  return value;
}

function parse(body: Buffer): unknown {
  let text: string;
  try {
    text = new TextDecoder("utf-8", { fatal: true }).decode(body);
  } catch {
    throw malformed("The body is not UTF-8");
  }
  try {
    return JSON.parse(text);
  } catch {
    throw malformed("The body is not JSON");
  }
}

function checkText(value: unknown): void {
  if (typeof value === "string" && /\0|\p{Surrogate}/u.test(value))
    throw malformed("Text must hold neither NUL nor half of a surrogate pair");
}

function malformed(detail: string): Refusal {
  return new Refusal(400, "request/malformed", detail);
}

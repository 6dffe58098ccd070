import { readFileSync } from "node:fs";
import { en } from "@stave/core/text";
import { Ajv2020, type ValidateFunction } from "ajv/dist/2020.js";
import { expect } from "vitest";
import { DOCUMENTS } from "../commands/documents.ts";
import { stave } from "./run-stave.ts";

// An independent reader of JSON Schema: https://json-schema.org/draft/2020-12/schema
const ajv = new Ajv2020({ strict: true, allErrors: true, discriminator: false });
export const published = new Map<string, ValidateFunction>(
  Object.keys(DOCUMENTS).map((command) => [
    command,
    ajv.compile(JSON.parse(readFileSync(`docs/commands/${command}.schema.json`, "utf8"))),
  ]),
);

/** Every code of a reason, a problem or a finding in a document that has no sentence. */
function unsaid(node: unknown): readonly string[] {
  if (typeof node !== "object" || node === null) return [];
  const { code, check } = node as { readonly code?: unknown; readonly check?: unknown };
  const known = new Set([...Object.keys(en.reasons), ...Object.keys(en.problems), ...Object.keys(en.findings)]);
  const mine = [code, check].flatMap((each) => (typeof each === "string" && !known.has(each) ? [each] : []));
  return [...mine, ...Object.values(node).flatMap(unsaid)];
}

/** Runs a command with `--json`, holds its document against the published schema, and gives it back. */
export async function documentOf(...args: readonly string[]) {
  const { exit, out } = await stave(...args, "--json");
  const document = JSON.parse(out);
  const fits = published.get(args[0]!)!;
  expect(fits(document), JSON.stringify(fits.errors?.slice(0, 3))).toBe(true);
  expect(document.ok).toBe(exit === 0);
  expect(unsaid(document)).toEqual([]);
  return document;
}

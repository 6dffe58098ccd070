import type { z } from "zod";
import type { Path } from "./finding.ts";
import { listNames, nearNames } from "./near.ts";
import { offsetInScalar } from "./scalar-offset.ts";
import { boundsOf, formsWithout, keySchemasOf, namesOf, optionOf, schemasAt } from "./schema-walk.ts";
import type { Fault } from "./yaml-syntax.ts";
import type { Branch } from "./yaml-tree.ts";

type Issue = z.core.$ZodIssue;
type Schema = z.core.$ZodType;

const TYPE_WORDS: Readonly<Record<string, string>> = {
  string: "text",
  number: "number",
  int: "whole number",
  boolean: "true, false",
  array: "list",
  object: "map",
  record: "map",
  null: "nothing",
  undefined: "nothing",
};

/** Turns what the validator says into problems with a place in the text. */
export function schemaFaults(root: Branch, schema: Schema, issues: readonly Issue[]): Fault[] {
  return issues.flatMap((issue) => faultsOf(root, [schema], issue, []));
}

function faultsOf(root: Branch, from: readonly Schema[], issue: Issue, base: Path): Fault[] {
  const own = issue.path.filter((step) => typeof step !== "symbol");
  const path = [...base, ...own];
  const schemas = schemasAt(from, own);
  const { branch, missing } = branchAt(root, path);
  const fault = (code: string, more: Partial<Fault> = {}): Fault => ({ code, at: path, offset: branch.start, ...more });
  if (issue.code === "invalid_union" && issue.errors.length > 0) return unionFaults(root, schemas, issue, path);
  if (missing && issue.code !== "custom") return [fault("key/missing", allowedFor(issue, schemas))];
  switch (issue.code) {
    case "invalid_type":
      return [fault("value/type", { ...foundIn(branch), ...allowedFor(issue, schemas) })];
    case "unrecognized_keys":
      return unknownKeys(issue, schemas, branch, path);
    case "invalid_value":
    case "invalid_union":
      return [fault("value/choice", choiceOf(branch, allowedValues(issue)))];
    case "too_small":
    case "too_big":
      return [fault(sizeCode(issue), { ...sizeFound(issue, branch), allowed: boundsOf(schemas) })];
    case "not_multiple_of":
      return [fault("value/step", { ...foundIn(branch), allowed: String(issue.divisor) })];
    case "invalid_key":
      return badKey(root, from, issue, path);
    case "custom":
      return [customFault(issue, branch, path, missing)];
    default:
      return [fault("value/form", foundIn(branch))];
  }
}

function unknownKeys(
  issue: z.core.$ZodIssueUnrecognizedKeys,
  schemas: readonly Schema[],
  branch: Branch,
  path: Path,
): Fault[] {
  const present = [...(branch.children?.keys() ?? [])].map(String);
  const names = namesOf(formsWithout(schemas, present, issue.keys));
  return issue.keys.map((name) => {
    const near = nearNames(name, names);
    return {
      code: "key/unknown",
      at: [...path, name],
      offset: branch.children?.get(name)?.nameStart ?? branch.start,
      found: name,
      ...(names.length > 0 ? { allowed: listNames(names) } : {}),
      ...(near.length > 0 ? { maybe: near.join(", ") } : {}),
    };
  });
}

/** A name is read as a scalar of its own, so that its slips are told as those of any value. */
function badKey(root: Branch, from: readonly Schema[], issue: z.core.$ZodIssueInvalidKey, path: Path): Fault[] {
  const own = issue.path.filter((step) => typeof step !== "symbol");
  const keys = keySchemasOf(schemasAt(from, own.slice(0, -1)));
  const { branch } = branchAt(root, path);
  const name = String(path.at(-1));
  const key: Branch = { value: name, start: branch.nameStart ?? branch.start, written: { text: name, style: "plain" } };
  return issue.issues.flatMap((inner) =>
    faultsOf(key, keys, inner, []).map((fault) => ({ ...fault, at: path, found: name })),
  );
}

/** Tells only of the form that the text comes nearest to: the one whose own names fit best. */
function unionFaults(
  root: Branch,
  schemas: readonly Schema[],
  issue: z.core.$ZodIssueInvalidUnion,
  path: Path,
): Fault[] {
  const wrongKind = issue.errors.every((errors) =>
    errors.some((e) => e.path.length === 0 && (e.code === "invalid_type" || e.code === "invalid_value")),
  );
  const { branch, missing } = branchAt(root, path);
  if (wrongKind) {
    const words = issue.errors.flatMap((errors) =>
      errors.flatMap((e) => (e.code === "invalid_value" ? allowedValues(e) : [String(typeWord(e))])),
    );
    const { allowed = "", ...rest } = choiceOf(branch, [...new Set(words)]);
    const place = { at: path, offset: branch.start, allowed };
    return [missing ? { code: "key/missing", ...place } : { code: "value/type", ...place, ...rest }];
  }
  const costs = issue.errors.map((errors) => misfit(errors, branch) * 10_000 + errors.length);
  const best = costs.indexOf(Math.min(...costs));
  const option = optionOf(schemas, best);
  return issue.errors[best]!.flatMap((inner) => faultsOf(root, option, inner, path));
}

/** A map or list where a word may stand is as far off as another kind of value. */
function misfit(errors: readonly Issue[], branch: Branch): number {
  return errors.reduce((sum, error) => {
    const noWord = error.code === "invalid_value" && branch.children !== undefined;
    if (error.path.length === 0 && (error.code === "invalid_type" || noWord)) return sum + 100;
    if (error.path.length === 0 && error.code === "unrecognized_keys") return sum + error.keys.length;
    return error.path.length === 1 && error.code !== "custom" ? sum + 1 : sum;
  }, 0);
}

/** A schema's own issue, with its data. `found: ""` says that nothing worth showing stands there. */
function customFault(issue: z.core.$ZodIssueCustom, branch: Branch, path: Path, missing: boolean): Fault {
  const params = issue.params ?? {};
  const text = (name: string) => (params[name] === undefined ? {} : { [name]: String(params[name]) });
  const { found, ...fault } = {
    code: String(params["code"] ?? "value/form"),
    at: path,
    offset: customOffset(params, branch),
    ...(missing ? {} : foundIn(branch)),
    ...text("found"),
    ...text("allowed"),
    ...text("maybe"),
  } as Fault;
  return found === undefined || found === "" ? fault : { ...fault, found };
}

function customOffset(params: Readonly<Record<string, unknown>>, branch: Branch): number {
  const offset = typeof params["offset"] === "number" ? params["offset"] : undefined;
  if (params["name"] === true) return (branch.nameStart ?? branch.start) + (offset ?? 0);
  const { written } = branch;
  if (offset === undefined || !written) return branch.start;
  return branch.start + offsetInScalar(written.text, written.style, offset);
}

function branchAt(root: Branch, path: Path): { branch: Branch; missing: boolean } {
  let branch = root;
  for (const step of path) {
    const next = branch.children?.get(step);
    if (!next) return { branch, missing: true };
    branch = next;
  }
  return { branch, missing: false };
}

function foundIn(branch: Branch): { found?: string } {
  if (branch.children) return { found: Array.isArray(branch.value) ? "list" : "map" };
  if (branch.value === null || branch.value === undefined) return { found: "nothing" };
  const text = branch.written?.text.split("\n", 1)[0] ?? String(branch.value);
  return { found: text.length > 40 ? `${text.slice(0, 40)}…` : text };
}

function choiceOf(branch: Branch, values: readonly string[]): Partial<Fault> {
  const near = typeof branch.value === "string" ? nearNames(branch.value, values) : [];
  return {
    ...foundIn(branch),
    allowed: listNames(values),
    ...(near.length > 0 ? { maybe: near.join(", ") } : {}),
  };
}

function allowedFor(issue: Issue, schemas: readonly Schema[]): { allowed?: string } {
  if (issue.code === "invalid_type") {
    const bounds = boundsOf(schemas);
    return { allowed: bounds === "" || issue.expected !== "number" ? String(typeWord(issue)) : bounds };
  }
  const values = allowedValues(issue);
  return values.length > 0 ? { allowed: listNames(values) } : {};
}

function allowedValues(issue: Issue): string[] {
  if (issue.code === "invalid_value") return issue.values.map(String);
  const options = issue.code === "invalid_union" && "options" in issue ? issue.options : undefined;
  return Array.isArray(options) ? options.map(String) : [];
}

function typeWord(issue: Issue): string | undefined {
  return issue.code === "invalid_type" ? (TYPE_WORDS[issue.expected] ?? issue.expected) : undefined;
}

function sizeCode(issue: z.core.$ZodIssueTooSmall | z.core.$ZodIssueTooBig): string {
  const small = issue.code === "too_small";
  if (issue.origin === "string") return small ? "value/short" : "value/long";
  if (issue.origin === "array") return small ? "value/few" : "value/many";
  return small ? "value/small" : "value/big";
}

function sizeFound(issue: z.core.$ZodIssueTooSmall | z.core.$ZodIssueTooBig, branch: Branch): { found?: string } {
  const sized = issue.origin === "string" || issue.origin === "array";
  const value = branch.value;
  return sized && (typeof value === "string" || Array.isArray(value))
    ? { found: String(value.length) }
    : foundIn(branch);
}

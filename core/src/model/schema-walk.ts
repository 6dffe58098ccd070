import type { z } from "zod";
import type { Path } from "./finding.ts";

type Schema = z.core.$ZodType;

/**
 * The schemas that a path leads to. More than one where the way goes through a union.
 *
 * Wrappers (optional, default, pipe, lazy …) are looked through to what is read from the text.
 */
export function schemasAt(from: readonly Schema[], path: Path): readonly Schema[] {
  let here = from.map(unwrapped);
  for (const step of path) here = here.flatMap(branches).flatMap((schema) => stepInto(schema, step));
  return here;
}

/** The schemas of one branch of a union that stands among `schemas`. */
export function optionOf(schemas: readonly Schema[], index: number): readonly Schema[] {
  return schemas.flatMap((schema) => {
    const { def } = (schema as z.core.$ZodTypes)._zod;
    const option = def.type === "union" ? def.options[index] : undefined;
    return option ? [unwrapped(option)] : [];
  });
}

/** The schemas that the names of a map must meet. */
export function keySchemasOf(schemas: readonly Schema[]): readonly Schema[] {
  return schemas.flatMap(branches).flatMap((schema) => {
    const { def } = (schema as z.core.$ZodTypes)._zod;
    return def.type === "record" ? [unwrapped(def.keyType)] : [];
  });
}

/** Those forms of a map in which just these of its names are unknown: where a union settled on one, that one. */
export function formsWithout(
  schemas: readonly Schema[],
  names: Iterable<string>,
  unknown: readonly string[],
): readonly Schema[] {
  const present = [...names];
  const strangers = new Set(unknown);
  const fitting = schemas.flatMap(branches).filter((schema) => {
    const known = new Set(namesOf([schema]));
    const strange = present.filter((name) => !known.has(name));
    return strange.length === strangers.size && strange.every((name) => strangers.has(name));
  });
  return fitting.length > 0 ? fitting : schemas;
}

/** Every name that a map may have. */
export function namesOf(schemas: readonly Schema[]): readonly string[] {
  const names = schemas.flatMap(branches).flatMap((schema) => {
    const { def } = (schema as z.core.$ZodTypes)._zod;
    if (def.type === "object") return Object.keys(def.shape);
    if (def.type === "record") return [...((unwrapped(def.keyType) as z.core.$ZodTypes)._zod.values ?? [])].map(String);
    return [];
  });
  return [...new Set(names)];
}

/**
 * The bounds of a number, a text's length or a list's length.
 *
 * @example
 * boundsOf([z.number().min(8).max(12)]) //=> "8–12"
 */
export function boundsOf(schemas: readonly Schema[]): string {
  let least: { value: number; sign: "≥" | ">" } | undefined;
  let most: { value: number; sign: "≤" | "<" } | undefined;
  for (const schema of schemas) {
    for (const check of (schema as z.core.$ZodTypes)._zod.def.checks ?? []) {
      const def = (check as z.core.$ZodChecks)._zod.def;
      if (def.check === "greater_than") least = { value: Number(def.value), sign: def.inclusive ? "≥" : ">" };
      else if (def.check === "less_than") most = { value: Number(def.value), sign: def.inclusive ? "≤" : "<" };
      else if (def.check === "min_length") least = { value: def.minimum, sign: "≥" };
      else if (def.check === "max_length") most = { value: def.maximum, sign: "≤" };
    }
  }
  if (least?.sign === "≥" && most?.sign === "≤") return `${least.value}–${most.value}`;
  return [least, most].flatMap((end) => (end ? [`${end.sign} ${end.value}`] : [])).join(", ");
}

function unwrapped(schema: Schema): Schema {
  const { def } = (schema as z.core.$ZodTypes)._zod;
  switch (def.type) {
    case "optional":
    case "nullable":
    case "default":
    case "prefault":
    case "readonly":
    case "catch":
    case "nonoptional":
      return unwrapped(def.innerType);
    case "pipe":
      return unwrapped(def.in);
    case "lazy":
      return unwrapped(def.getter());
    default:
      return schema;
  }
}

function branches(schema: Schema): readonly Schema[] {
  const { def } = (schema as z.core.$ZodTypes)._zod;
  return def.type === "union" ? def.options.flatMap((option) => branches(unwrapped(option))) : [schema];
}

function stepInto(schema: Schema, step: string | number): readonly Schema[] {
  const { def } = (schema as z.core.$ZodTypes)._zod;
  if (def.type === "object") {
    const next = def.shape[step];
    return next ? [unwrapped(next)] : [];
  }
  if (def.type === "array") return [unwrapped(def.element)];
  if (def.type === "record") return [unwrapped(def.valueType)];
  if (def.type === "tuple") {
    const next = def.items[Number(step)] ?? def.rest;
    return next ? [unwrapped(next)] : [];
  }
  return [];
}

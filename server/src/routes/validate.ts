import type { FastifySchemaCompiler } from "fastify";
import type { z } from "zod";
import { Refusal } from "../safeguard/index.ts";

/** Checks a part of a request against its schema; what is wrong is told with its place. */
export const validatorCompiler: FastifySchemaCompiler<z.ZodType> =
  ({ schema, httpPart }) =>
  (data) => {
    const read = schema.safeParse(data);
    if (read.success) return { value: read.data };
    const faults = read.error.issues.map(({ path, message }) => ({ at: [httpPart ?? "", ...path.map(step)], message }));
    return {
      error: new Refusal(400, "request/invalid", "The request does not have the form that it must have", { faults }),
    };
  };

function step(one: PropertyKey): string | number {
  return typeof one === "symbol" ? String(one) : one;
}

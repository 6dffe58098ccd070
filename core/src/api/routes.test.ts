import { describe, expect, test } from "vitest";
import { z } from "zod";
import { decisionInput, exchangeInput, ROUTES, type Route } from "./index.ts";

const ROUTE_LIST: readonly (readonly [string, Route])[] = Object.entries(ROUTES);

describe("routes", () => {
  test("no two share a method and a path", () => {
    expect(new Set(ROUTE_LIST.map(([, { method, path }]) => `${method} ${path}`)).size).toBe(ROUTE_LIST.length);
  });

  test("only the exchange of a link takes anybody's word", () => {
    expect(ROUTE_LIST.filter(([, { who }]) => who === "anyone").map(([name]) => name)).toEqual(["exchange"]);
  });

  test("a path names what its params hold", () => {
    for (const [, { path, params }] of ROUTE_LIST) {
      const named = [...path.matchAll(/:(\w+)/g)].map(([, name]) => name);
      expect(params === undefined ? [] : Object.keys((params as z.ZodObject).shape)).toEqual(named);
    }
  });

  test("every shape can be printed as JSON Schema", () => {
    for (const [, { input, output }] of ROUTE_LIST)
      for (const shape of [input, output])
        if (shape !== undefined) expect(z.toJSONSchema(shape, { unrepresentable: "any" })).toHaveProperty("$schema");
  });
});

describe("what comes in", () => {
  test("tokens are 32 bytes, base64url", () => {
    const token = "A".repeat(43);
    expect(exchangeInput.safeParse({ link: token, token }).success).toBe(true);
    expect(exchangeInput.safeParse({ link: token, token: `${token}=` }).success).toBe(false);
    expect(exchangeInput.safeParse({ link: token, token, practice: "x" }).success).toBe(false);
  });

  test("a decision says only what its kind says", () => {
    const word = { id: "decision-1", person: "tobiah" };
    expect(decisionInput.safeParse({ ...word, kind: "accepted", proposal: "proposal-1" }).success).toBe(true);
    expect(decisionInput.safeParse({ ...word, kind: "accepted" }).success).toBe(false);
    const patch = { slot: "a", change: "load", load: { value: 14, unit: "kg" } };
    expect(decisionInput.safeParse({ ...word, kind: "pinned", patch }).success).toBe(true);
    expect(decisionInput.safeParse({ ...word, kind: "pinned", patch: { ...patch, until: "2027-01-01" } }).success).toBe(
      false,
    );
    expect(
      decisionInput.safeParse({ ...word, kind: "pinned", patch: { slot: "a", change: "pause", until: "2027-02-30" } })
        .success,
    ).toBe(false);
  });
});

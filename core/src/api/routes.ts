import type { z } from "zod";
import {
  bundleOutput,
  changedOutput,
  decisionInput,
  decisionOutput,
  decisionsInput,
  decisionsOutput,
  eventsInput,
  eventsOutput,
  eventsQuery,
  eventsSince,
  exchangeInput,
  exchangeOutput,
  linkOutput,
  morningOutput,
  peopleOutput,
  personOutput,
  personParams,
  ruleInput,
  ruleOutput,
  rulesOutput,
} from "./messages.ts";

/** One way to ask the server. */
export interface Route {
  readonly method: "GET" | "POST";
  /** Under API_ROOT; `:id` stands for a value of `params`. */
  readonly path: string;
  /** Whose word it takes: nobody's, that of a person's device, the coach's, either of the two. */
  readonly who: "anyone" | "person" | "coach" | "either";
  /** Of the path, where it has any. */
  readonly params?: z.ZodType;
  /** Of the address, where it has any. */
  readonly query?: z.ZodType;
  /** The body; without it there is none. */
  readonly input?: z.ZodType;
  readonly output: z.ZodType;
  /** Server-sent events of this name, each with one output. */
  readonly event?: string;
}

export const API_ROOT = "/api/v1";

/** Every route of the contract. */
export const ROUTES = {
  exchange: {
    method: "POST",
    path: "/links/exchange",
    who: "anyone",
    input: exchangeInput,
    output: exchangeOutput,
  },
  bundle: { method: "GET", path: "/bundle", who: "person", output: bundleOutput },
  sendEvents: { method: "POST", path: "/events", who: "person", input: eventsInput, output: eventsOutput },
  readEvents: { method: "GET", path: "/events", who: "person", query: eventsQuery, output: eventsSince },
  morning: { method: "GET", path: "/morning", who: "coach", output: morningOutput },
  decide: { method: "POST", path: "/decisions", who: "coach", input: decisionInput, output: decisionOutput },
  decideMany: {
    method: "POST",
    path: "/decisions/many",
    who: "coach",
    input: decisionsInput,
    output: decisionsOutput,
  },
  rules: { method: "GET", path: "/rules", who: "coach", output: rulesOutput },
  setRule: { method: "POST", path: "/rules", who: "coach", input: ruleInput, output: ruleOutput },
  people: { method: "GET", path: "/people", who: "coach", output: peopleOutput },
  person: { method: "GET", path: "/people/:id", who: "coach", params: personParams, output: personOutput },
  link: { method: "POST", path: "/people/:id/links", who: "coach", params: personParams, output: linkOutput },
  stream: { method: "GET", path: "/stream", who: "either", output: changedOutput, event: "changed" },
} as const satisfies Readonly<Record<string, Route>>;
export type RouteName = keyof typeof ROUTES;

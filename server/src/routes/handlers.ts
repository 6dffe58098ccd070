import type { ROUTES, RouteName } from "@stave/core/api";
import type { FastifyReply, FastifyRequest } from "fastify";
import type { z } from "zod";
import type { Changes, Practice } from "../practice/index.ts";
import type { Holder, Store } from "../store/index.ts";

/** What the routes are given. */
export interface Serving {
  readonly store: Store;
  readonly changes: Changes;
  readonly practice: (id: string) => Practice;
  /** Epoch milliseconds. */
  readonly clock: () => number;
  /** Today where the program runs, YYYY-MM-DD. */
  readonly today: () => string;
}

type Said<Schema> = Schema extends z.ZodType<infer Value> ? Value : undefined;
type RouteOf<Name extends RouteName> = (typeof ROUTES)[Name];
type Member<Name extends RouteName, Key extends string> =
  RouteOf<Name> extends { readonly [K in Key]: infer Schema } ? Said<Schema> : undefined;

/** By whose word a route answers: a person's device, the practice's coach, either, or anyone. */
export type Caller<Name extends RouteName> = {
  readonly anyone: undefined;
  readonly person: Holder;
  readonly coach: { readonly practice: string };
  readonly either: { readonly practice: string; readonly person?: string };
}[RouteOf<Name>["who"]];

export interface Ask<Name extends RouteName> {
  readonly caller: Caller<Name>;
  readonly params: Member<Name, "params">;
  readonly query: Member<Name, "query">;
  readonly input: Member<Name, "input">;
  readonly request: FastifyRequest;
  readonly reply: FastifyReply;
}

/** Answers a route. One that has answered by itself gives the reply back. */
export type Handler<Name extends RouteName> = (ask: Ask<Name>) => Promise<Member<Name, "output"> | FastifyReply>;
export type Handlers = { readonly [Name in RouteName]: Handler<Name> };

import swagger from "@fastify/swagger";
import { API_ROOT, ROUTES, type Route, type RouteName } from "@stave/core/api";
import fastify, { type FastifyInstance, type FastifyRequest } from "fastify";
import { jsonSchemaTransform, serializerCompiler } from "fastify-type-provider-zod";
import { z } from "zod";
import {
  checkOwnPage,
  checkPlace,
  deviceIn,
  isFromHere,
  Limits,
  PROBLEM_TYPE,
  problemPiece,
  Refusal,
  readJson,
  SECURITY_HEADERS,
  sessionIn,
} from "../safeguard/index.ts";
import { answerFault, refuseRaw } from "./answer-fault.ts";
import { bundle } from "./bundle.ts";
import { decisions } from "./decisions.ts";
import { events } from "./events.ts";
import type { Handler, Handlers, Serving } from "./handlers.ts";
import { links } from "./links.ts";
import { morning } from "./morning.ts";
import { pages } from "./pages.ts";
import { people } from "./people.ts";
import { rules } from "./rules.ts";
import { Streams, stream } from "./stream.ts";
import { validatorCompiler } from "./validate.ts";

/** A hundred events of the largest kind that a phone sends. */
const MOST_BODY_BYTES = 256 * 1024;
const MOST_HEADER_BYTES = 8 * 1024;
const MOST_CONNECTIONS = 1000;
/** A request that has not arrived whole by then is let go. */
const MOST_ARRIVAL_MS = 30_000;

export interface AppOptions {
  /** Names by which the server may be asked. */
  readonly names: ReadonlySet<string>;
  /** Folder of the built pages. */
  readonly pages: string;
  /** The practice whose owner sits at this machine. */
  readonly practice: string;
  /** Told of faults of our own; never of tokens, bodies or query strings. */
  readonly onFault: (line: string) => void;
}

/** Who a request comes from, once it is known. */
interface Known {
  readonly practice: string;
  readonly person?: string;
}

/** The server, ready to listen. */
export async function makeApp(serving: Serving, options: AppOptions): Promise<FastifyInstance> {
  const app = fastify({
    logger: false,
    bodyLimit: MOST_BODY_BYTES,
    requestTimeout: MOST_ARRIVAL_MS,
    http: { maxHeaderSize: MOST_HEADER_BYTES },
    routerOptions: { maxParamLength: 1000 },
    clientErrorHandler: refuseRaw,
    frameworkErrors: (error, request, reply) => {
      void reply.headers(SECURITY_HEADERS);
      answerFault(error, request, reply, options.onFault);
    },
  });
  app.server.maxConnections = MOST_CONNECTIONS;
  app.setValidatorCompiler(validatorCompiler);
  app.setSerializerCompiler(serializerCompiler);
  app.removeAllContentTypeParsers();
  app.addContentTypeParser("application/json", { parseAs: "buffer" }, async (_: FastifyRequest, body: Buffer) =>
    readJson(body),
  );
  app.setErrorHandler((error, request, reply) => answerFault(error, request, reply, options.onFault));
  app.setNotFoundHandler(() => {
    throw new Refusal(404, "route/unknown", "There is nothing at this address");
  });

  const byAddress = new Limits({ burst: 2000, aMinute: 12_000 });
  app.addHook("onRequest", async (request, reply) => {
    const isApi = request.url.startsWith("/api/");
    reply.headers(SECURITY_HEADERS);
    if (isApi) reply.header("cache-control", "no-store");
    byAddress.take(request.ip, serving.clock());
    checkPlace({ method: request.method, headers: request.headers, isApi }, options.names, request.socket.localPort!);
  });

  await app.register(swagger, {
    openapi: {
      openapi: "3.1.0",
      info: { title: "Stave", version: "1", description: "What the pages of Stave ask its server." },
      components: {
        securitySchemes: {
          device: { type: "http", scheme: "bearer", description: "The token of a person's device" },
          owner: { type: "apiKey", in: "cookie", name: "stave-PORT", description: "The session of the coach's page" },
        },
      },
    },
    transform: jsonSchemaTransform,
  });

  const streams = new Streams();
  app.addHook("preClose", async () => streams.end());
  const handlers: Handlers = {
    ...links(serving),
    ...bundle(serving),
    ...events(serving),
    ...morning(serving),
    ...decisions(serving),
    ...rules(serving),
    ...people(serving),
    ...stream(serving, streams),
  };
  const callers = new WeakMap<FastifyRequest, Known>();
  for (const name of Object.keys(ROUTES) as RouteName[]) addRoute(app, name, handlers[name] as Handler<RouteName>);
  app.get(
    `${API_ROOT}/openapi.json`,
    { schema: { operationId: "openapi", response: { 200: z.record(z.string(), z.unknown()), ...PROBLEMS } } },
    async () => app.swagger(),
  );
  pages(app, serving, options.pages, options.practice);
  return app;

  function addRoute(to: FastifyInstance, name: RouteName, handler: Handler<RouteName>): void {
    const { method, path, who, params, query, input, output, event }: Route = ROUTES[name];
    const limits = new Limits({ burst: 300, aMinute: 1200 });
    to.route({
      method,
      url: API_ROOT + path,
      exposeHeadRoute: event === undefined,
      schema: {
        operationId: name,
        security: securityOf(who),
        ...(params === undefined ? {} : { params }),
        ...(query === undefined ? {} : { querystring: query }),
        ...(input === undefined ? {} : { body: input }),
        response: {
          200: event === undefined ? output : { content: { "text/event-stream": { schema: z.string() } } },
          ...(name === "bundle" ? { 304: z.undefined().describe("Nothing changed") } : {}),
          ...PROBLEMS,
        },
      },
      onRequest: async (request) => {
        const caller = await callerOf(request, who);
        if (caller === undefined) return;
        limits.take(`${caller.practice}/${caller.person ?? ""}`, serving.clock());
        callers.set(request, caller);
      },
      handler: async (request, reply) => {
        const { params: said, query: asked, body } = request;
        const ask = { caller: callers.get(request), params: said, query: asked, input: body, request, reply };
        return await handler(ask as Parameters<typeof handler>[0]);
      },
    });
  }

  /** @throws Refusal unless the request carries the word that the route takes */
  async function callerOf(request: FastifyRequest, who: Route["who"]): Promise<Known | undefined> {
    if (who === "anyone") return undefined;
    const { headers, socket } = request;
    const device = who === "coach" ? undefined : await deviceIn(serving.store, headers.authorization);
    if (device !== undefined) return device;
    if (who !== "person" && isFromHere(request.ip, headers)) {
      const practice = await sessionIn(serving.store, headers.cookie, socket.localPort!, serving.clock());
      if (practice !== undefined) {
        checkOwnPage({ method: request.method, headers, isApi: true });
        return { practice };
      }
    }
    throw new Refusal(
      401,
      "sign-in/missing",
      who === "coach" ? "Open the coach's page on the machine that runs Stave" : "Open the link again",
      {
        headers: { "www-authenticate": who === "coach" ? 'Cookie realm="Stave"' : 'Bearer realm="Stave"' },
      },
    );
  }
}

const PROBLEMS = {
  "4xx": { description: "Refused", content: { [PROBLEM_TYPE]: { schema: problemPiece } } },
  "5xx": { description: "A fault in Stave", content: { [PROBLEM_TYPE]: { schema: problemPiece } } },
};

function securityOf(who: Route["who"]): Record<string, string[]>[] {
  return { anyone: [], person: [{ device: [] }], coach: [{ owner: [] }], either: [{ owner: [] }, { device: [] }] }[who];
}

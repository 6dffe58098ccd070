import type { FastifyInstance } from "fastify";
import { Changes, Practice } from "../practice/index.ts";
import { ownNames } from "../safeguard/index.ts";
import type { Store } from "../store/index.ts";
import { makeApp } from "./app.ts";

export { newLink } from "./links.ts";

export interface ServeOptions {
  readonly store: Store;
  /** The practice whose owner sits at this machine. */
  readonly practice: string;
  readonly host: string;
  /** 0: any that is free. */
  readonly port: number;
  /** Folder of the built pages. */
  readonly pages: string;
  readonly clock: () => number;
  /** Today where the program runs, YYYY-MM-DD. */
  readonly today: () => string;
  readonly onFault: (line: string) => void;
}

export interface Running {
  readonly port: number;
  /** Ends streams, lets requests finish, and closes; the store stays open. */
  stop(): Promise<void>;
}

/** Serves the API and the pages until it is stopped. */
export async function serveApi({ store, host, port, clock, today, ...options }: ServeOptions): Promise<Running> {
  const changes = new Changes();
  const practices = new Map<string, Practice>();
  const practice = (id: string) => {
    const known = practices.get(id) ?? new Practice(store, id, changes);
    practices.set(id, known);
    return known;
  };
  const app: FastifyInstance = await makeApp(
    { store, changes, practice, clock, today },
    { ...options, names: ownNames(host) },
  );
  await app.listen({ host, port });
  const address = app.server.address();
  return {
    port: typeof address === "object" && address !== null ? address.port : port,
    stop: () => app.close(),
  };
}

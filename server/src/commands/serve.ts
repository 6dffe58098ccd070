import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { LOCAL_PRACTICE } from "../local-practice.ts";
import { newLink, serveApi } from "../routes/index.ts";
import type { Store } from "../store/index.ts";
import { type Exit, failed, give, type Io } from "./answer.ts";
import { openData } from "./data.ts";
import { type Machine, todayAt } from "./machine.ts";

export interface ServeOptions {
  readonly data: string;
  readonly port: number;
  readonly host: string;
}

/** The built pages stand beside the built program. */
function builtPages(): string {
  return join(dirname(fileURLToPath(import.meta.url)), "pages");
}

/** Serves a data folder until the program is asked to end. */
export async function serve(options: ServeOptions, io: Io, machine: Machine): Promise<Exit> {
  const data = await openData(options.data, machine);
  if ("problem" in data) return give(failed("serve", [data.problem]), false, io);
  return await serveStore(data.store, options, io, machine);
}

/**
 * Serves a store until the program is asked to end, and closes it.
 *
 * @param guests people for whom a link for their phone is printed
 */
export async function serveStore(
  store: Store,
  { host, port }: Pick<ServeOptions, "host" | "port">,
  io: Io,
  { clock, asked }: Machine,
  guests: readonly { readonly id: string; readonly name: string }[] = [],
): Promise<Exit> {
  const end = asked();
  try {
    const running = await serveApi({
      store,
      practice: LOCAL_PRACTICE,
      host,
      port,
      pages: builtPages(),
      clock,
      today: () => todayAt(clock()),
      onFault: (line) => io.err(`${line}\n`),
    });
    const address = `http://${host === "localhost" ? host : "127.0.0.1"}:${running.port}`;
    io.out(`The coach's page, on this machine alone: ${address}/\n`);
    for (const { id, name } of guests) {
      const { path } = await newLink(store, LOCAL_PRACTICE, id, clock());
      io.out(`The phone of ${name}, opens once: ${address}${path}\n`);
    }
    io.out("Ctrl-C ends it.\n");
    await end;
    await running.stop();
    return 0;
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code ?? "";
    const reasons: Readonly<Record<string, string>> = {
      EADDRINUSE: "serve/port-taken",
      EACCES: "serve/not-allowed",
      EADDRNOTAVAIL: "serve/no-such-address",
      ENOTFOUND: "serve/no-such-address",
    };
    const reason = reasons[code];
    if (reason === undefined) throw error;
    const problem = { code: reason, file: `${host}:${port}`, at: [], line: 0, column: 0, found: code };
    return give(failed("serve", [problem]), false, io);
  } finally {
    await store.close();
  }
}

import { type Exit, failed, give, type Io } from "./answer.ts";
import { openDemo } from "./demo-data.ts";
import { demoPeople } from "./demo-practice.ts";
import type { Machine } from "./machine.ts";
import { type ServeOptions, serveStore } from "./serve.ts";

/**
 * Serves the made-up room until the program is asked to end. What is recorded and decided stays for the day, in the
 * folder of the demo's files; tomorrow begins with records that end today.
 */
export async function serveDemo(
  { out, ...options }: Pick<ServeOptions, "host" | "port"> & { readonly out: string },
  io: Io,
  machine: Machine,
): Promise<Exit> {
  const data = await openDemo(out, io, machine);
  if ("problem" in data) return give(failed("demo", [data.problem]), false, io);
  return await serveStore(data.store, options, io, machine, await demoPeople());
}

import { join } from "node:path";
import { day } from "@stave/core/day";
import { LOCAL_PRACTICE } from "../local-practice.ts";
import { type Exit, failed, give, type Io } from "./answer.ts";
import { openData } from "./data.ts";
import { demoPeople, fillDemo } from "./demo-practice.ts";
import { type Machine, todayAt } from "./machine.ts";
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
  const today = todayAt(machine.clock());
  const folder = join(out, `room-${today}`);
  const data = await openData(folder, { database: undefined });
  if ("problem" in data) return give(failed("demo", [data.problem]), false, io);
  const { store } = data;
  if ((await store.listDocuments(LOCAL_PRACTICE, "person")).length === 0)
    await fillDemo(store, day(today), machine.clock(), io);
  return await serveStore(store, options, io, machine, await demoPeople());
}

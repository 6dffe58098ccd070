import { join } from "node:path";
import { day } from "@stave/core/day";
import { LOCAL_PRACTICE } from "../local-practice.ts";
import type { Io } from "./answer.ts";
import { openData } from "./data.ts";
import { fillDemo } from "./demo-practice.ts";
import { type Machine, todayAt } from "./machine.ts";

/** Opens the made-up room of today in a folder, filled with its ten weeks of records where it is new. */
export async function openDemo(
  folder: string,
  io: Pick<Io, "err">,
  machine: Pick<Machine, "clock">,
): ReturnType<typeof openData> {
  const today = todayAt(machine.clock());
  const data = await openData(join(folder, `room-${today}`), { database: undefined });
  if ("problem" in data) return data;
  if ((await data.store.listDocuments(LOCAL_PRACTICE, "person")).length === 0)
    await fillDemo(data.store, day(today), machine.clock(), io);
  return data;
}

#!/usr/bin/env node
import type { Io } from "./commands/answer.ts";
import { main } from "./program.ts";

/** Today by the clock and zone of this machine. */
function todayOf(now: Date): string {
  const two = (value: number) => String(value).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

const now = new Date();
const io: Io = {
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
  today: todayOf(now),
  now: now.getTime(),
};
// A pipe whose reader has gone away is no fault of ours.
process.stdout.on("error", (error: NodeJS.ErrnoException) => process.exit(error.code === "EPIPE" ? 0 : 1));
try {
  process.exitCode = await main(process.argv.slice(2), io);
} catch (error) {
  io.err(
    `This is a fault in Stave and not in your files. Please report it with these lines:\n${error instanceof Error ? error.stack : String(error)}\n`,
  );
  process.exitCode = 2;
}

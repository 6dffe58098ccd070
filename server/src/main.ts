#!/usr/bin/env node
import type { Io } from "./commands/answer.ts";
import { todayAt } from "./commands/machine.ts";
import { main } from "./program.ts";

const now = Date.now();
const io: Io = {
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
  today: todayAt(now),
  now,
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

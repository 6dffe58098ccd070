import { type ChildProcess, spawn } from "node:child_process";
import { readFileSync } from "node:fs";
import { connect, type Socket } from "node:net";

/** The built program, serving in a process of its own. */
export interface Killable {
  readonly port: number;
  readonly child: ChildProcess;
  /** Resolves with the signal that ended it. */
  readonly ended: Promise<NodeJS.Signals | null>;
}

/** @param before words of a command line that starts it, such as those of a tracer */
export async function startServer(data: string, before: readonly string[] = []): Promise<Killable> {
  const [program, ...args] = [
    ...before,
    process.execPath,
    "server/dist/stave.js",
    "serve",
    "--data",
    data,
    "--port",
    "0",
  ];
  const child = spawn(program!, args, { stdio: ["ignore", "pipe", "inherit"] });
  const ended = new Promise<NodeJS.Signals | null>((resolve) => child.once("close", (_, signal) => resolve(signal)));
  const port = await new Promise<number>((resolve, reject) => {
    let text = "";
    child.stdout.on("data", (chunk: Buffer) => {
      text += chunk.toString();
      const found = /http:\/\/127\.0\.0\.1:(\d+)\//.exec(text);
      if (found) resolve(Number(found[1]));
    });
    void ended.then(() => reject(new Error("the server did not start")));
  });
  return { port, child, ended };
}

/** What the kernel says of the server's end of a connection: bytes that arrived and were not read. Linux only. */
function unreadBytes(socket: Socket): number | undefined {
  const hex = (port: number) => `:${port.toString(16).toUpperCase().padStart(4, "0")}`;
  const line = readFileSync("/proc/net/tcp", "utf8")
    .split("\n")
    .map((each) => each.trim().split(/\s+/))
    .find(([, local, remote]) => local?.endsWith(hex(socket.remotePort!)) && remote?.endsWith(hex(socket.localPort!)));
  return line === undefined ? undefined : Number.parseInt(line[4]!.split(":")[1]!, 16);
}

function waitMs(ms: number): void {
  Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, ms);
}

/**
 * Sends a request, waits until the server has read all of it, and kills the server a little later.
 *
 * @returns what it replied before that: nothing, or a whole answer
 */
export async function killAfterReceipt(server: Killable, request: string, delayMs: number): Promise<string> {
  const socket = connect(server.port, "127.0.0.1").setNoDelay();
  let reply = "";
  socket.setEncoding("utf8").on("data", (chunk: string) => {
    reply += chunk;
  });
  const closed = new Promise<void>((resolve) => socket.once("close", () => resolve()));
  socket.on("error", () => undefined);
  await new Promise<void>((resolve) => socket.once("connect", () => resolve()));
  await new Promise<void>((resolve) => socket.write(request, () => resolve()));
  for (let turn = 0; unreadBytes(socket) !== 0; turn++) {
    if (turn > 100_000) throw new Error("the server never read the request");
    waitMs(0.05);
  }
  if (delayMs > 0) waitMs(delayMs);
  server.child.kill("SIGKILL");
  await Promise.all([closed, server.ended]);
  return reply;
}

import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { Pool } from "./pool.ts";

const folder = mkdtempSync(join(tmpdir(), "stave-pool-"));
afterAll(() => rmSync(folder, { recursive: true }));

/** A thread that answers with its number and what it was given, or does what the job says. */
const PROGRAM = join(folder, "thread.mjs");
writeFileSync(
  PROGRAM,
  `import { parentPort, threadId, workerData } from "node:worker_threads";
  let busy = 0;
  parentPort.on("message", (job) => {
    if (job === "die") process.exit(3);
    if (job === "throw") throw new Error("out of its mind");
    if (job === "full") return parentPort.postMessage({ fault: "no room", code: "ENOSPC" });
    busy++;
    setTimeout(() => {
      parentPort.postMessage({ answer: { job, threadId, workerData, busy } });
      busy--;
    }, 10);
  });`,
);
interface Answer {
  readonly job: string;
  readonly threadId: number;
  readonly workerData: unknown;
  readonly busy: number;
}

test("every job has its own answer; each thread does one at a time, and all of them work", async () => {
  const pool = new Pool<string, Answer>(PROGRAM, 3, "given");
  const jobs = Array.from({ length: 12 }, (_, at) => `job ${at}`);
  const answers = await Promise.all(jobs.map((job) => pool.run(job)));
  await pool.close();
  expect(answers.map(({ job }) => job)).toEqual(jobs);
  expect(new Set(answers.map(({ threadId }) => threadId)).size).toBe(3);
  expect(answers.every(({ busy, workerData }) => busy === 1 && workerData === "given")).toBe(true);
});

test("a job that cannot be done fails with its code, and the next one is done", async () => {
  const pool = new Pool<string, Answer>(PROGRAM, 1);
  await expect(pool.run("full")).rejects.toMatchObject({ message: "no room", code: "ENOSPC" });
  expect((await pool.run("next")).job).toBe("next");
  await pool.close();
});

test.each([
  ["die", "A thread of the pool has ended"],
  ["throw", "out of its mind"],
])("when a thread is lost (%s), its job, those that wait and those that come fail", async (way, message) => {
  const pool = new Pool<string, Answer>(PROGRAM, 1);
  const ends = await Promise.allSettled([pool.run(way), pool.run("waiting")]);
  expect(ends).toMatchObject([
    { status: "rejected", reason: { message } },
    { status: "rejected", reason: { message } },
  ]);
  await expect(pool.run("late")).rejects.toThrow(message);
  await pool.close();
});

test("a closed pool does nothing more", async () => {
  const pool = new Pool<string, Answer>(PROGRAM, 2);
  const job = pool.run("never done");
  const ended = expect(job).rejects.toThrow("The pool is closed");
  await pool.close();
  await ended;
});

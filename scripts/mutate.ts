/**
 * `npm run mutate -- FOLDER [--count 300] [--seed 1] [--from 0]`: how many small faults in a folder its own tests notice.
 * A large sample may be run in parts, each from where the one before ended.
 *
 * Mutants live in memory only: no file is changed. One child runs many of them in turn; a mutant that keeps it busy for
 * too long counts as noticed, and the child is started anew.
 */
import { fork } from "node:child_process";
import { readFileSync } from "node:fs";
import { basename, dirname, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { transform } from "esbuild";
import { BaseSequencer, createVitest, type TestSpecification } from "vitest/node";
import { besideFirst, type Mutant, mutantsOf, mutated, wilsonLower } from "./mutants.ts";
import { filesBelow } from "./tree.ts";

/** A mutant that needs this many times the first untouched run, which is the slowest, hangs. */
const PATIENCE = 4;

interface Task extends Mutant {
  readonly path: string;
}
type Outcome = "noticed" | "missed" | "hangs";

/** Seeded numbers from 0 to below 1: a 32-bit linear congruence, high bits first. */
function numbers(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

async function plainCode(text: string): Promise<string | undefined> {
  try {
    return (await transform(text, { loader: "ts", minifySyntax: true })).code;
  } catch {
    return undefined;
  }
}

/** Mutants that are programs and not the same program: what stands in a type alone changes nothing. */
async function tasksOf(folder: string, count: number, seed: number): Promise<readonly Task[]> {
  const tasks: Task[] = [];
  for (const { path, text } of filesBelow(folder)) {
    if (path.endsWith(".test.ts") || basename(path) === "index.ts") continue;
    const untouched = await plainCode(text);
    for (const mutant of mutantsOf(text)) {
      const code = await plainCode(mutated(text, mutant));
      if (code !== undefined && code !== untouched) tasks.push({ path, ...mutant });
    }
  }
  const next = numbers(seed);
  const order = tasks.map((task) => ({ task, at: next() })).sort((a, b) => a.at - b.at);
  return order.slice(0, count).map(({ task }) => task);
}

/** How long each test file took without any mutant, in milliseconds: the quick ones are asked first. */
const TOOK = new Map<string, number>();

class QuickFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return files.toSorted((a, b) => (TOOK.get(a.moduleId) ?? 0) - (TOOK.get(b.moduleId) ?? 0));
  }
}

/** The child: runs the tests of a folder against each mutant that it is sent, those beside the mutant first. */
async function serve(folder: string): Promise<void> {
  let task: Task | undefined;
  const vitest = await createVitest(
    "test",
    {
      watch: false,
      bail: 1,
      maxWorkers: 1,
      reporters: [{}],
      silent: true,
      setupFiles: ["scripts/mutate-setup.ts"],
      sequence: { sequencer: QuickFirst },
    },
    {
      plugins: [
        {
          name: "mutant",
          enforce: "pre",
          transform: (code, id) =>
            task !== undefined && id === resolve(task.path) ? mutated(readFileSync(task.path, "utf8"), task) : code,
        },
      ],
    },
  );
  const specifications = await vitest.globTestSpecifications([folder]);
  const fails = async (tests: typeof specifications) => {
    if (tests.length === 0) return false;
    const run = await vitest.runTestSpecifications(tests, false);
    // The answer also names the tests of earlier runs, as they were then.
    const now = run.testModules.filter((module) => tests.some(({ moduleId }) => moduleId === module.moduleId));
    if (task === undefined) for (const module of now) TOOK.set(module.moduleId, module.diagnostic().duration);
    return run.unhandledErrors.length > 0 || now.some((module) => !module.ok());
  };
  process.on("message", async (sent: Task | "untouched") => {
    const before = task;
    task = sent === "untouched" ? undefined : sent;
    for (const changed of [before, task]) if (changed !== undefined) vitest.invalidateFile(resolve(changed.path));
    const [beside, others] = besideFirst(specifications, ({ moduleId }) => moduleId, resolve(task?.path ?? folder));
    const noticed = (await fails(beside)) || (await fails(others));
    process.send?.(noticed ? "noticed" : "missed");
  });
  process.on("disconnect", () => process.exit());
  process.send?.("ready");
}

/** Runs tasks in children, one after the other. */
async function runAll(folder: string, tasks: readonly Task[], tell: (task: Task, outcome: Outcome) => void) {
  const start = () => {
    const child = fork(fileURLToPath(import.meta.url), ["--serve", folder], {
      stdio: ["ignore", "ignore", "ignore", "ipc"],
    });
    return child;
  };
  const answer = (child: ReturnType<typeof start>, ms: number) =>
    new Promise<string>((done) => {
      const timer = setTimeout(() => settle("hangs"), ms);
      const settle = (message: string) => {
        clearTimeout(timer);
        child.removeAllListeners();
        done(message);
      };
      child.once("message", (message) => settle(String(message)));
      child.once("exit", () => settle("hangs"));
    });
  const fresh = async () => {
    const child = start();
    if ((await answer(child, 120_000)) !== "ready") throw new Error("The test runner does not start");
    return child;
  };
  let child = await fresh();
  const holdsUntouched = async () => {
    child.send("untouched");
    if ((await answer(child, 600_000)) !== "missed") throw new Error(`The tests of ${folder} fail without any mutant`);
  };
  const before = Date.now();
  await holdsUntouched();
  const patience = PATIENCE * (Date.now() - before) + 10_000;
  for (const task of tasks) {
    child.send(task);
    const outcome = (await answer(child, patience)) as Outcome;
    tell(task, outcome);
    if (outcome !== "hangs") continue;
    child.kill("SIGKILL");
    child = await fresh();
  }
  await holdsUntouched();
  child.kill();
}

async function main(args: readonly string[]): Promise<number> {
  const folder = args.find((arg, index) => !arg.startsWith("--") && !args[index - 1]?.startsWith("--"));
  const numberAfter = (flag: string, usual: number) =>
    args.includes(flag) ? Number(args[args.indexOf(flag) + 1]) : usual;
  const count = numberAfter("--count", 300);
  const seed = numberAfter("--seed", 1);
  const from = numberAfter("--from", 0);
  if (folder === undefined || !(count > 0) || !Number.isInteger(seed) || !(from >= 0)) {
    console.error("npm run mutate -- FOLDER [--count 300] [--seed 1] [--from 0]");
    return 2;
  }
  const tasks = (await tasksOf(folder, from + count, seed)).slice(from);
  const outcomes: Outcome[] = [];
  const began = Date.now();
  await runAll(folder, tasks, ({ path, at, from, to }, outcome) => {
    outcomes.push(outcome);
    const line = readFileSync(path, "utf8").slice(0, at).split("\n").length;
    if (outcome === "missed") console.log(`missed: ${path}:${line}: ${from} > ${to === "" ? "nothing" : to}`);
    if (outcomes.length % 20 === 0) console.error(`${outcomes.length} of ${tasks.length}`);
  });
  const missed = outcomes.filter((outcome) => outcome === "missed").length;
  const noticed = outcomes.length - missed;
  const share = (value: number) => `${(100 * value).toFixed(1)} %`;
  const minutes = ((Date.now() - began) / 60_000).toFixed(1);
  console.log(
    `${folder}: ${noticed} of ${outcomes.length} mutants noticed, ${share(noticed / outcomes.length)}; at least ${share(wilsonLower(noticed, outcomes.length))} by Wilson's 95 % interval; seed ${seed}, from ${from}, ${minutes} min`,
  );
  return 0;
}

const args = process.argv.slice(2);
if (args[0] === "--serve") await serve(args[1]!);
else if (dirname(process.argv[1] ?? "").endsWith("scripts")) process.exit(await main(args));

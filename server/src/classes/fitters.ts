import { existsSync } from "node:fs";
import { dirname, join } from "node:path";
import { setImmediate } from "node:timers/promises";
import { fileURLToPath } from "node:url";
import { type FitAnswer, type FitJob, Fitter, type FitWorld } from "./fit-job.ts";
import { Pool } from "./pool.ts";

/** Who fits classes: this very thread, or several others. Jobs given together are done by one, one after another. */
export interface Fitters {
  fit(jobs: readonly FitJob[]): Promise<readonly FitAnswer[]>;
  close(): Promise<void>;
}

const here = dirname(fileURLToPath(import.meta.url));

/** The thread's program stands beside the bundle; the sources use the one that was built last. */
function program(): string {
  const beside = join(here, "fit-worker.js");
  return existsSync(beside) ? beside : join(here, "../../dist/fit-worker.js");
}

/** @param workers threads; with 1 everything is done in this one */
export function fitters(world: FitWorld, workers: number): Fitters {
  if (workers < 2) return new Here(world);
  const pool = new Pool<readonly FitJob[], readonly FitAnswer[]>(program(), workers, world);
  return { fit: (jobs) => pool.run(jobs), close: () => pool.close() };
}

/** This very thread, which lets whoever waits for news have them between two plans. */
class Here implements Fitters {
  readonly #fitter: Fitter;
  #last: Promise<unknown> = Promise.resolve();
  #closed = false;

  constructor(world: FitWorld) {
    this.#fitter = new Fitter(world);
  }

  fit(jobs: readonly FitJob[]): Promise<readonly FitAnswer[]> {
    const turn = this.#last.then(() => this.#fitAll(jobs));
    this.#last = turn.catch(() => undefined);
    return turn;
  }

  async close(): Promise<void> {
    this.#closed = true;
  }

  async #fitAll(jobs: readonly FitJob[]): Promise<readonly FitAnswer[]> {
    const answers: FitAnswer[] = [];
    for (const job of jobs) {
      await setImmediate();
      if (this.#closed) throw new Error("The fit was given up");
      answers.push(await this.#fitter.fit(job));
    }
    return answers;
  }
}

/** A thread of the fit: it takes one class after another and answers with its plan, or with what went wrong. */
import { parentPort, workerData } from "node:worker_threads";
import { type FitAnswer, type FitJob, Fitter, type FitWorld } from "./fit-job.ts";
import type { Said } from "./pool.ts";

const fitter = new Fitter(workerData as FitWorld);

async function said(jobs: readonly FitJob[]): Promise<Said<readonly FitAnswer[]>> {
  try {
    const answer: FitAnswer[] = [];
    for (const job of jobs) answer.push(await fitter.fit(job));
    return { answer };
  } catch (error) {
    const { stack, code } = error as NodeJS.ErrnoException;
    return { fault: stack ?? String(error), code };
  }
}

parentPort?.on("message", async (jobs: readonly FitJob[]) => parentPort?.postMessage(await said(jobs)));

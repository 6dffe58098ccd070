import { Worker } from "node:worker_threads";

/** What a thread says of a job: its answer, or what went wrong, with the code that the machine gave it. */
export type Said<Answer> = { readonly answer: Answer } | { readonly fault: string; readonly code?: string | undefined };

interface Waiting<Job, Answer> {
  readonly job: Job;
  readonly resolve: (answer: Answer) => void;
  readonly reject: (error: Error) => void;
}

/** Threads of one program that take jobs in the order in which they were asked for, each one at a time. */
export class Pool<Job, Answer> {
  readonly #queue: Waiting<Job, Answer>[] = [];
  readonly #idle: Worker[] = [];
  readonly #all: readonly Worker[];
  readonly #doing = new Map<Worker, Waiting<Job, Answer>>();
  #broken: Error | undefined;

  /**
   * @param program file of the thread: it answers each message with one of `Said`
   * @param size how many threads
   * @param data what every thread is given when it starts
   */
  constructor(program: string, size: number, data?: unknown) {
    this.#all = Array.from({ length: size }, () => {
      const worker = new Worker(program, { workerData: data });
      worker.on("message", (said: Said<Answer>) => this.#done(worker, said));
      worker.on("error", (error) => this.#break(error));
      worker.on("exit", () => this.#break(new Error("A thread of the pool has ended")));
      return worker;
    });
    this.#idle.push(...this.#all);
  }

  /**
   * @returns the answer of a thread
   * @throws Error with what the thread said was wrong, or when a thread has ended
   */
  run(job: Job): Promise<Answer> {
    return new Promise((resolve, reject) => {
      if (this.#broken !== undefined) return reject(this.#broken);
      this.#queue.push({ job, resolve, reject });
      this.#next();
    });
  }

  /** Ends all threads; jobs that are not done fail. */
  async close(): Promise<void> {
    this.#break(new Error("The pool is closed"));
    await Promise.all(this.#all.map((worker) => worker.terminate()));
  }

  #next(): void {
    while (this.#idle.length > 0 && this.#queue.length > 0) {
      const worker = this.#idle.shift()!;
      const waiting = this.#queue.shift()!;
      this.#doing.set(worker, waiting);
      worker.postMessage(waiting.job);
    }
  }

  #done(worker: Worker, said: Said<Answer>): void {
    const waiting = this.#doing.get(worker);
    this.#doing.delete(worker);
    this.#idle.push(worker);
    if ("fault" in said) waiting?.reject(Object.assign(new Error(said.fault), { code: said.code }));
    else waiting?.resolve(said.answer);
    this.#next();
  }

  #break(error: Error): void {
    this.#broken ??= error;
    for (const { reject } of [...this.#doing.values(), ...this.#queue.splice(0)]) reject(this.#broken);
    this.#doing.clear();
  }
}

import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Plan } from "@stave/core/model";
import type { PeopleClass } from "./class-of.ts";
import { type PlanSummary, summaryOf } from "./fit-job.ts";
import type { Fitters } from "./fitters.ts";

/** One class in the book. */
export interface Entry {
  readonly key: string;
  people: number;
  /** Absent until its plan is there. */
  summary?: PlanSummary;
  /** Its plan was there before this run. */
  found?: true;
}

/** A class whose plan is not there yet. */
interface Gathered {
  readonly entry: Entry;
  readonly mine: PeopleClass;
}

/**
 * The classes of a cohort, each fitted once and its plan kept in a folder under the name of the class. Plans that are
 * there and whole are not made again. Classes that have much in common are fitted one after another; so many are gathered
 * before they are fitted, and no more, so that any number of people can pass.
 */
export class ClassBook {
  readonly #folder: string;
  readonly #fitting: Fitters;
  readonly #most: number;
  readonly #entries = new Map<string, Entry>();
  #gathered: Gathered[] = [];
  readonly #onDone: () => void;
  #done = 0;

  /**
   * @param folder of the plans
   * @param most classes that are gathered
   * @param onDone told whenever more plans are there
   */
  constructor(folder: string, fitting: Fitters, most: number, onDone: () => void = () => undefined) {
    this.#folder = folder;
    this.#fitting = fitting;
    this.#most = most;
    this.#onDone = onDone;
  }

  get size(): number {
    return this.#entries.size;
  }

  /** Classes whose plan is there. */
  get done(): number {
    return this.#done;
  }

  /** By key, so that neither the order of the people nor that of the answers shows. */
  entries(): readonly Entry[] {
    return [...this.#entries.values()].sort((a, b) => (a.key < b.key ? -1 : 1));
  }

  /**
   * Counts one more person of a class.
   *
   * @throws whatever kept a plan from being made or written
   */
  async add(mine: PeopleClass): Promise<void> {
    const known = this.#entries.get(mine.key);
    if (known !== undefined) {
      known.people++;
      return;
    }
    const entry: Entry = { key: mine.key, people: 1 };
    this.#entries.set(mine.key, entry);
    this.#gathered.push({ entry, mine });
    if (this.#gathered.length >= this.#most) await this.settle();
  }

  /**
   * Fits all that are gathered and waits until their plans are there.
   *
   * @throws whatever kept one from being made or written
   */
  async settle(): Promise<void> {
    const groups = new Map<string, Gathered[]>();
    for (const each of this.#gathered) {
      const before = await planIn(this.#path(each.entry), each.entry.key);
      if (before !== undefined) {
        Object.assign(each.entry, { summary: summaryOf(before), found: true });
        this.#done++;
        continue;
      }
      const kin = groups.get(each.mine.kin);
      if (kin === undefined) groups.set(each.mine.kin, [each]);
      else kin.push(each);
    }
    this.#gathered = [];
    await Promise.all([...groups.values()].map((group) => this.#fit(group)));
  }

  async #fit(group: readonly Gathered[]): Promise<void> {
    const jobs = group.map(({ entry, mine: { seen, made } }) => ({
      programme: 0,
      seen,
      made,
      file: this.#path(entry),
    }));
    const answers = await this.#fitting.fit(jobs);
    for (const [at, { entry }] of group.entries()) entry.summary = answers[at]!.summary;
    this.#done += group.length;
    this.#onDone();
  }

  #path({ key }: Entry): string {
    return join(this.#folder, `${key}.json`);
  }
}

/** A plan that an earlier run wrote; whatever else stands there is no plan of this class and will be written over. */
async function planIn(file: string, key: string): Promise<Plan | undefined> {
  try {
    const plan = JSON.parse(await readFile(file, "utf8")) as Plan;
    return plan.person === key ? plan : undefined;
  } catch {
    return undefined;
  }
}

import { rename, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import type { Seen } from "@stave/core/cohort";
import type { Day } from "@stave/core/day";
import { CATALOGUE } from "@stave/core/exercises";
import { FitMemory } from "@stave/core/fit";
import { type Catalogue, canonicalJson, type Place, type Plan, type Programme } from "@stave/core/model";
import { planFor } from "@stave/core/revise";

/** What all jobs of one run have in common. */
export interface FitWorld {
  readonly programmes: readonly { readonly programme: Programme; readonly hash: string }[];
  readonly places: readonly Place[];
  readonly on: Day;
  /** What may be chosen from; the catalogue alone when left out. */
  readonly catalogue?: Catalogue;
}

/** One class of people to fit a programme to. */
export interface FitJob {
  /** Which of the programmes, 0 = first. */
  readonly programme: number;
  readonly seen: Seen;
  readonly made: Plan["made"];
  /** Where to write the plan; without it the plan itself is the answer. */
  readonly file?: string;
}

/** A plan in a few numbers. */
export interface PlanSummary {
  /** Slots that hold something in the first week of a phase, over all phases, and slots that are open. */
  readonly filled: number;
  readonly open: number;
  readonly proven: boolean;
}

/** The plan, unless it was written to a file. */
export interface FitAnswer {
  readonly plan?: Plan;
  readonly summary: PlanSummary;
}

export function summaryOf({ phases }: Plan): PlanSummary {
  const sessions = phases.flatMap(({ weeks }) => weeks[0]?.sessions ?? []);
  const filled = sessions.reduce((sum, { blocks }) => blocks.reduce((n, { slots }) => n + slots.length, sum), 0);
  const open = sessions.reduce((sum, session) => sum + session.open.length, 0);
  return { filled, open, proven: phases.every(({ score }) => score.proven) };
}

/** Phases of people that a fitter remembers: those of a class, for the next one that differs only in time. */
const REMEMBERED = 8;

/** Fits classes of one world, one after another. */
export class Fitter {
  readonly #world: FitWorld;
  readonly #memory = new FitMemory(REMEMBERED);

  constructor(world: FitWorld) {
    this.#world = world;
  }

  /** Makes the plan of a class, and writes it where that is asked: never half, since it takes its name when it is whole. */
  async fit(job: FitJob): Promise<FitAnswer> {
    const plan = this.#planOf(job);
    const summary = summaryOf(plan);
    if (job.file === undefined) return { plan, summary };
    // A part that a stopped run left behind is written over by the next one.
    const part = join(dirname(job.file), `.part-${job.seen.person.id}`);
    await writeFile(part, `${canonicalJson(plan)}\n`);
    await rename(part, job.file);
    return { summary };
  }

  #planOf({ programme: index, seen, made }: FitJob): Plan {
    const { programmes, places, on, catalogue = CATALOGUE } = this.#world;
    const { programme, hash: programmeHash } = programmes[index]!;
    const place = places.find(({ id }) => id === seen.person.place);
    if (place === undefined) throw new Error(`There is no place ${seen.person.place}`);
    const asked = { programme, programmeHash, place, others: places, catalogue, on, made };
    return planFor({ ...asked, ...seen, memory: this.#memory });
  }
}

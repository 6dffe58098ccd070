import { type Catalogue, canonicalJson, type Slot } from "../model/index.ts";
import type { FitContext, SlotChoices } from "./candidates.ts";
import type { BlockTask, FitTask, Solution, Way } from "./task.ts";

/** What was worked out for one person at one place over the days of one phase. */
export interface Remembered {
  readonly choices: Map<string, SlotChoices>;
  readonly blocks: Map<string, BlockTask>;
  /** Answers, by the name of their task. */
  readonly solutions: Map<string, Solution | undefined>;
  /** The ways of each block that is remembered, by number. */
  readonly ways: (readonly Way[])[];
}

/** Entries of one kind that are kept for a person; a phase has about 20 slots. */
const MOST_ENTRIES = 100;

/**
 * What earlier fits worked out and later ones can use: the forms of a slot, the ways of a block and the answer to a
 * task, as long as nothing that they are made from has changed. It makes a fit quicker and never another one.
 *
 * Minutes, days of training and pins of other slots are not among it, so that a fit after a decision about one slot, or for
 * somebody who only has less time, finds nearly everything.
 */
export class FitMemory {
  readonly #most: number;
  #catalogue: Catalogue | undefined;
  readonly #known = new Map<string, Remembered>();

  /** @param most how many phases of people are kept, those used last */
  constructor(most: number) {
    this.#most = most;
  }

  /** What is remembered of these people and days; empty at first. */
  of(context: FitContext): Remembered {
    if (this.#catalogue !== context.catalogue) this.#known.clear();
    this.#catalogue = context.catalogue;
    const key = whoText(context);
    const before = this.#known.get(key);
    const known = before === undefined || isFull(before) ? nothing() : before;
    // What is used goes to the end; what has not been used for longest stands first.
    this.#known.delete(key);
    this.#known.set(key, known);
    for (const oldest of this.#known.keys()) {
      if (this.#known.size <= this.#most) break;
      this.#known.delete(oldest);
    }
    return known;
  }
}

function nothing(): Remembered {
  return { choices: new Map(), blocks: new Map(), solutions: new Map(), ways: [] };
}

/** A person about whom much is decided begins anew now and then. */
function isFull({ choices, blocks, solutions }: Remembered): boolean {
  return Math.max(choices.size, blocks.size, solutions.size) > MOST_ENTRIES;
}

/** @returns a text that only tasks of the same blocks with the same time have, as long as their blocks are remembered */
export function taskText(known: Remembered, { capacity, stations, blocks, rows }: FitTask): string {
  const named = blocks.map(({ session, ways }) => {
    const number = known.ways.indexOf(ways);
    return [session, number < 0 ? known.ways.push(ways) - 1 : number];
  });
  return JSON.stringify([capacity, stations ?? null, named, rows]);
}

/** All that the forms of a slot depend on, but for the slot itself and its own pin. */
function whoText({ phase, person, place, on, to, last }: FitContext): string {
  const { id: _id, name: _name, note: _note, programme: _programme, pins: _pins, minutes: _minutes, ...who } = person;
  const { windows: _windows, cycle: _cycle, away: _away, instead: _instead, perWeek: _perWeek, ...health } = who;
  const { weeks, light } = phase;
  return canonicalJson({ health, place, on, to, weeks, light, last: last && [...last] });
}

/** @returns what is remembered under a text, worked out now where it is not; without a memory it is worked out each time */
export function remember<T>(known: Map<string, T> | undefined, textOf: () => string, work: () => T): T {
  if (known === undefined) return work();
  const text = textOf();
  const before = known.get(text);
  if (before !== undefined) return before;
  const now = work();
  known.set(text, now);
  return now;
}

/** @returns the text that stands for a slot and the coach's own form for it */
export function slotText({ person }: FitContext, slot: Slot): string {
  return canonicalJson([slot, person.pins.filter((pin) => pin.slot === slot.slot)]);
}

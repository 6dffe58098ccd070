import type { Exercise, ExerciseId } from "../model/index.ts";
import type { Listed } from "./entry.ts";

/**
 * Exercises by id, each made when it is first asked for and then kept: always the same object, always in the order of the
 * list.
 */
export class ListedExercises implements ReadonlyMap<ExerciseId, Exercise> {
  readonly #listed: ReadonlyMap<ExerciseId, Listed>;
  readonly #made = new Map<ExerciseId, Exercise>();
  #all: ReadonlyMap<ExerciseId, Exercise> | undefined;

  constructor(listed: readonly Listed[]) {
    this.#listed = new Map(listed.map((each) => [each.id, each]));
  }

  get size(): number {
    return this.#listed.size;
  }

  has(id: ExerciseId): boolean {
    return this.#listed.has(id);
  }

  get(id: ExerciseId): Exercise | undefined {
    const known = this.#made.get(id);
    if (known !== undefined) return known;
    const made = this.#listed.get(id)?.make();
    if (made !== undefined) this.#made.set(id, made);
    return made;
  }

  keys(): MapIterator<ExerciseId> {
    return this.#listed.keys();
  }

  values(): MapIterator<Exercise> {
    return this.#whole().values();
  }

  entries(): MapIterator<[ExerciseId, Exercise]> {
    return this.#whole().entries();
  }

  [Symbol.iterator](): MapIterator<[ExerciseId, Exercise]> {
    return this.entries();
  }

  forEach(each: (value: Exercise, key: ExerciseId, map: ReadonlyMap<ExerciseId, Exercise>) => void): void {
    for (const [id, exercise] of this.#whole()) each(exercise, id, this);
  }

  #whole(): ReadonlyMap<ExerciseId, Exercise> {
    this.#all ??= new Map([...this.#listed.keys()].map((id) => [id, this.get(id)!]));
    return this.#all;
  }
}

import type { Day } from "@stave/core/day";
import type { Person } from "@stave/core/model";
import type { Store } from "../store/index.ts";
import { cutFile } from "./cut-file.ts";
import { OWN_EXERCISES, printPersonFile, startIn } from "./person-file.ts";

/** What a practice is filled from: files that were read and found good. */
export interface Filling {
  /** Texts of programmes by their content hash. */
  readonly programmes: ReadonlyMap<string, string>;
  /** Text of the file of places. */
  readonly places: string;
  /** Text of the coach's own exercises; left out, those that are there stay. */
  readonly exercises?: string;
  /** Text of the roster. */
  readonly people: string;
  /** Who of the roster trains by which programme. */
  readonly training: readonly { readonly person: Person; readonly programme: string }[];
  /** First day of the plans. */
  readonly on: Day;
  /** Who is there already keeps the first day that they have. */
  readonly keepStarts: boolean;
  readonly coach: string;
  /** Whom to call when a message has not been sent. */
  readonly call: string;
}

/** Writes programmes, places and people into a store, over those of the same ids; records and plans stay as they are. */
export async function fillPractice(store: Store, practice: string, filling: Filling): Promise<void> {
  const { coach, call, training, keepStarts } = filling;
  for (const [hash, text] of filling.programmes) await store.putDocument(practice, "programme", hash, text);
  for (const [id, text] of cutFile(filling.places, "places")) await store.putDocument(practice, "place", id, text);
  if (filling.exercises !== undefined) await store.putDocument(practice, "exercises", OWN_EXERCISES, filling.exercises);
  const entries = cutFile(filling.people, "people");
  for (const { person, programme } of training) {
    const roster = entries.get(person.id);
    if (roster === undefined) throw new RangeError(`The roster has no entry of ${person.id}`);
    const there = keepStarts ? await store.getDocument(practice, "person", person.id) : undefined;
    const on = there === undefined ? filling.on : startIn(there.text);
    await store.putDocument(practice, "person", person.id, printPersonFile({ on, programme, coach, call }, roster));
  }
}

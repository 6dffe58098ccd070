import type { Day } from "@stave/core/day";
import type { Person } from "@stave/core/model";
import type { Store } from "../store/index.ts";
import { cutFile } from "./cut-file.ts";
import { printPersonFile } from "./person-file.ts";

/** What a practice is filled from: files that were read and found good. */
export interface Filling {
  /** Texts of programmes by their content hash. */
  readonly programmes: ReadonlyMap<string, string>;
  /** Text of the file of places. */
  readonly places: string;
  /** Text of the roster. */
  readonly people: string;
  /** Who of the roster trains by which programme, and from which day on. */
  readonly training: readonly { readonly person: Person; readonly programme: string; readonly on: Day }[];
  readonly coach: string;
  /** Whom to call when a message has not been sent. */
  readonly call: string;
}

/** Writes programmes, places and people into a store, over those of the same ids; records and plans stay as they are. */
export async function fillPractice(store: Store, practice: string, filling: Filling): Promise<void> {
  const { coach, call, training } = filling;
  for (const [hash, text] of filling.programmes) await store.putDocument(practice, "programme", hash, text);
  for (const [id, text] of cutFile(filling.places, "places")) await store.putDocument(practice, "place", id, text);
  const entries = cutFile(filling.people, "people");
  for (const { person, programme, on } of training) {
    const roster = entries.get(person.id);
    if (roster === undefined) throw new RangeError(`The roster has no entry of ${person.id}`);
    await store.putDocument(practice, "person", person.id, printPersonFile({ on, programme, coach, call }, roster));
  }
}

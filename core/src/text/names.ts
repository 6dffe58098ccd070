import type { Catalogue, Reason } from "../model/index.ts";
import type { Data } from "./facts.ts";

/** How ids are called on a screen or a sheet. An id that is not known is shown as it is. */
export interface Names {
  exercise(id: string): string;
  ladder(id: string): string;
  /** Titles of sessions, by key or by the id of a dated session. */
  session(key: string): string;
  slot(key: string): string;
}

/** A reason in words. `say` puts reasons into words that stand in the data of this one. */
export type Say = (data: Data, names: Names, say: (inner: Pick<Reason, "code" | "data">) => string) => string;

/**
 * Names from a catalogue; sessions and slots by what is given.
 *
 * @param titles titles of sessions and of slots, where they are known
 */
export function namesFrom(
  catalogue: Catalogue,
  titles: { readonly sessions?: ReadonlyMap<string, string>; readonly slots?: ReadonlyMap<string, string> } = {},
): Names {
  const ladders = new Map(catalogue.ladders.map(({ id, name }) => [id, name]));
  return {
    exercise: (id) => catalogue.exercises.get(id)?.name ?? id,
    ladder: (id) => ladders.get(id) ?? id,
    session: (key) => titles.sessions?.get(key) ?? key,
    slot: (key) => titles.slots?.get(key) ?? key,
  };
}

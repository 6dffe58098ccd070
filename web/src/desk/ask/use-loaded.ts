import { useCallback, useEffect, useRef, useState } from "react";
import { ask } from "./ask.ts";
import type { Fault } from "./fault.ts";
import { useChanges } from "./use-live.ts";

export interface Loaded<T> {
  /** The last answer; it stays while a newer one is fetched, and when none can be had. */
  readonly value?: T;
  /** Why the newest question has no answer. */
  readonly fault?: Fault;
  readonly again: () => void;
}

/**
 * What the server says at a place, asked again whenever something changed there.
 *
 * @param about tells whether a change of this person matters here; without it every change does
 */
export function useLoaded<T>(place: string, about: (person: string) => boolean = () => true): Loaded<T> {
  const [answer, setAnswer] = useState<{ readonly place: string; readonly value?: T; readonly fault?: Fault }>({
    place,
  });
  const asked = useRef({ busy: false, again: false, place });
  asked.current.place = place;

  const load = useCallback(async () => {
    const state = asked.current;
    // While one question is on its way, any number of further ones become one.
    if (state.busy) {
      state.again = true;
      return;
    }
    state.busy = true;
    do {
      state.again = false;
      const from = state.place;
      const got = await ask<T>(from);
      if (from !== state.place) state.again = true;
      else setAnswer((was) => (got.ok ? { place: from, value: got.value } : { ...keep(was, from), fault: got.fault }));
    } while (state.again);
    state.busy = false;
  }, []);

  // biome-ignore lint/correctness/useExhaustiveDependencies: another place is another question
  useEffect(() => void load(), [place, load]);
  useChanges((person) => {
    if (person === undefined || about(person)) void load();
  });
  const again = useCallback(() => void load(), [load]);
  const { value, fault } = keep(answer, place);
  return { again, ...(value === undefined ? {} : { value }), ...(fault === undefined ? {} : { fault }) };
}

/** What was said of another place is no answer here. */
function keep<A extends { readonly place: string }>(
  answer: A,
  place: string,
): A | { readonly place: string; readonly value?: never; readonly fault?: never } {
  return answer.place === place ? answer : { place };
}

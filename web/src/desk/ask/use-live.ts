import { createContext, useContext, useEffect, useRef, useSyncExternalStore } from "react";
import type { Live, LiveState } from "./live.ts";

export const LiveContext = createContext<Live | undefined>(undefined);

function useLive(): Live {
  const live = useContext(LiveContext);
  if (live === undefined) throw new Error("No page stands outside LiveContext");
  return live;
}

export function useLiveState(): LiveState {
  const live = useLive();
  return useSyncExternalStore(live.onState, live.state);
}

/** Calls back when a person changed, or anything may have. */
export function useChanges(heard: (person: string | undefined) => void): void {
  const live = useLive();
  const latest = useRef(heard);
  latest.current = heard;
  useEffect(() => live.onChange((person) => latest.current(person)), [live]);
}

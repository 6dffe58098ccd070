import { useEffect, useRef } from "react";
import { useLiveState } from "./ask/index.ts";
import { useSay } from "./speaker.tsx";
import { words } from "./words.ts";

/** Nothing while the server answers; else since when it does not. */
export function Connection() {
  const state = useLiveState();
  const say = useSay();
  const was = useRef(state.lost);
  const text = !state.lost
    ? ""
    : state.since === undefined
      ? words.faults.lostAtOnce
      : words.faults.lost(words.hour(state.since));
  useEffect(() => {
    if (state.lost !== was.current) say(state.lost ? text : words.faults.back);
    was.current = state.lost;
  }, [state.lost, text, say]);
  return <p className={text === "" ? "connection" : "connection lost"}>{text}</p>;
}

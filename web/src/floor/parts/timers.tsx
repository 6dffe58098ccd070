import { useEffect, useRef } from "preact/hooks";
import type { Timer } from "../session/index.ts";
import { words } from "../words.ts";
import { Button } from "./button.tsx";
import { speak, useAwake, useClock } from "./clock.ts";
import style from "./timers.module.css";

interface RunningProps {
  readonly timer: Timer;
  readonly aloud: boolean;
  readonly setAloud: (aloud: boolean) => unknown;
  /** @param seconds that have passed */
  readonly stop: (seconds: number) => unknown;
}

/** What the voice says at which second before the end. */
function spoken({ kind }: Timer): readonly (readonly [at: number, text: string])[] {
  const { ten, over, held } = words.timer.spoken;
  return kind === "rest"
    ? [
        [10, ten],
        [0, over],
      ]
    : [[0, held]];
}

/** A timer that runs: rest counts down, a hold counts up. Counted from instants, so that sleep does not stop it. */
export function Running({ timer, aloud, setAloud, stop }: RunningProps) {
  const now = useClock(true);
  useAwake(true);
  const passed = Math.max(0, (now - timer.from) / 1000);
  const left = timer.seconds - passed;
  const before = useRef(left);
  useEffect(() => {
    for (const [at, text] of spoken(timer)) {
      if (before.current > at && left <= at) {
        if (aloud) speak(text);
        if (at === 0) navigator.vibrate?.(200);
      }
    }
    before.current = left;
  }, [left, aloud, timer]);
  const over = timer.kind === "rest" && left <= 0;
  return (
    <div class={style["timer"]}>
      <span class={style["left"]} role="timer">
        {words.timer.clockOf(timer.kind === "rest" ? left : passed)}{" "}
        <small>{timer.kind === "hold" ? words.timer.holding : over ? words.timer.over : words.timer.resting}</small>
      </span>
      <Button pressed={aloud} tap={() => setAloud(!aloud)}>
        {words.timer.speak}
      </Button>
      <Button kind={timer.kind === "hold" ? "strong" : "plain"} tap={() => stop(Math.floor(passed))}>
        {words.timer.stop}
      </Button>
    </div>
  );
}

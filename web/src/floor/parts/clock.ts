import { useEffect, useState } from "preact/hooks";

/** How often a running timer looks at the clock, in milliseconds. */
const LOOK = 250;

/** @returns epoch milliseconds by this phone's clock, looked at again and again while `running` */
export function useClock(running: boolean): number {
  const [now, setNow] = useState(Date.now);
  useEffect(() => {
    if (!running) return;
    const look = () => setNow(Date.now());
    look();
    const timer = setInterval(look, LOOK);
    return () => clearInterval(timer);
  }, [running]);
  return now;
}

/** Keeps the screen on while a timer runs, where the phone lets a page do so. */
export function useAwake(running: boolean): void {
  useEffect(() => {
    if (!running || !("wakeLock" in navigator)) return;
    const lock = navigator.wakeLock.request("screen").catch(() => undefined);
    return () => void lock.then((held) => held?.release());
  }, [running]);
}

/** Says something aloud, where the phone has a voice. */
export function speak(text: string): void {
  if ("speechSynthesis" in globalThis) speechSynthesis.speak(new SpeechSynthesisUtterance(text));
}

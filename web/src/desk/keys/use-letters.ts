import { useEffect, useRef } from "react";
import { isTyping, letterOf } from "./typing.ts";

/**
 * Letters that act for the whole page, while the focus is inside it, so that words spoken to a computer elsewhere set
 * off nothing (WCAG 2.2, 2.1.4). `undo` also hears Ctrl+Z.
 */
export function useLetters(acts: Readonly<Record<string, () => void>>, undo?: () => void): void {
  const latest = useRef({ acts, undo });
  latest.current = { acts, undo };
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.defaultPrevented || event.repeat || isTyping(event.target)) return;
      if (document.querySelector("dialog[open]") !== null) return;
      const command = (event.ctrlKey || event.metaKey) && !event.altKey && !event.shiftKey && event.key === "z";
      const inPage = event.target instanceof HTMLElement && event.target.closest("main") !== null;
      const act = command ? latest.current.undo : inPage ? latest.current.acts[letterOf(event) ?? ""] : undefined;
      if (act === undefined) return;
      event.preventDefault();
      act();
    };
    document.addEventListener("keydown", onKey);
    return () => document.removeEventListener("keydown", onKey);
  }, []);
}

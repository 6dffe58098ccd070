import { useEffect } from "react";
import { isTyping } from "./typing.ts";

/** Marks what the arrows step through: each row has one control that takes the focus. */
export const ROW = "data-row";

function rows(): readonly HTMLElement[] {
  return [...document.querySelectorAll<HTMLElement>(`main [${ROW}]`)];
}

function controlOf(row: HTMLElement): HTMLElement | null {
  return row.matches("a, button") ? row : row.querySelector<HTMLElement>("[data-first]");
}

/** Puts the focus on a row of this name. @returns false when there is none */
export function focusRow(name: string): boolean {
  const row = rows().find((each) => each.getAttribute(ROW) === name);
  const control = row === undefined ? null : controlOf(row);
  control?.focus();
  return control !== null;
}

/** @returns name of the row that holds the focus */
export function rowInFocus(): string | undefined {
  return document.activeElement?.closest(`[${ROW}]`)?.getAttribute(ROW) ?? undefined;
}

/** Names of the rows in the order of the page, for who comes next. */
export function rowNames(): readonly string[] {
  return rows().map((row) => row.getAttribute(ROW)!);
}

/** Arrow down and up step from row to row, from anywhere on the page but a field or a dialog. */
export function useRows(): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const step = event.key === "ArrowDown" ? 1 : event.key === "ArrowUp" ? -1 : 0;
      if (step === 0 || event.ctrlKey || event.metaKey || event.altKey || event.defaultPrevented) return;
      if (isTyping(event.target) || document.querySelector("dialog[open]") !== null) return;
      const all = rows();
      const here = all.findIndex((row) => row.contains(document.activeElement));
      const next = all[here < 0 && step < 0 ? all.length - 1 : here + step];
      const control = next === undefined ? null : controlOf(next);
      if (control === null) return;
      event.preventDefault();
      control.focus();
      control.scrollIntoView({ block: "nearest" });
    };
    document.addEventListener("keydown", onKey);
    return () => document.removeEventListener("keydown", onKey);
  }, []);
}

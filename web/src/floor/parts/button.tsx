import type { ComponentChildren } from "preact";
import style from "./button.module.css";

interface ButtonProps {
  /** strong: the one expected; open: may stay untouched; warning: pain and stops; quiet: beside the way. */
  readonly kind?: "plain" | "strong" | "warning" | "open" | "quiet";
  readonly wide?: boolean;
  readonly pressed?: boolean;
  readonly disabled?: boolean;
  readonly label?: string;
  readonly tap: () => unknown;
  readonly children: ComponentChildren;
}

/** A control as large as a thumb. */
export function Button({ kind = "plain", wide, pressed, disabled, label, tap, children }: ButtonProps) {
  const names = [style["button"], kind === "plain" ? "" : style[kind], wide === true ? style["wide"] : ""];
  return (
    <button
      type="button"
      class={names.join(" ")}
      aria-pressed={pressed}
      aria-label={label}
      disabled={disabled ?? false}
      onClick={() => void tap()}
    >
      {children}
    </button>
  );
}

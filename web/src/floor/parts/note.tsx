import type { ComponentChildren } from "preact";
import style from "./note.module.css";

/** A note with a rule at its left; thick and in the correction colour only for pain, limits and stops. */
export function Note({
  stop,
  role,
  children,
}: {
  stop?: boolean;
  role?: "alert" | "status";
  children: ComponentChildren;
}) {
  return (
    <div class={`${style["note"]} ${stop === true ? style["stop"] : ""}`} role={role}>
      {children}
    </div>
  );
}

import type { ComponentChildren } from "preact";
import style from "./page.module.css";

/** What ends a page, in reach of the thumb. `beside` stands above it and keeps its room, so that nothing moves. */
export function Foot({ beside, children }: { beside?: ComponentChildren; children: ComponentChildren }) {
  return (
    <div class={style["foot"]}>
      {beside === undefined ? null : <div class={style["beside"]}>{beside}</div>}
      <div class={style["ends"]}>{children}</div>
    </div>
  );
}

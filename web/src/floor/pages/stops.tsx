import type { Bundle } from "@stave/core/model";
import { words } from "../words.ts";
import { reasonOf } from "./names.ts";
import style from "./page.module.css";

/** When to stop at once: on every page of a session. */
export function Stops({ bundle, open }: { bundle: Bundle; open?: boolean }) {
  if (bundle.stops.length === 0) return null;
  return (
    <details class={style["stops"]} open={open === true}>
      <summary>{words.course.stopNow}</summary>
      <ul>
        {bundle.stops.map((stop) => {
          const says = reasonOf(bundle, stop);
          return <li key={says}>{says}</li>;
        })}
      </ul>
      <p>{bundle.call}</p>
    </details>
  );
}

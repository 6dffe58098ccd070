import type { Reason } from "@stave/core/model";
import { type Names, sayReason } from "@stave/core/text";
import { words } from "../words.ts";
import style from "./watched.module.css";

interface Props {
  readonly notes: readonly Reason[];
  readonly figures: readonly Reason[];
  readonly names: Names;
}

/** What calls for a look, and the figures beside it, which open when they are asked for. */
export function Watched({ notes, figures, names }: Props) {
  const list = (reasons: readonly Reason[]) =>
    reasons.map((reason) => {
      const said = sayReason(reason, names);
      return <li key={said}>{said}</li>;
    });
  return (
    <>
      {notes.length > 0 && <ul className={style["notes"]}>{list(notes)}</ul>}
      {figures.length > 0 && (
        <details className={style["figures"]}>
          <summary>{words.morning.figures}</summary>
          <ul>{list(figures)}</ul>
        </details>
      )}
    </>
  );
}

import { words } from "../words.ts";
import style from "./morning.module.css";

interface Props {
  readonly count: number;
  readonly take: () => void;
  readonly none: () => void;
}

/** How many decisions are marked, and taking them all at once. */
export function MarkedBar({ count, take, none }: Props) {
  return (
    <div className={style["marked"]}>
      <p>{words.morning.marked(count)}</p>
      <button type="button" className="first" onClick={take}>
        {words.morning.takeMarked(count)}
      </button>
      <button type="button" onClick={none}>
        {words.morning.unmark}
      </button>
    </div>
  );
}

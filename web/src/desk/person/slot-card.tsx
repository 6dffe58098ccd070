import type { PersonOutput } from "@stave/core/api";
import type { PlanSlot, Reason } from "@stave/core/model";
import type { Names } from "@stave/core/text";
import type { CSSProperties } from "react";
import { ROW } from "../keys/index.ts";
import { sayReasons } from "../names.ts";
import { Strip } from "../strip/index.ts";
import { words } from "../words.ts";
import { sayAsked } from "./asked.ts";
import style from "./person.module.css";
import type { PlacedSlot } from "./place-week.ts";

export type SlotRecord = PersonOutput["slots"][number];

interface Props {
  readonly placed: PlacedSlot;
  readonly column: number;
  /** Session and slot, as the arrows know it. */
  readonly name: string;
  readonly units: "kg" | "lb";
  readonly names: Names;
  readonly record: SlotRecord | undefined;
  readonly pinned: boolean;
  readonly open: () => void;
}

const NOTHING: SlotRecord["past"] = [];

/** Where a cell stands in the grid of lanes, for the style sheet. */
export function cell(column: number, row: number, rows: number): CSSProperties {
  return { "--column": column + 2, "--row": row + 3, "--rows": rows } as CSSProperties;
}

/** True for a movement that waits: it stands in the plan, and no phone asks for it. */
export function isPaused({ why }: Pick<PlanSlot, "why">): boolean {
  return why.some(({ code }) => code === "plan/paused");
}

/**
 * Why a slot is as it is, the coach's own word first. That it is the first choice goes without saying in a week; the
 * dialog says it.
 */
function whyShown({ find, why }: PlanSlot): readonly Reason[] {
  const own = ({ code }: Reason) => code.startsWith("plan/");
  const said = why.filter(({ code }) => code !== "fit/first-choice");
  const all = [...said.filter(own), ...said.filter((reason) => !own(reason))];
  return find === undefined ? all : [...all, find.because];
}

/** One slot of the week: what is asked, why, and how it went the last time. */
export function SlotCard({ placed, column, name, units, names, record, pinned, open }: Props) {
  const { slot, order, inTurn, row, rows } = placed;
  const past = (record?.past ?? NOTHING).slice(-1);
  const next = record?.next ?? [];
  const paused = isPaused(slot);
  const title = names.exercise(slot.exercise);
  return (
    <li
      className={[style["cell"], style["slot"], inTurn ? style["inTurn"] : ""].join(" ")}
      style={cell(column, row, rows)}
    >
      <span className={style["order"]} title={inTurn ? words.person.pair : undefined}>
        <span className="unseen">{words.person.order(order)}</span>
        <span aria-hidden="true">{order}</span>
      </span>
      {past.length + next.length > 0 && (
        <Strip past={past} next={next} width={90} height={34} className={style["slotStrip"]} />
      )}
      <div className={style["asked"]}>
        <button
          type="button"
          className={style["open"]}
          aria-label={words.person.openSlot(title)}
          {...{ [ROW]: name, "data-column": column, "data-line": row }}
          onClick={open}
        >
          {title}
        </button>
        <p>
          {sayAsked(slot, units)} {paused && <span className={style["tag"]}>{words.person.paused}</span>}
          {pinned && !paused && <span className={style["tag"]}>{words.person.pinned}</span>}
        </p>
      </div>
      <p className={`soft small ${style["why"]}`}>{sayReasons(whyShown(slot), names)}</p>
    </li>
  );
}

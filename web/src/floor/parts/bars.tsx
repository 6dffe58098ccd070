import type { Amount } from "@stave/core/model";
import { useRef } from "preact/hooks";
import { askedSpan, type Entry, mostOf, type Side } from "../session/index.ts";
import style from "./bars.module.css";

/** How far a thumb must move before it means something, in pixels. */
const MEANT = 5;
/** Room above what is asked, so that more can be said. */
const ROOM = 1.2;
/** Part of the chart under which a bar cannot hold its own number. */
const LOW = 0.42;

interface BarsProps {
  readonly amount: Amount;
  readonly sides: readonly Side[];
  readonly entry: Entry;
  readonly set: (side: Side, value: number) => void;
}

interface Drag {
  readonly side: Side;
  readonly y: number;
  readonly from: number;
  moved: boolean;
  last: number;
}

/**
 * The set as a stroke that the thumb sets: up is more. Touching it says nothing; only a move does, from where the
 * stroke stands. The fields below say the same for keys and readers of the screen, so this is hidden from them.
 */
export function Bars({ amount, sides, entry, set }: BarsProps) {
  const chart = useRef<HTMLDivElement>(null);
  const drag = useRef<Drag | undefined>(undefined);
  const { from, to } = askedSpan(amount);
  const most = Math.max(...sides.map((side) => entry[side] ?? 0));
  // The scale grows in leaps and only while no thumb is on it.
  const wanted = Math.max(to * ROOM, to + 2, most > to * ROOM ? most * ROOM : 0, 5);
  const scale = useRef(wanted);
  if (drag.current === undefined) scale.current = wanted;
  const top = scale.current;

  const moved = (event: PointerEvent) => {
    const held = drag.current;
    if (held === undefined || chart.current === null) return;
    const up = held.y - event.clientY;
    if (!held.moved && Math.abs(up) < MEANT) return;
    held.moved = true;
    const value = Math.round(held.from + (up / chart.current.clientHeight) * top);
    const within = Math.min(mostOf(amount), Math.max(0, value));
    if (within === held.last) return;
    held.last = within;
    set(held.side, within);
  };

  return (
    <div class={style["chart"]} ref={chart} aria-hidden="true">
      {[...new Set([to, from])]
        .filter((end) => end > 0)
        .map((end) => (
          <div key={end} class={style["rule"]} style={{ bottom: `${(end / top) * 100}%` }}>
            <span>{end}</span>
          </div>
        ))}
      {sides.map((side) => {
        const said = entry[side];
        const height = Math.min(1, (said ?? to) / top);
        const names = [style["column"], said === undefined ? "" : style["said"], height < LOW ? style["low"] : ""];
        return (
          <div
            key={side}
            class={names.join(" ")}
            data-side={side}
            onPointerDown={(event) => {
              event.currentTarget.setPointerCapture(event.pointerId);
              drag.current = { side, y: event.clientY, from: said ?? to, moved: false, last: Number.NaN };
            }}
            onPointerMove={moved}
            onLostPointerCapture={() => {
              drag.current = undefined;
            }}
          >
            <div class={style["bar"]} style={{ height: `${height * 100}%` }}>
              <div class={style["cap"]}>
                <svg width="16" height="24" viewBox="0 0 16 24" aria-hidden="true">
                  <path d="M8 3l6 7H2zM8 21l6-7H2z" />
                </svg>
              </div>
              <span class={style["number"]}>{said ?? ""}</span>
            </div>
          </div>
        );
      })}
    </div>
  );
}

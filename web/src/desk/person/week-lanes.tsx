import type { PersonOutput } from "@stave/core/api";
import type { PlanSlot } from "@stave/core/model";
import type { Names } from "@stave/core/text";
import { type CSSProperties, type KeyboardEvent, useMemo } from "react";
import { words } from "../words.ts";
import { laneName } from "./asked.ts";
import style from "./person.module.css";
import { placeWeek } from "./place-week.ts";
import { SessionColumn } from "./session-column.tsx";
import { cell, type SlotRecord } from "./slot-card.tsx";
import type { Week } from "./which-week.ts";

interface Props {
  readonly shown: Week;
  readonly dates: PersonOutput["dates"];
  readonly units: "kg" | "lb";
  readonly names: Names;
  readonly records: ReadonlyMap<string, SlotRecord>;
  readonly pinned: ReadonlySet<string>;
  readonly open: (slot: PlanSlot) => void;
}

/** Arrow left and right: the slot nearest in height in the session beside. */
function stepBeside(event: KeyboardEvent): void {
  const step = event.key === "ArrowRight" ? 1 : event.key === "ArrowLeft" ? -1 : 0;
  const from = document.activeElement;
  if (step === 0 || event.altKey || event.ctrlKey || event.metaKey || !(from instanceof HTMLElement)) return;
  const column = Number(from.dataset["column"]) + step;
  const line = Number(from.dataset["line"]);
  const beside = [...event.currentTarget.querySelectorAll<HTMLElement>(`[data-column="${column}"]`)];
  const away = (each: HTMLElement) => Math.abs(Number(each.dataset["line"]) - line);
  const nearest = beside.sort((a, b) => away(a) - away(b))[0];
  if (nearest === undefined) return;
  event.preventDefault();
  nearest.focus();
}

/** A week of the plan: a lane for each movement pattern, a column for each session. */
export function WeekLanes({ shown, dates, units, names, records, pinned, open }: Props) {
  const { sessions } = shown.week;
  const placed = useMemo(() => placeWeek(sessions, laneName), [sessions]);
  const height = placed.lanes.reduce((sum, { rows }) => sum + rows, 0);
  if (sessions.length === 0) return <p className="soft">{words.person.noSession}</p>;
  const label = (text: string, row: number, rows: number) => (
    <p key={text} className={`${style["cell"]} ${style["lane"]}`} style={cell(-1, row, rows)} aria-hidden="true">
      {text}
    </p>
  );
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the buttons inside are what is worked; arrows are a way between them
    <div className={style["lanes"]} style={{ "--sessions": sessions.length } as CSSProperties} onKeyDown={stepBeside}>
      {label("", -2, 1)}
      {label(words.person.warmup, -1, 1)}
      {placed.lanes.map(({ lane, row, rows }) => label(words.person.lanes[lane], row, rows))}
      {label(words.person.conditioning, height, 1)}
      {sessions.map((session, column) => (
        <SessionColumn
          key={session.key}
          session={session}
          placed={placed.sessions[column]!}
          column={column}
          height={height}
          date={dates.find((date) => date.session === `${shown.id}/${session.key}`)}
          units={units}
          names={names}
          records={records}
          pinned={pinned}
          open={open}
        />
      ))}
    </div>
  );
}

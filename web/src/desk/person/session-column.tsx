import type { PersonOutput } from "@stave/core/api";
import type { PlanSession, PlanSlot } from "@stave/core/model";
import type { Names } from "@stave/core/text";
import { sayReasons } from "../names.ts";
import { words } from "../words.ts";
import { sayEasyWork } from "./asked.ts";
import style from "./person.module.css";
import type { PlacedWeek } from "./place-week.ts";
import { cell, SlotCard, type SlotRecord } from "./slot-card.tsx";

interface Props {
  readonly session: PlanSession;
  readonly placed: PlacedWeek["sessions"][number];
  readonly column: number;
  /** Rows of all lanes. */
  readonly height: number;
  readonly date: PersonOutput["dates"][number] | undefined;
  readonly units: "kg" | "lb";
  readonly names: Names;
  readonly records: ReadonlyMap<string, SlotRecord>;
  readonly pinned: ReadonlySet<string>;
  readonly open: (slot: PlanSlot) => void;
}

function Lines({ title, lines }: { readonly title: string; readonly lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <>
      <h4 className={style["narrowOnly"]}>{title}</h4>
      {lines.map((line) => (
        <p key={line} className="small">
          {line}
        </p>
      ))}
    </>
  );
}

/** One session of the week: a column where there is room, a list where there is none. */
export function SessionColumn({ session, placed, column, height, date, units, names, records, pinned, open }: Props) {
  const { minutes, when, warmup, conditioning } = words.person;
  const title = words.person.session(session.title);
  return (
    <section className={style["session"]} aria-label={title}>
      <div className={`${style["cell"]} ${style["sessionHead"]}`} style={cell(column, -2, 1)}>
        <h3>{title}</h3>
        <p className="soft small">
          {date !== undefined && `${when(words.shortDay(date.day), words.clock(date.from))}, `}
          {minutes(session.minutes.low, session.minutes.high)}
        </p>
      </div>
      <div className={style["cell"]} style={cell(column, -1, 1)}>
        <Lines title={warmup} lines={sayEasyWork(session.warmup, names, units)} />
      </div>
      <ol className={style["slots"]}>
        {placed.slots.map((one) => (
          <SlotCard
            key={one.slot.key}
            placed={one}
            column={column}
            name={`${session.key}/${one.slot.key}`}
            units={units}
            names={names}
            record={records.get(one.slot.key)}
            pinned={pinned.has(one.slot.key)}
            open={() => open(one.slot)}
          />
        ))}
      </ol>
      {placed.gaps.map(({ lane, row, rows }) => (
        <div
          key={lane}
          className={`${style["cell"]} ${style["gapCell"]}`}
          style={cell(column, row, rows)}
          aria-hidden="true"
        >
          <div className={style["gap"]} />
        </div>
      ))}
      <div className={style["cell"]} style={cell(column, height, 1)}>
        <Lines title={conditioning} lines={sayEasyWork(session.conditioning, names, units)} />
        {session.open.map(({ key, why }) => (
          <p key={key} className={`small ${style["leftOpen"]}`}>
            {sayReasons(why, names)}
          </p>
        ))}
      </div>
    </section>
  );
}

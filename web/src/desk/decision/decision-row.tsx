import type { Names } from "@stave/core/text";
import type { KeyboardEvent, MouseEvent } from "react";
import { sayFault } from "../ask/index.ts";
import { letterOf, ROW } from "../keys/index.ts";
import { sayReasons } from "../names.ts";
import { Strip } from "../strip/index.ts";
import { words } from "../words.ts";
import style from "./decision.module.css";
import { type Deed, isOpen } from "./deeds.ts";
import type { Case } from "./use-deeds.ts";

export interface RowActs {
  readonly take: (of: Case) => void;
  readonly other: (of: Case) => void;
  readonly refuse: (of: Case) => void;
  readonly undo: (deed: Deed) => void;
  readonly mark?: (of: Case) => void;
}

interface Props {
  readonly of: Case;
  readonly names: Names;
  readonly deed: Deed | undefined;
  readonly marked?: boolean;
  readonly acts: RowActs;
}

/** A second click of a double click, or a key held down, is no second decision. */
const once = (act: () => void) => ({
  onClick: (event: MouseEvent) => {
    if (event.detail < 2) act();
  },
  onKeyDown: (event: KeyboardEvent) => {
    if (event.repeat && event.key === "Enter") event.preventDefault();
  },
});

/** One proposal: the strokes, what is proposed and why, and the answers. Decided, it stays in place with its undo. */
export function DecisionRow({ of, names, deed, marked, acts }: Props) {
  const { item, person, title } = of;
  const open = isOpen(deed);
  const onKey = (event: KeyboardEvent) => {
    const act = { o: acts.other, r: acts.refuse, m: acts.mark }[letterOf(event) ?? ""];
    if (act === undefined || !open || event.repeat) return;
    event.preventDefault();
    act(of);
  };
  const { change } = item.proposal.patch;
  return (
    <li
      className={[style["row"], item.stop ? style["stop"] : "", open ? "" : style["settled"]].join(" ")}
      {...{ [ROW]: item.proposal.proposal }}
      onKeyDown={onKey}
    >
      <Strip past={item.past} next={item.next} width={150} height={44} className={style["strip"]} />
      <div className={style["what"]}>
        <h3>
          {item.stop && open && <span className={style["stopWord"]}>{words.decision.stop}: </span>}
          {open ? title : words.decision.settled(words.decision.done[deed!.input.kind], deed!.title)}
        </h3>
        <p className="soft">{sayReasons(item.proposal.evidence, names)}</p>
        {open && item.left.length > 0 && (
          <p className="soft small">
            {words.rules.left} {sayReasons(item.left, names)}
          </p>
        )}
        {deed?.fault !== undefined && <p className="wrong">{words.faults.notSent(sayFault(deed.fault))}</p>}
      </div>
      {open ? (
        <div className={style["acts"]}>
          {acts.mark !== undefined && (
            <label className={style["mark"]}>
              <input
                type="checkbox"
                checked={marked ?? false}
                aria-label={words.decision.mark(title, person.name)}
                onChange={() => acts.mark?.(of)}
              />
            </label>
          )}
          <button
            type="button"
            className="first"
            data-first
            aria-label={words.decision.of(words.decision.take[change], title, person.name)}
            {...once(() => acts.take(of))}
          >
            {words.decision.take[change]}
          </button>
          <button
            type="button"
            aria-label={words.decision.of(words.decision.other, title, person.name)}
            onClick={() => acts.other(of)}
          >
            {words.decision.other}
          </button>
        </div>
      ) : (
        <div className={style["acts"]}>
          {deed?.state === "sending" ? (
            <p className="soft">{words.decision.sending}</p>
          ) : (
            <button
              type="button"
              data-first
              disabled={deed?.state === "undoing"}
              aria-label={words.decision.undoOf(deed!.title, person.name)}
              {...once(() => acts.undo(deed!))}
            >
              {words.decision.undo}
            </button>
          )}
        </div>
      )}
    </li>
  );
}

import type { Morning } from "@stave/core/api";
import { Link } from "../address/index.ts";
import type { Undoable } from "../decision/index.ts";
import { words } from "../words.ts";
import style from "./morning.module.css";

interface Props {
  readonly decided: readonly (Undoable & { readonly kind: Morning["decided"][number]["kind"]; readonly by: string })[];
  readonly undo: (one: Undoable) => void;
}

/** What was decided today, latest first; everything can be taken back. */
export function Decided({ decided, undo }: Props) {
  return (
    <aside className={style["decided"]} aria-labelledby="decided-today">
      <h2 id="decided-today">{words.morning.decidedToday}</h2>
      {decided.length === 0 && <p className="soft">{words.morning.noneDecided}</p>}
      <ul>
        {decided.map((one) => (
          <li key={one.id}>
            <p>
              <Link to={{ page: "person", id: one.person.id }}>{one.person.name}</Link>{" "}
              <span className="soft">
                {words.decision.done[one.kind].toLowerCase()}
                {one.by.startsWith("rule ") && ` ${words.rules.byRule(one.by)}`}
              </span>
              <br />
              {one.title}
            </p>
            <button
              type="button"
              className="link"
              aria-label={words.decision.undoOf(one.title, one.person.name)}
              onClick={() => undo(one)}
            >
              {words.decision.undo}
            </button>
          </li>
        ))}
      </ul>
    </aside>
  );
}

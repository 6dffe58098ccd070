import type { PersonOutput } from "@stave/core/api";
import type { Names } from "@stave/core/text";
import { useState } from "react";
import type { Undoable } from "../decision/index.ts";
import { sayTitle } from "../names.ts";
import { words } from "../words.ts";
import style from "./person.module.css";

const AT_FIRST = 8;

interface Props {
  readonly person: { readonly id: string; readonly name: string };
  readonly decided: PersonOutput["decided"];
  readonly names: Names;
  readonly undo: (one: Undoable) => void;
}

/** What was decided for this person, latest first; what still stands can be undone. */
export function History({ person, decided, names, undo }: Props) {
  const [all, setAll] = useState(false);
  const latest = [...decided].sort((a, b) => b.at - a.at);
  const shown = all ? latest : latest.slice(0, AT_FIRST);
  return (
    <section className={style["history"]}>
      <h2>{words.person.history}</h2>
      {latest.length === 0 && <p className="soft">{words.person.noHistory}</p>}
      <ul>
        {shown.map(({ id, at, kind, by, title, stands }) => {
          const said = sayTitle(title, names);
          return (
            <li key={id}>
              <p>
                <span className="soft small">
                  {words.person.decidedAt(words.instant(at), words.decision.done[kind])}
                  {by.startsWith("rule ") && `, ${words.rules.byRule(by)}`}
                </span>
                <br />
                {stands || kind === "undone" ? said : <s>{said}</s>}
              </p>
              {stands && (
                <button
                  type="button"
                  className="link"
                  aria-label={words.decision.undoOf(said, person.name)}
                  onClick={() => undo({ id, person, title: said })}
                >
                  {words.decision.undo}
                </button>
              )}
            </li>
          );
        })}
      </ul>
      {shown.length < latest.length && (
        <button type="button" className="link" onClick={() => setAll(true)}>
          {words.person.showAll(latest.length)}
        </button>
      )}
    </section>
  );
}

import type { Morning } from "@stave/core/api";
import { useEffect, useMemo, useState } from "react";
import { useLoaded } from "../ask/index.ts";
import { type Case, isOpen, OtherDialog, useAnswers } from "../decision/index.ts";
import { FaultNote, Reading } from "../fault-note.tsx";
import { useLetters, useRows } from "../keys/index.ts";
import { namesWith, sayTitle } from "../names.ts";
import { words } from "../words.ts";
import { Decided } from "./decided.tsx";
import { MarkedBar } from "./marked-bar.tsx";
import style from "./morning.module.css";
import { PersonBlock } from "./person-block.tsx";
import { useMarks } from "./use-marks.ts";
import { useStillList } from "./use-still-list.ts";

const NOBODY: Morning["people"] = [];

/** Who needs a word today, in the order they come; everything is decided from here. */
export function MorningPage() {
  const { value: fresh, fault, again } = useLoaded<Morning>("morning");
  const names = useMemo(() => namesWith(namesIn(fresh)), [fresh]);
  const [pointed, setPointed] = useState(false);
  const answers = useAnswers();
  const { deeds, other } = answers;
  const kept = useMemo(() => new Set(deeds.keys()), [deeds]);
  const { shown, waits, show } = useStillList(fresh, kept, pointed || other !== undefined);
  const people = shown?.people ?? NOBODY;
  const cases = useMemo<readonly Case[]>(
    () =>
      people.flatMap(({ person, items }) =>
        items.map((item) => ({ person, item, title: sayTitle(item.title, names) })),
      ),
    [people, names],
  );
  const open = cases.filter(({ item }) => isOpen(deeds.get(item.proposal.proposal)));
  const marks = useMarks(open);
  const take = (of: Case) => {
    const many = marks.marked.includes(of) ? marks.marked : [of];
    marks.none();
    void answers.answer(many, { kind: "accepted" });
  };
  const decided = (shown?.decided ?? []).map((one) => ({ ...one, title: sayTitle(one.title, names) }));
  const undoLast = () => answers.undoLast(decided[0]);
  useEffect(() => {
    document.title = words.title(words.pages.morning);
  }, []);
  useRows();
  useLetters({ a: marks.allOrNone, u: undoLast }, undoLast);

  if (shown === undefined) return fault === undefined ? <Reading /> : <FaultNote fault={fault} again={again} />;
  const acts = { ...answers.acts, take, mark: marks.turn };
  const persons = new Set(open.map(({ person }) => person.id)).size;
  return (
    <div className={style["page"]}>
      <div>
        <div className={style["top"]}>
          <h1 tabIndex={-1}>{words.morning.title(open.length, persons)}</h1>
          <p className={style["day"]}>{words.day(shown.day)}</p>
        </div>
        <p className="soft lead">
          {words.morning.order}{" "}
          {marks.markable > 1 && (
            <button type="button" className="link" onClick={marks.allOrNone}>
              {marks.marked.length > 0 ? words.morning.unmark : words.morning.markAll(marks.markable)}
            </button>
          )}
        </p>
        {fault !== undefined && <FaultNote fault={fault} again={again} />}
        {/* Room that is always there, so that the note itself moves nothing. */}
        <p className={style["waits"]} role="status">
          {waits && (
            <>
              {words.morning.changed}{" "}
              <button type="button" className="link" onClick={show}>
                {words.morning.showChanged}
              </button>
            </>
          )}
        </p>
        <div
          onPointerEnter={(event) => setPointed(event.pointerType === "mouse")}
          onPointerLeave={() => setPointed(false)}
        >
          {people.map((block) => (
            <PersonBlock
              key={block.person.id}
              block={block}
              cases={cases.filter(({ person }) => person.id === block.person.id)}
              names={names}
              deeds={deeds}
              marks={marks.names}
              acts={acts}
            />
          ))}
        </div>
        {marks.marked.length > 0 && (
          <MarkedBar count={marks.marked.length} take={() => take(marks.marked[0]!)} none={marks.none} />
        )}
      </div>
      <Decided decided={decided} undo={(one) => void answers.undo([one])} />
      {other !== undefined && (
        <OtherDialog
          of={other}
          names={names}
          close={answers.closeOther}
          decide={(verdict) => void answers.answer([other], verdict)}
        />
      )}
    </div>
  );
}

function namesIn(morning: Morning | undefined) {
  const items = morning?.people.flatMap((person) => person.items) ?? [];
  return {
    exercises: items.map(({ exercise }) => exercise),
    slots: items.map(({ slot, exercise }) => ({ slot, exercise: exercise.id })),
  };
}

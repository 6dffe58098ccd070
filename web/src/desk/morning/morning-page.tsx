import type { Morning } from "@stave/core/api";
import { useEffect, useMemo, useState } from "react";
import { useLoaded } from "../ask/index.ts";
import { type Case, type Deed, type Deeds, isOpen, isRefused, OtherDialog, useAnswers } from "../decision/index.ts";
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
  const kept = useMemo(() => new Set([...deeds].filter(([, deed]) => !isRefused(deed)).map(([of]) => of)), [deeds]);
  const { shown, waits, show } = useStillList(fresh, kept, pointed || other !== undefined);
  const people = shown?.people ?? NOBODY;
  const cases = useMemo<readonly Case[]>(
    () =>
      people.flatMap(({ person, items }) =>
        items.map((item) => ({ person, item, title: sayTitle(item.title, names) })),
      ),
    [people, names],
  );
  const gone = goneFrom(deeds, cases);
  const open = cases.filter(({ item }) => isOpen(deeds.get(item.proposal.proposal)));
  const marks = useMarks(open);
  const takeAll = (many: readonly Case[]) => {
    marks.none();
    void answers.answer(many, { kind: "accepted" });
  };
  const take = (of: Case) => takeAll(marks.marked.includes(of) ? marks.marked : [of]);
  const decided = (shown?.decided ?? []).map((one) => ({ ...one, title: sayTitle(one.title, names) }));
  const undoLast = () => answers.undoLast(decided[0]);
  useEffect(() => {
    document.title = words.title(words.pages.morning);
  }, []);
  useRows();
  useLetters({ a: marks.allOrNone, u: undoLast }, undoLast);

  if (shown === undefined) return fault === undefined ? <Reading /> : <FaultNote fault={fault} again={again} />;
  const acts = { ...answers.acts, take, takeAll, mark: marks.turn };
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
          {gone.map((deed) => (
            <span key={deed.id} className="wrong">
              {words.morning.gone(deed.person.name, deed.title)}{" "}
            </span>
          ))}
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
          <MarkedBar count={marks.marked.length} take={() => takeAll(marks.marked)} none={marks.none} />
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

/** What was answered, was not taken, and stands no longer in the list. */
function goneFrom(deeds: Deeds, cases: readonly Case[]): readonly Deed[] {
  const listed = new Set(cases.map(({ item }) => item.proposal.proposal));
  return [...deeds].filter(([of, deed]) => isRefused(deed) && !listed.has(of)).map(([, deed]) => deed);
}

function namesIn(morning: Morning | undefined) {
  const people = morning?.people ?? NOBODY;
  const items = people.flatMap((person) => person.items);
  return {
    exercises: [...people.flatMap((person) => person.names), ...items.map(({ exercise }) => exercise)],
    slots: items.map(({ slot, exercise }) => ({ slot, exercise: exercise.id })),
  };
}

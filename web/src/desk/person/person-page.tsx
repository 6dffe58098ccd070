import type { PersonOutput } from "@stave/core/api";
import type { PlanSlot } from "@stave/core/model";
import { useEffect, useMemo, useState } from "react";
import { useLoaded } from "../ask/index.ts";
import { DecisionRow, OtherDialog, useAnswers } from "../decision/index.ts";
import { FaultNote, Reading } from "../fault-note.tsx";
import { useLetters, useRows } from "../keys/index.ts";
import { namesWith, sayReasons, sayTitle } from "../names.ts";
import { Watched } from "../watched/index.ts";
import { words } from "../words.ts";
import { History } from "./history.tsx";
import style from "./person.module.css";
import { PhoneLink } from "./phone-link.tsx";
import { RecordOf } from "./record.tsx";
import { SlotDialog } from "./slot-dialog.tsx";
import { useStillWaiting } from "./use-still-waiting.ts";
import { WeekLanes } from "./week-lanes.tsx";
import { WeekPicker } from "./week-picker.tsx";
import { weeksOf, whichWeek } from "./which-week.ts";

interface Props {
  readonly id: string;
  readonly week: string | undefined;
}

/** One person. */
export function PersonPage({ id, week }: Props) {
  const { value, fault, again } = useLoaded<PersonOutput>(
    `people/${encodeURIComponent(id)}`,
    (person) => person === id,
  );
  useEffect(() => {
    if (value !== undefined) document.title = words.title(value.person.name);
  }, [value]);
  if (value === undefined) return fault === undefined ? <Reading /> : <FaultNote fault={fault} again={again} />;
  return (
    <>
      {fault !== undefined && <FaultNote fault={fault} again={again} />}
      <Person value={value} week={week} />
    </>
  );
}

function namesIn({ names, plan }: PersonOutput) {
  const slots = plan.phases.flatMap(({ weeks }) =>
    weeks.flatMap(({ sessions }) => sessions.flatMap(({ blocks }) => blocks.flatMap((block) => block.slots))),
  );
  return namesWith({ exercises: names, slots: slots.map(({ key, exercise }) => ({ slot: key, exercise })) });
}

function Person({ value, week }: { readonly value: PersonOutput; readonly week: string | undefined }) {
  const { person, plan, dates, decided, slots } = value;
  const names = useMemo(() => namesIn(value), [value]);
  const records = useMemo(() => new Map(slots.map((record) => [record.slot, record])), [slots]);
  const standing = decided.filter(({ stands }) => stands);
  const [open, setOpen] = useState<PlanSlot | undefined>();
  const answers = useAnswers();
  const waiting = useStillWaiting(value.waiting, answers.deeds);
  const cases = waiting.map((item) => ({ person, item, title: sayTitle(item.title, names) }));
  const latest = [...standing].sort((a, b) => b.at - a.at)[0];
  const undoLast = () => answers.undoLast(latest && { id: latest.id, person, title: sayTitle(latest.title, names) });
  useRows();
  useLetters({ u: undoLast }, undoLast);

  const shown = whichWeek(weeksOf(plan), week, dates, value.day);
  return (
    <div className={style["page"]}>
      <div className={style["side"]}>
        <h1 tabIndex={-1}>{person.name}</h1>
        <p className="soft lead">{words.person.programme(person.programme, person.units)}</p>
        {plan.notes.length > 0 && <p className={style["finding"]}>{sayReasons(plan.notes, names)}</p>}
        <PhoneLink person={person.id} />
        <History person={person} decided={decided} names={names} undo={(one) => void answers.undo([one])} />
      </div>
      <div className={style["main"]}>
        <section>
          <h2>{cases.length === 0 ? words.person.nothingWaits : words.person.toDecide(value.waiting.length)}</h2>
          <ul className={style["waiting"]}>
            {cases.map((of) => (
              <DecisionRow
                key={of.item.proposal.proposal}
                of={of}
                names={names}
                deed={answers.deeds.get(of.item.proposal.proposal)}
                acts={answers.acts}
              />
            ))}
          </ul>
          <Watched notes={value.notes} figures={value.figures} names={names} />
        </section>
        {shown === undefined ? (
          <p className="soft">{words.person.noWeek}</p>
        ) : (
          <section>
            <h2>{words.person.planTitle(shown.phase.title, shown.week.week)}</h2>
            <WeekPicker person={person.id} plan={plan} shown={shown} />
            <WeekLanes
              shown={shown}
              dates={dates}
              units={person.units}
              names={names}
              records={records}
              pinned={
                new Set(
                  standing
                    .filter(({ kind }) => kind !== "accepted" && kind !== "refused")
                    .flatMap((one) => one.slot ?? []),
                )
              }
              open={setOpen}
            />
          </section>
        )}
        <RecordOf records={slots} names={names} />
      </div>
      {open !== undefined && (
        <SlotDialog
          person={person.id}
          slot={open}
          units={person.units}
          names={names}
          own={value.own}
          record={records.get(open.key)}
          pins={standing.filter((one) => one.slot === open.key)}
          pin={(pins) => answers.pin(person, pins)}
          undo={(one) => void answers.undo([{ ...one, person }])}
          close={() => setOpen(undefined)}
        />
      )}
      {answers.other !== undefined && (
        <OtherDialog
          of={answers.other}
          names={names}
          close={answers.closeOther}
          decide={(verdict) => void answers.answer([answers.other!], verdict)}
        />
      )}
    </div>
  );
}

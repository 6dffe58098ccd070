import type { PersonOutput } from "@stave/core/api";
import type { Patch, PlanSlot } from "@stave/core/model";
import { type Names, sayReason } from "@stave/core/text";
import { type FormEvent, useState } from "react";
import { type Fault, sayFault } from "../ask/index.ts";
import { keepDraft, readDraft, sayPatch, TypedField, type Undoable } from "../decision/index.ts";
import { Dialog } from "../dialog/index.ts";
import { sayTitle } from "../names.ts";
import { Strip, saySets } from "../strip/index.ts";
import { words } from "../words.ts";
import { sayAsked } from "./asked.ts";
import { FormField } from "./form-field.tsx";
import style from "./person.module.css";

import { draftOf, readPins, type Typed, typedOf } from "./pins.ts";
import { sayCapacity } from "./record.tsx";
import { isPaused, type SlotRecord } from "./slot-card.tsx";

const MOST_SESSIONS = 12;

interface Props {
  readonly person: string;
  /** As it stood when the dialog was opened, whatever changes behind it. */
  readonly slot: PlanSlot;
  readonly units: "kg" | "lb";
  readonly names: Names;
  readonly own: PersonOutput["own"];
  readonly record: SlotRecord | undefined;
  /** Decisions that stand for this slot. */
  readonly pins: PersonOutput["decided"];
  readonly pin: (pins: readonly { readonly patch: Patch; readonly title: string }[]) => Promise<Fault | undefined>;
  readonly undo: (one: Omit<Undoable, "person">) => void;
  readonly close: () => void;
}

/** Everything about one slot: why it is as it is, how it went, and the coach's own hand. */
export function SlotDialog({ person, slot, units, names, own, record, pins, pin, undo, close }: Props) {
  const about = `pin ${person} ${slot.key}`;
  const [typed, setTyped] = useState(() => draftOf(readDraft(about), typedOf(slot)));
  const [told, setTold] = useState("");
  const paused = isPaused(slot);
  const title = names.exercise(slot.exercise);
  const read = readPins(slot, typed);
  const past = record?.past.slice(-MOST_SESSIONS).reverse() ?? [];

  const type = (over: Partial<Typed>) => {
    const now = { ...typed, ...over };
    setTyped(now);
    keepDraft(about, JSON.stringify(now));
  };
  const send = async (patches: readonly Patch[]) => {
    const fault = await pin(patches.map((patch) => ({ patch, title: sayPatch(patch, title, names) })));
    if (fault === undefined) {
      keepDraft(about, "");
      close();
    } else setTold(words.faults.notSent(sayFault(fault)));
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!read.ok) return;
    if (read.patches.length === 0) setTold(words.slot.nothing);
    else void send(read.patches);
  };
  return (
    <Dialog title={title} close={close}>
      {record !== undefined && record.past.length > 0 && (
        <Strip past={record.past} next={[]} width={500} height={56} className={style["longStrip"]} />
      )}
      <dl className={style["facts"]}>
        <dt>{words.slot.now}</dt>
        <dd>{sayAsked(slot, units)}</dd>
        <dt>{words.slot.why}</dt>
        <dd>
          {slot.why.map((reason) => (
            <p key={`${reason.code} ${JSON.stringify(reason.data)}`}>{sayReason(reason, names)}</p>
          ))}
        </dd>
        {pins.length > 0 && <dt>{words.slot.pins}</dt>}
        {pins.map((one) => {
          const said = sayTitle(one.title, names);
          return (
            <dd key={one.id}>
              {said}{" "}
              <button
                type="button"
                className="link"
                aria-label={`${words.slot.unpin}: ${said}`}
                onClick={() => undo({ id: one.id, title: said })}
              >
                {words.slot.unpin}
              </button>
            </dd>
          );
        })}
        <dt>{words.slot.capacity}</dt>
        <dd>{sayCapacity(record ?? {}, names)}</dd>
      </dl>
      <form onSubmit={submit} className={style["pinForm"]}>
        <h3>{words.slot.pinTitle}</h3>
        <p className="soft small">{words.slot.pinHint}</p>
        <FormField
          slot={slot}
          names={names}
          own={own}
          value={typed.exercise}
          onValue={(exercise) => type({ exercise })}
        />
        <TypedField
          label={words.slot.dose}
          text={typed.dose}
          slips={read.ok ? [] : read.dose}
          onText={(dose) => type({ dose })}
        />
        <TypedField
          label={words.slot.load}
          text={typed.load}
          slips={read.ok ? [] : read.load}
          onText={(load) => type({ load })}
        />
        <p role="alert" className="wrong">
          {told}
        </p>
        <div className="actions">
          <button type="submit" className="first">
            {words.slot.pin}
          </button>
          <button type="button" onClick={() => void send([{ slot: slot.key, change: paused ? "resume" : "pause" }])}>
            {paused ? words.slot.resume : words.slot.pause}
          </button>
          <button type="button" className="plain" onClick={close}>
            {words.cancel}
          </button>
        </div>
      </form>
      {past.length > 0 && (
        <table className={style["sets"]}>
          <caption>{words.slot.record}</caption>
          <thead>
            <tr>
              <th scope="col">{words.person.table.day}</th>
              <th scope="col">{words.person.table.sets}</th>
            </tr>
          </thead>
          <tbody>
            {past.map(({ day, strokes }) => (
              <tr key={day}>
                <th scope="row">{words.shortDay(day)}</th>
                <td>{saySets(strokes)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </Dialog>
  );
}

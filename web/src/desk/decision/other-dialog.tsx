import type { Patch } from "@stave/core/model";
import { printDose } from "@stave/core/model";
import { type Names, printLoad } from "@stave/core/text";
import { type FormEvent, useId, useState } from "react";
import { Dialog } from "../dialog/index.ts";
import { sayReasons, sayTitle } from "../names.ts";
import { Strip } from "../strip/index.ts";
import { words } from "../words.ts";
import style from "./decision.module.css";
import { keepDraft, readDraft } from "./draft.ts";
import { sayPatch } from "./say-patch.ts";
import { typedAnswer, typedLevel } from "./typed-answer.ts";
import { TypedField } from "./typed-field.tsx";
import type { Case, Verdict } from "./use-deeds.ts";

interface Props {
  readonly of: Case;
  readonly names: Names;
  readonly decide: (verdict: Verdict) => void;
  readonly close: () => void;
}

/** The proposed change as a coach would type it, to be typed over. */
function asTyped(patch: Patch): string {
  if (patch.change === "load") return printLoad(patch.load);
  if (patch.change === "run-walk") return words.other.level(patch.level);
  return patch.change === "reps" ? printDose(patch.dose) : "";
}

/** Other answers to one proposal: those that were worked out, one that is typed, or none. */
export function OtherDialog({ of, names, decide, close }: Props) {
  const { item, person, title } = of;
  const about = item.proposal.proposal;
  const [text, setText] = useState(() => readDraft(about) ?? asTyped(item.proposal.patch));
  const [choice, setChoice] = useState<number | "typed" | undefined>(
    readDraft(about) === undefined ? undefined : "typed",
  );
  const [missing, setMissing] = useState(false);
  const group = useId();
  const ofWeek = item.proposal.patch.change === "light week" || item.proposal.patch.change === "full week";
  const isRun = [item.proposal, ...item.others].some(({ patch }) => patch.change === "run-walk");
  const answer = () => (isRun ? typedLevel(item.slot, text) : typedAnswer(item.slot, item.exercise.id, text));
  const read = choice === "typed" ? answer() : undefined;

  const type = (now: string) => {
    setText(now);
    setChoice("typed");
    keepDraft(about, now);
  };
  const send = (event: FormEvent) => {
    event.preventDefault();
    const other = typeof choice === "number" ? item.others[choice] : undefined;
    if (other !== undefined) {
      decide({ kind: "changed", instead: other.patch, title: sayTitle(other.title, names) });
    } else if (read?.ok === true) {
      decide({ kind: "changed", instead: read.patch, title: sayPatch(read.patch, item.exercise.name, names) });
    } else setMissing(true);
  };
  return (
    <Dialog
      title={ofWeek ? words.other.week(person.name) : words.other.title(person.name, item.exercise.name)}
      close={close}
    >
      <form onSubmit={send}>
        <div className={style["asked"]}>
          <Strip past={item.past} next={item.next} width={220} height={64} className={style["bigStrip"]} />
          <div>
            <p className="soft small">{words.decision.proposed}</p>
            <p className="strong">{title}</p>
            <p className="soft">{sayReasons(item.proposal.evidence, names)}</p>
          </div>
        </div>
        <fieldset className="choices">
          <legend>{words.other.choose}</legend>
          {item.others.map((other, index) => (
            <label key={JSON.stringify(other.patch)} className="choice">
              <input type="radio" name={group} checked={choice === index} onChange={() => setChoice(index)} />
              {sayTitle(other.title, names)}
            </label>
          ))}
          {!ofWeek && (
            <div className="choice">
              <input
                type="radio"
                name={group}
                aria-label={words.other.typed}
                checked={choice === "typed"}
                onChange={() => setChoice("typed")}
              />
              <TypedField
                label={words.other.typed}
                text={text}
                hint={isRun ? words.other.levelHint : words.other.typedHint}
                slips={read?.ok === false ? read.slips : []}
                would={read?.ok === true ? sayPatch(read.patch, item.exercise.name, names) : undefined}
                onText={type}
              />
            </div>
          )}
        </fieldset>
        <p role="alert" className="wrong">
          {missing && choice === undefined ? words.other.chooseFirst : ""}
        </p>
        <div className="actions">
          <button type="submit" className="first">
            {words.other.change}
          </button>
          <button type="button" onClick={() => decide({ kind: "refused" })} title={words.other.refuseHint}>
            {words.other.refuse}
          </button>
          <button type="button" className="plain" onClick={close}>
            {words.cancel}
          </button>
        </div>
        <p className="soft small">{words.other.refuseHint}</p>
      </form>
    </Dialog>
  );
}

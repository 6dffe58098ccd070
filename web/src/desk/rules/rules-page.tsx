import type { RuleInput, RuleOutput, RulesOutput } from "@stave/core/api";
import type { RuleTakes, StandingRule } from "@stave/core/model";
import { type FormEvent, useEffect, useId, useState } from "react";
import { type Fault, sayFault, tell, useLoaded } from "../ask/index.ts";
import { FaultNote, Reading } from "../fault-note.tsx";
import { useSay } from "../speaker.tsx";
import { words } from "../words.ts";
import style from "./rules.module.css";

/** The one rule of this page; what it takes and from when on is the coach's. */
const ID = "sure-steps";
const KINDS: readonly RuleTakes[] = ["load", "reps"];
const AT_FIRST = { takes: KINDS, leastChance: 0.9, leastSessions: 6, mostPercent: 10 };

/** What a standing rule takes, and how to end it. */
export function RulesPage() {
  const { value, fault, again } = useLoaded<RulesOutput>("rules");
  useEffect(() => {
    document.title = words.title(words.pages.rules);
  }, []);
  if (value === undefined) return fault === undefined ? <Reading /> : <FaultNote fault={fault} again={again} />;
  const rule = value.rules.find(({ id }) => id === ID);
  return (
    <>
      <h1 tabIndex={-1}>{words.pages.rules}</h1>
      <p className="lead">{words.rules.about}</p>
      <p className="lead">{words.rules.never}</p>
      {fault !== undefined && <FaultNote fault={fault} again={again} />}
      <RuleForm key={rule?.version ?? 0} rule={rule} again={again} />
    </>
  );
}

function RuleForm({ rule, again }: { readonly rule: StandingRule | undefined; readonly again: () => void }) {
  const [fault, setFault] = useState<Fault | undefined>();
  const say = useSay();
  const id = useId();
  const inForce = rule !== undefined && rule.takes.length > 0 ? rule : undefined;
  const now = inForce ?? AT_FIRST;
  const send = async (said: Omit<RuleInput, "id" | "version">) => {
    const answer = await tell<RuleOutput>("rules", {
      id: ID,
      version: (rule?.version ?? 0) + 1,
      ...said,
    } satisfies RuleInput);
    setFault(answer.ok ? undefined : answer.fault);
    if (!answer.ok) return;
    say(said.takes.length === 0 ? words.rules.saidOver : words.rules.saidSet(answer.value.version));
    again();
  };
  const onSubmit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const number = (name: string) => Number(form.get(name));
    void send({
      takes: KINDS.filter((kind) => form.has(kind)),
      leastChance: number("leastChance") / 100,
      leastSessions: number("leastSessions"),
      mostPercent: number("mostPercent"),
    });
  };
  const field = (name: "leastChance" | "leastSessions" | "mostPercent", from: number, to: number, value: number) => (
    <p>
      <label htmlFor={`${id}-${name}`}>{words.rules[name]}</label>
      <input id={`${id}-${name}`} name={name} type="number" min={from} max={to} defaultValue={value} required />
    </p>
  );
  return (
    <form className={style["form"]} onSubmit={onSubmit}>
      <p>
        {inForce === undefined
          ? words.rules.none
          : words.rules.inForce(inForce.version, inForce.by, words.instant(inForce.at))}
      </p>
      <fieldset>
        <legend>{words.rules.takes}</legend>
        {KINDS.map((kind) => (
          <label key={kind}>
            <input type="checkbox" name={kind} defaultChecked={now.takes.includes(kind)} /> {words.rules.kinds[kind]}
          </label>
        ))}
      </fieldset>
      {field("leastChance", 50, 100, Math.round(100 * now.leastChance))}
      {field("leastSessions", 3, 50, now.leastSessions)}
      {field("mostPercent", 1, 10, now.mostPercent)}
      {fault !== undefined && <p className="wrong">{words.faults.notSent(sayFault(fault))}</p>}
      <p className={style["acts"]}>
        <button type="submit" className="first">
          {words.rules.set}
        </button>
        {inForce !== undefined && (
          <button type="button" onClick={() => void send({ ...bounds(inForce), takes: [] })}>
            {words.rules.stop}
          </button>
        )}
      </p>
    </form>
  );
}

function bounds({ leastChance, leastSessions, mostPercent }: StandingRule) {
  return { leastChance, leastSessions, mostPercent };
}

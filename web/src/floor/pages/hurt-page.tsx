import { HURT_PLACES, type HurtPlace, stressesOf } from "@stave/core/model";
import { Button } from "../parts/index.ts";
import { ofStep, type Step, slotsOf, solved, swappedIn } from "../session/index.ts";
import { words } from "../words.ts";
import { Body, Foot } from "./frame.tsx";
import { nameOf } from "./names.ts";
import style from "./page.module.css";
import { type SessionRun, showAside } from "./running.ts";
import { Stops } from "./stops.tsx";

const PLACES = Object.keys(HURT_PLACES) as HurtPlace[];
const SCALE = Array.from({ length: 11 }, (_, much) => much);

/** Asks where and how much, then says it and solves the rest of the session again. */
export function HurtPage({ run, step }: { run: SessionRun; step: Extract<Step, { kind: "set" }> }) {
  const { phone, bundle, view, draft } = run;
  const { where, howMuch } = draft.hurt ?? {};
  const note = (hurt: { where?: string; howMuch?: number }) =>
    phone.touch(view.of.id, (now) => ({ ...now, hurt: { ...now.hurt, ...hurt } }));
  const tell = async () => {
    if (where === undefined || howMuch === undefined) return;
    const { said, swaps, waits } = solved(bundle, view, step.slot, "hurt", { where, howMuch });
    await phone.say(view.of.id, {
      said: [{ kind: "hurt", data: { where, howMuch }, of: ofStep(bundle, view, step) }, ...said],
      draft: ({ hurt: _hurt, ...now }) => ({
        ...swappedIn(now, view, said),
        aside: "told",
        told: { where, howMuch, swaps, waits },
      }),
    });
  };
  return (
    <>
      <Body>
        <div class={style["title"]}>
          <h1>{words.hurt.button}</h1>
          <p>{nameOf(bundle, step.of.exercise)}</p>
        </div>
        <fieldset class={style["group"]}>
          <legend>{words.hurt.title}</legend>
          <div class={style["choices"]}>
            {PLACES.map((place) => (
              <Button key={place} pressed={where === place} tap={() => note({ where: place })}>
                {words.hurt.places[place]}
              </Button>
            ))}
          </div>
        </fieldset>
        <fieldset class={style["group"]}>
          <legend>{words.hurt.howMuch}</legend>
          <div class={style["scale"]}>
            {SCALE.map((much) => (
              <Button key={much} pressed={howMuch === much} tap={() => note({ howMuch: much })}>
                {much}
              </Button>
            ))}
          </div>
          <p class={style["soft"]}>
            {words.hurt.least} · {words.hurt.most}
          </p>
        </fieldset>
      </Body>
      <Foot>
        <Button tap={() => showAside(run, undefined)}>{words.hurt.back}</Button>
        <Button kind="warning" disabled={where === undefined || howMuch === undefined} tap={tell}>
          {words.hurt.tell}
        </Button>
      </Foot>
    </>
  );
}

/** What is done about it, and whether the coach has it. */
export function ToldPage({ run }: { run: SessionRun }) {
  const { bundle, view, draft } = run;
  const { told } = draft;
  if (told === undefined) return null;
  const everything = stressesOf(told.where) === "everything";
  const name = (slot: string) => nameOf(bundle, slotsOf(view.now).find(({ key }) => key === slot)?.exercise ?? slot);
  return (
    <>
      <Body>
        <div class={style["title"]}>
          <h1>{everything ? words.hurt.stopAll : words.hurt.stop}</h1>
          <p>{words.hurt.said(words.hurt.places[told.where as HurtPlace] ?? told.where, told.howMuch)}</p>
        </div>
        {everything ? <Stops bundle={bundle} open /> : null}
        <ul class={style["list"]}>
          {told.swaps.map(({ from, to }) => (
            <li key={from}>{words.hurt.instead(nameOf(bundle, from), nameOf(bundle, to))}</li>
          ))}
          {told.waits.map((slot) => (
            <li key={slot}>{words.hurt.waits(name(slot))}</li>
          ))}
        </ul>
      </Body>
      <Foot>
        <Button kind={everything ? "strong" : "plain"} tap={() => showAside(run, "stop")}>
          {words.end.early}
        </Button>
        {everything ? null : (
          <Button kind="strong" tap={() => showAside(run, undefined)}>
            {words.course.understood}
          </Button>
        )}
      </Foot>
    </>
  );
}

import { RUN_ENDS, type RunEnd } from "@stave/core/model";
import { Button } from "../parts/index.ts";
import { ofStep, passed, type Step } from "../session/index.ts";
import { words } from "../words.ts";
import { Body, Foot } from "./frame.tsx";
import { HowTo } from "./how-to.tsx";
import { formOf, nameOf } from "./names.ts";
import style from "./page.module.css";
import type { SessionRun } from "./running.ts";

/** Warm-up and conditioning: a list to do, and one tap when it is done; of a run, what ended it. */
export function EasyPage({ run, step }: { run: SessionRun; step: Exclude<Step, { kind: "set" }> }) {
  const { phone, bundle, view } = run;
  const { warmup, conditioning } = view.now;
  const items =
    step.kind === "warm-up"
      ? warmup.map(({ exercise, dose, load }) => ({
          exercise,
          asked: words.dose(dose),
          beside: load && words.load(load),
        }))
      : conditioning.map((item) => ({
          exercise: item.exercise,
          asked: item.run === undefined ? words.dose(item.dose) : words.run.asked(item.run.level, item.dose),
          beside: words.course.effort[item.effort],
        }));
  const [first] = step.kind === "warm-up" ? [] : conditioning.flatMap((item) => item.run ?? []);
  const goOn = () => phone.touch(view.of.id, (draft) => passed(draft, view, step));
  const ended = async (end: RunEnd) => {
    if (first === undefined) return;
    const { slot, level } = first;
    await phone.say(view.of.id, {
      said: [{ kind: "ran", data: { level, end }, of: { ...ofStep(bundle, view), slot } }],
      draft: (draft) => passed(draft, view, step),
    });
  };
  return (
    <>
      <Body>
        <div class={style["title"]}>
          <h1>{step.kind === "warm-up" ? words.course.warmup : words.course.conditioning}</h1>
        </div>
        <ul class={style["list"]}>
          {items.map(({ exercise, asked, beside }) => {
            const form = formOf(bundle, exercise);
            return (
              <li key={`${exercise} ${beside}`}>
                <div>
                  <h2>{nameOf(bundle, exercise)}</h2>
                  <p class={style["soft"]}>{[asked, ...(beside ? [beside] : [])].join(" · ")}</p>
                </div>
                {form === undefined ? null : <HowTo form={form} />}
              </li>
            );
          })}
        </ul>
        {first === undefined ? null : (
          <fieldset class={style["group"]}>
            <legend>{words.run.title}</legend>
            <div class={style["choices"]}>
              {RUN_ENDS.map((end) => (
                <Button key={end} tap={() => ended(end)}>
                  {words.run.ends[end]}
                </Button>
              ))}
            </div>
            <p class={style["soft"]}>{words.run.stop}</p>
          </fieldset>
        )}
      </Body>
      <Foot>
        <Button kind={first === undefined ? "strong" : "plain"} tap={goOn}>
          {first !== undefined
            ? words.run.notDone
            : step.kind === "warm-up"
              ? words.course.readyToGo
              : words.course.finished}
        </Button>
      </Foot>
    </>
  );
}

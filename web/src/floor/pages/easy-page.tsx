import { Button } from "../parts/index.ts";
import { passed, type Step } from "../session/index.ts";
import { words } from "../words.ts";
import { Body, Foot } from "./frame.tsx";
import { HowTo } from "./how-to.tsx";
import { formOf, nameOf } from "./names.ts";
import style from "./page.module.css";
import type { SessionRun } from "./running.ts";

/** Warm-up and conditioning: a list to do, and one tap when it is done. */
export function EasyPage({ run, step }: { run: SessionRun; step: Exclude<Step, { kind: "set" }> }) {
  const { phone, bundle, view } = run;
  const { warmup, conditioning } = view.now;
  const items =
    step.kind === "warm-up"
      ? warmup.map(({ exercise, dose, load }) => ({ exercise, dose, beside: load && words.load(load) }))
      : conditioning.map(({ exercise, dose, effort }) => ({ exercise, dose, beside: words.course.effort[effort] }));
  return (
    <>
      <Body>
        <div class={style["title"]}>
          <h1>{step.kind === "warm-up" ? words.course.warmup : words.course.conditioning}</h1>
        </div>
        <ul class={style["list"]}>
          {items.map(({ exercise, dose, beside }) => {
            const form = formOf(bundle, exercise);
            return (
              <li key={`${exercise} ${beside}`}>
                <div>
                  <h2>{nameOf(bundle, exercise)}</h2>
                  <p class={style["soft"]}>{[words.dose(dose), ...(beside ? [beside] : [])].join(" · ")}</p>
                </div>
                {form === undefined ? null : <HowTo form={form} />}
              </li>
            );
          })}
        </ul>
      </Body>
      <Foot>
        <Button kind="strong" tap={() => phone.touch(view.of.id, (draft) => passed(draft, view, step))}>
          {step.kind === "warm-up" ? words.course.readyToGo : words.course.finished}
        </Button>
      </Foot>
    </>
  );
}

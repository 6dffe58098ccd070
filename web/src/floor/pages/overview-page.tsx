import { Button, Note } from "../parts/index.ts";
import { entryOf, placeKey, type SetSaid, type Step, slotsOf } from "../session/index.ts";
import { words } from "../words.ts";
import { Body, Foot } from "./frame.tsx";
import { nameOf, reasonOf } from "./names.ts";
import style from "./page.module.css";
import { goTo, type SessionRun, showAside } from "./running.ts";
import { Stops } from "./stops.tsx";

/** @returns what was said of a set, short */
function saidOf({ done }: SetSaid): string {
  if (done === undefined) return words.course.leftOut;
  const entry = entryOf(done);
  const numbers = [entry.both, entry.left, entry.right].filter((value) => value !== undefined);
  const load = entry.load === undefined ? [] : [words.load(entry.load)];
  return numbers.length + load.length === 0
    ? words.course.bare
    : [...(numbers.length === 0 ? [] : [numbers.join("/")]), ...load].join(" · ");
}

/** The whole session: go to any set, change what was saved, end here. */
export function OverviewPage({ run }: { run: SessionRun }) {
  const { bundle, view } = run;
  const steps = new Map(view.course.flatMap((step) => (step.kind === "set" ? [[placeKey(step), step] as const] : [])));
  const others = view.course.filter((step): step is Exclude<Step, { kind: "set" }> => step.kind !== "set");
  return (
    <>
      <Body>
        <div class={style["title"]}>
          <h1>{words.session(view.of.title)}</h1>
        </div>
        <ul class={style["list"]}>
          {slotsOf(view.now).map((slot) => {
            const waits = view.waiting.get(slot.key);
            return (
              <li key={slot.key}>
                <div>
                  <h2>{nameOf(bundle, slot.exercise)}</h2>
                  <p class={style["soft"]}>
                    {[words.dose(slot.dose, slot), ...(slot.load === undefined ? [] : [words.load(slot.load)])].join(
                      " · ",
                    )}
                  </p>
                </div>
                {waits === undefined ? null : (
                  <Note stop>
                    {words.course.waits}: {reasonOf(bundle, waits)}
                  </Note>
                )}
                <div class={style["sets"]}>
                  {slot.dose.sets.map((_, set) => {
                    const key = placeKey({ slot: slot.key, set });
                    const said = view.sets.get(key);
                    if (waits !== undefined && said === undefined) return null;
                    return (
                      <Button
                        key={key}
                        kind={said === undefined ? "open" : "plain"}
                        tap={() => goTo(run, steps.get(key))}
                      >
                        {words.course.one(set + 1)}
                        {said === undefined ? "" : `: ${saidOf(said)}`}
                      </Button>
                    );
                  })}
                </div>
              </li>
            );
          })}
          {others.map((step) => (
            <li key={step.kind}>
              <Button tap={() => goTo(run, step)}>
                {step.kind === "warm-up" ? words.course.warmup : words.course.conditioning}
              </Button>
            </li>
          ))}
        </ul>
        <Stops bundle={bundle} />
      </Body>
      <Foot>
        <Button tap={() => showAside(run, "stop")}>{words.end.early}</Button>
        <Button kind="strong" tap={() => showAside(run, undefined)}>
          {words.course.back}
        </Button>
      </Foot>
    </>
  );
}

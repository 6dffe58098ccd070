import { Button } from "../parts/index.ts";
import { asItStands, type Step, slotsOf, solved, swappedIn } from "../session/index.ts";
import { words } from "../words.ts";
import { Body, Foot } from "./frame.tsx";
import { HowTo } from "./how-to.tsx";
import { formOf, nameOf } from "./names.ts";
import style from "./page.module.css";
import { type SessionRun, showAside } from "./running.ts";

/** The easier form that would take the place of this one, before it does. */
export function EasierPage({ run, step }: { run: SessionRun; step: Extract<Step, { kind: "set" }> }) {
  const { phone, bundle, view } = run;
  const { said } = solved(bundle, view, step.slot, "easier");
  const swaps = said.map(({ of, data }) => ({ slot: of.slot ?? "", ...data }));
  const after = slotsOf(asItStands(view.of.session, swaps, bundle)).find(({ key }) => key === step.slot);
  const form = after === undefined ? undefined : formOf(bundle, after.exercise);
  const take = () =>
    phone.say(view.of.id, {
      said,
      draft: ({ aside: _aside, entries, ...now }) => {
        // Values set for the harder form say nothing of the easier one.
        const { [`${step.slot}/${step.set}`]: _gone, ...others } = entries;
        return swappedIn({ ...now, entries: others }, view, said);
      },
    });
  return (
    <>
      <Body>
        <div class={style["title"]}>
          <h1>{words.easier.title(nameOf(bundle, step.of.exercise))}</h1>
        </div>
        {said.length === 0 || form === undefined || after === undefined ? (
          <p>{words.easier.none}</p>
        ) : (
          <>
            <div>
              <h2>{form.name}</h2>
              <p class={style["soft"]}>
                {[words.dose(after.dose, after), ...(after.load === undefined ? [] : [words.load(after.load)])].join(
                  " · ",
                )}
              </p>
            </div>
            <HowTo form={form} />
          </>
        )}
      </Body>
      <Foot>
        <Button tap={() => showAside(run, undefined)}>{words.easier.back}</Button>
        {said.length === 0 ? null : (
          <Button kind="strong" tap={take}>
            {words.easier.take}
          </Button>
        )}
      </Foot>
    </>
  );
}

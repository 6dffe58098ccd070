import { Button } from "../parts/index.ts";
import { ofStep } from "../session/index.ts";
import { words } from "../words.ts";
import { Body, Foot } from "./frame.tsx";
import style from "./page.module.css";
import { type SessionRun, showAside } from "./running.ts";
import { Stops } from "./stops.tsx";

/** Ends the session: because all is behind, or here for today. Both are one tap and neither is a debt. */
export function EndPage({ run, early }: { run: SessionRun; early: boolean }) {
  const { phone, bundle, view } = run;
  const stays = early && !view.stopped;
  const all = view.course.filter(({ kind }) => kind === "set").length;
  const done = [...view.sets.values()].filter((said) => said.done !== undefined).length;
  const end = () =>
    phone.say(view.of.id, {
      said: view.ended === undefined ? [{ kind: "session-ended", data: { early }, of: ofStep(bundle, view) }] : [],
      already: (events) => events.some(({ kind }) => kind === "session-ended"),
      draft: ({ aside: _aside, timer: _timer, ...rest }) => rest,
      open: "none",
    });
  return (
    <>
      <Body>
        <div class={style["title"]}>
          <h1>{early ? words.end.early : words.end.title}</h1>
          <p>{words.end.some(done, all)}</p>
        </div>
        {early ? <p>{words.end.earlyWhy}</p> : null}
        {view.stopped ? <Stops bundle={bundle} open /> : null}
      </Body>
      <Foot>
        <Button tap={() => showAside(run, stays ? undefined : "overview")}>
          {stays ? words.end.stay : words.course.overview}
        </Button>
        <Button kind="strong" tap={end}>
          {words.end.end}
        </Button>
      </Foot>
    </>
  );
}

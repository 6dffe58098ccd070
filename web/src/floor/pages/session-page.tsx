import { drawStrokes } from "@stave/core/sign";
import { Sign } from "../parts/index.ts";
import { type Step, stepKey, stepNow, strokesOf } from "../session/index.ts";
import { words } from "../words.ts";
import { EasierPage } from "./easier-page.tsx";
import { EasyPage } from "./easy-page.tsx";
import { EndPage } from "./end-page.tsx";
import { Frame } from "./frame.tsx";
import { HurtBanner } from "./hurt-banner.tsx";
import { HurtPage, ToldPage } from "./hurt-page.tsx";
import { OverviewPage } from "./overview-page.tsx";
import style from "./page.module.css";
import { type SessionRun, showAside } from "./running.ts";
import { SetPage } from "./set-page.tsx";
import { WaitPage } from "./wait-page.tsx";

function Place({ run, step }: { run: SessionRun; step: Step | undefined }) {
  const { view, draft } = run;
  if (draft.aside === "overview") return <OverviewPage run={run} />;
  if (draft.aside === "told") return <ToldPage run={run} />;
  if (draft.aside === "stop") return <EndPage run={run} early />;
  if (step === undefined) return <EndPage run={run} early={view.stopped} />;
  if (step.kind !== "set") return <EasyPage run={run} step={step} />;
  if (draft.aside === "hurt") return <HurtPage run={run} step={step} />;
  if (draft.aside === "easier") return <EasierPage run={run} step={step} />;
  const waits = view.sets.has(stepKey(step)) ? undefined : view.waiting.get(step.slot);
  if (waits !== undefined) return <WaitPage run={run} step={step} because={waits} />;
  return <SetPage run={run} step={step} />;
}

/** A session that runs: the strip of its strokes, and one movement that fills the screen. */
export function SessionPage({ run }: { run: SessionRun }) {
  const { phone, bundle, view, draft } = run;
  const { shown } = phone;
  const step = stepNow(view, draft);
  const all = view.course.filter(({ kind }) => kind === "set").length;
  const behind = view.sets.size;
  const key = step === undefined ? "end" : stepKey(step);
  const drawing = drawStrokes(strokesOf(view, key), { height: 40, scale: "each" });
  return (
    <Frame
      shown={shown}
      about={words.course.progress(behind, all)}
      page={`${draft.aside ?? ""} ${key}`}
      head={
        <>
          {draft.aside === "overview" ? null : (
            <button
              type="button"
              class={style["strip"]}
              aria-label={words.course.overview}
              onClick={() => void showAside(run, "overview")}
            >
              <Sign drawing={drawing} />
            </button>
          )}
          <HurtBanner bundle={bundle} events={shown.kept.events} session={view.of.id} />
        </>
      }
    >
      <Place key={key} run={run} step={step} />
    </Frame>
  );
}

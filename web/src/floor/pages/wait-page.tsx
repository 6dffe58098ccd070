import type { Reason } from "@stave/core/model";
import { Button, Note } from "../parts/index.ts";
import { passed, type Step } from "../session/index.ts";
import { words } from "../words.ts";
import { Body, Foot } from "./frame.tsx";
import { nameOf, reasonOf } from "./names.ts";
import style from "./page.module.css";
import type { SessionRun } from "./running.ts";

interface WaitPageProps {
  readonly run: SessionRun;
  readonly step: Extract<Step, { kind: "set" }>;
  readonly because: Reason | "taken out";
}

/** A movement that waits, announced when its turn comes. */
export function WaitPage({ run, step, because }: WaitPageProps) {
  const { phone, bundle, view } = run;
  return (
    <>
      <Body>
        <div class={style["title"]}>
          <h1>{words.hurt.waits(nameOf(bundle, step.of.exercise))}</h1>
        </div>
        <Note stop role="status">
          {reasonOf(bundle, because)}
        </Note>
      </Body>
      <Foot>
        <Button kind="strong" tap={() => phone.touch(view.of.id, (draft) => passed(draft, view, step))}>
          {words.course.understood}
        </Button>
      </Foot>
    </>
  );
}

import type { BundleExercise } from "@stave/core/model";
import { words } from "../words.ts";
import style from "./page.module.css";

/** One cue in sight, the rest for whoever wants it. */
export function HowTo({ form }: { form: BundleExercise }) {
  const [first, ...more] = form.cues;
  return (
    <details class={style["cue"]}>
      <summary>
        <span>{first}</span> <span class={style["how"]}>{words.course.how}</span>
      </summary>
      <p>{form.setUp}</p>
      <p>{form.move}</p>
      {more.map((cue) => (
        <p key={cue}>{cue}</p>
      ))}
    </details>
  );
}

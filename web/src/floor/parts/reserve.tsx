import { words } from "../words.ts";
import { Button } from "./button.tsx";
import style from "./reserve.module.css";

/** The last says "or more". */
const CHOICES = [0, 1, 2, 3, 4];
const MOST = 4;

/** How many more could have been done. It starts empty and may stay so; tapping the chosen one empties it again. */
export function Reserve({ value, set }: { value: number | undefined; set: (value: number | undefined) => void }) {
  const { reserve, reserveMost, reserveSaid } = words.control;
  return (
    <fieldset class={style["reserve"]}>
      <legend>{reserve}</legend>
      <div class={style["choices"]}>
        {CHOICES.map((more) => {
          const said = more === MOST ? reserveMost : String(more);
          return (
            <Button
              key={more}
              kind={value === more ? "plain" : "open"}
              pressed={value === more}
              label={reserveSaid(said)}
              tap={() => set(value === more ? undefined : more)}
            >
              {said}
            </Button>
          );
        })}
      </div>
    </fieldset>
  );
}

import type { BundleExercise } from "@stave/core/model";
import type { Load } from "@stave/core/units";
import { loadIndex, steppedLoad } from "../session/index.ts";
import { words } from "../words.ts";
import { Button } from "./button.tsx";
import style from "./load-picker.module.css";

interface LoadPickerProps {
  readonly exercise: Pick<BundleExercise, "loadMeaning" | "last">;
  /** Loads that exist, lightest first. */
  readonly loads: readonly Load[];
  readonly asked: Load | undefined;
  /** Undefined while untouched. */
  readonly value: Load | undefined;
  /** What is said of it below, where the load must be found. */
  readonly find: string | undefined;
  readonly set: (load: Load | undefined) => void;
}

/** The load, by − and + through those that exist, or from their list. */
export function LoadPicker({ exercise, loads, asked, value, find, set }: LoadPickerProps) {
  const { load: name, noLoad, heavier, lighter, askedLoad, lastTime } = words.control;
  const shown = value ?? asked;
  const index = loadIndex(value, loads);
  const step = (by: 1 | -1) => {
    const next = steppedLoad(shown, by, loads);
    if (next !== undefined) set(next);
  };
  const beside = [
    words.where(exercise.loadMeaning),
    ...(value === undefined && asked !== undefined ? [askedLoad] : []),
    ...(exercise.last === undefined ? [] : [lastTime(exercise.last)]),
  ];
  return (
    <div class={`${style["picker"]} ${value === undefined ? style["untouched"] : ""}`}>
      <Button label={`${name}: ${lighter}`} disabled={steppedLoad(shown, -1, loads) === undefined} tap={() => step(-1)}>
        −
      </Button>
      <div class={style["middle"]}>
        <select
          aria-label={name}
          value={value === undefined ? "" : String(index)}
          onChange={({ currentTarget }) =>
            set(currentTarget.value === "" ? undefined : loads[Number(currentTarget.value)])
          }
        >
          <option value="">{asked === undefined ? noLoad : words.load(asked)}</option>
          {value !== undefined && index < 0 ? <option value="-1">{words.load(value)}</option> : null}
          {loads.map((load, at) => (
            <option key={words.load(load)} value={String(at)}>
              {words.load(load)}
            </option>
          ))}
        </select>
        <span class={style["beside"]}>{beside.join(" · ")}</span>
        {find === undefined ? null : <span class={style["beside"]}>{find}</span>}
      </div>
      <Button label={`${name}: ${heavier}`} disabled={steppedLoad(shown, 1, loads) === undefined} tap={() => step(1)}>
        +
      </Button>
    </div>
  );
}

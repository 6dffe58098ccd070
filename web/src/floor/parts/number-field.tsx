import { useEffect, useRef, useState } from "preact/hooks";
import { words } from "../words.ts";
import { Button } from "./button.tsx";
import style from "./number-field.module.css";

interface NumberFieldProps {
  /** What is counted, with its side. */
  readonly name: string;
  /** Shown above the field. */
  readonly title?: string;
  readonly value: number | undefined;
  readonly most: number;
  /** What is asked, in the place of a value. */
  readonly asked: string;
  /** @param by one step; the first from an untouched value begins at what was asked */
  readonly step: (by: 1 | -1) => void;
  /** Undefined: untouched again. */
  readonly set: (value: number | undefined) => void;
}

const KEYS: Readonly<Record<string, 1 | -1>> = { ArrowUp: 1, ArrowDown: -1 };

/** A number by − and +, by typing and by arrow keys: all that the thumb can say on the stroke. */
export function NumberField({ name, title, value, most, asked, step, set }: NumberFieldProps) {
  const [typing, setTyping] = useState<string>();
  const input = useRef<HTMLInputElement>(null);
  // What is on the screen is what is kept, save for the digits that are just being typed.
  useEffect(() => {
    if (document.activeElement !== input.current) setTyping(undefined);
  });
  const typed = (text: string) => {
    const digits = text.replace(/\D/g, "").slice(0, 4);
    setTyping(digits);
    set(digits === "" ? undefined : Math.min(most, Number(digits)));
  };
  const by = (one: 1 | -1) => {
    setTyping(undefined);
    step(one);
  };
  return (
    <div class={style["field"]}>
      {title === undefined ? null : <span class={style["name"]}>{title}</span>}
      <Button label={words.control.fewer(name)} tap={() => by(-1)}>
        −
      </Button>
      <input
        ref={input}
        role="spinbutton"
        inputMode="numeric"
        autocomplete="off"
        aria-label={name}
        aria-valuemin={0}
        aria-valuemax={most}
        aria-valuenow={value}
        aria-valuetext={value === undefined ? words.control.untouched(asked) : String(value)}
        placeholder={asked}
        value={typing ?? value ?? ""}
        onInput={({ currentTarget }) => typed(currentTarget.value)}
        onBlur={() => setTyping(undefined)}
        onKeyDown={(event) => {
          const arrow = KEYS[event.key];
          if (arrow === undefined) return;
          event.preventDefault();
          by(arrow);
        }}
      />
      <Button label={words.control.more(name)} tap={() => by(1)}>
        +
      </Button>
    </div>
  );
}

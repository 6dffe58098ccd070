import { sayProblem } from "@stave/core/text";
import { useId } from "react";
import { words } from "../words.ts";
import type { Slip } from "./typed-answer.ts";

interface Props {
  readonly label: string;
  /** How it may be written. */
  readonly hint?: string;
  readonly text: string;
  readonly slips: readonly Slip[];
  /** What the text would ask for, in words. */
  readonly would?: string | undefined;
  readonly onText: (text: string) => void;
}

/** A dose or a load, typed; every slip is told with its place while it is written. */
export function TypedField({ label, hint, text, slips, would, onText }: Props) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="text"
        value={text}
        maxLength={400}
        autoComplete="off"
        spellCheck={false}
        aria-describedby={`${id}-hint ${id}-said`}
        aria-invalid={slips.length > 0}
        onChange={(event) => onText(event.target.value)}
      />
      {hint !== undefined && (
        <p id={`${id}-hint`} className="soft small">
          {hint}
        </p>
      )}
      <div id={`${id}-said`} aria-live="polite">
        {slips.map((slip) => (
          <p key={`${slip.code} ${slip.offset}`} className="wrong">
            {words.other.place(slip.offset + 1)}{" "}
            {sayProblem({ ...slip, file: "", line: 1, column: slip.offset + 1, at: [] })}
          </p>
        ))}
        {would !== undefined && <p>{words.other.would(would)}</p>}
      </div>
    </div>
  );
}

import { type Fault, sayFault } from "./ask/index.ts";
import { words } from "./words.ts";

/** Nothing is known yet. */
export function Reading() {
  return <p className="soft">{words.loading}</p>;
}

/** What cannot be shown as it is now, why, and the way to ask again. */
export function FaultNote({ fault, again }: { readonly fault: Fault; readonly again: () => void }) {
  return (
    <p className="note" role="alert">
      {sayFault(fault)}{" "}
      <button type="button" className="link" onClick={again}>
        {words.tryAgain}
      </button>
    </p>
  );
}

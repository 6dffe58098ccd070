import type { Bundle, EventData } from "@stave/core/model";
import type { KeptEvent } from "../kept/index.ts";
import { Note } from "../parts/index.ts";
import { words } from "../words.ts";
import { nameOf } from "./names.ts";

/** What the server would not take is kept here and shown: a record that stood there already, or one it could not read. */
export function OnlyHere({ bundle, events }: { bundle: Bundle; events: readonly KeptEvent[] }) {
  const here = events.filter(({ fate }) => fate === "conflict" || fate === "refused");
  if (here.length === 0) return null;
  return (
    <Note stop>
      <p>{words.status.onlyHere(here.length)}</p>
      <ul>
        {here.map(({ id, fate, event }) => {
          const { exercise } = event.data as Partial<EventData["set-done"]>;
          const set = event.of?.set;
          return (
            <li key={id}>
              {exercise === undefined ? event.kind : nameOf(bundle, exercise)}
              {set === undefined ? "" : `, ${words.course.one(set + 1)}`}:{" "}
              {fate === "conflict" ? words.status.conflict : words.status.refused}
            </li>
          );
        })}
      </ul>
    </Note>
  );
}

import type { Stroke } from "@stave/core/model";
import { placeKey } from "./course.ts";
import { askedSpan, countedAs, entryOf, sidesOf } from "./entry.ts";
import type { SessionView } from "./view.ts";

/**
 * The session as strokes, one lot for each movement. How much of what can be lifted a load is, no phone can judge.
 *
 * @param at the place that fills the screen
 */
export function strokesOf(view: SessionView, at?: string): readonly (readonly Stroke[])[] {
  return view.now.blocks.flatMap(({ slots }) =>
    slots.map(({ key, dose, side }) =>
      dose.sets.map((set, index): Stroke => {
        const place = placeKey({ slot: key, set: index });
        const said = view.sets.get(place);
        const hurt = view.hurts.some(({ event }) => event.of?.slot === key && event.of.set === index);
        const common = { asked: askedSpan(set.amount), hold: countedAs(set.amount) === "holdS", hurt };
        if (said?.done === undefined) {
          const missed = said !== undefined || view.waiting.has(key) || view.ended !== undefined;
          return { ...common, state: missed ? "missed" : place === at ? "asked" : "to come" };
        }
        const entry = entryOf(said.done);
        const both = sidesOf({ dose: set, ...(side === undefined ? {} : { side }) }).length === 1;
        const whole = entry.both ?? entry.left ?? entry.right;
        return { ...common, state: "done", done: both ? { both: whole } : { left: entry.left, right: entry.right } };
      }),
    ),
  );
}

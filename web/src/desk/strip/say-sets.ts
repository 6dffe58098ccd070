import type { Stroke, StrokeAmount } from "@stave/core/model";
import { listed, printSpan } from "@stave/core/text";
import { words } from "../words.ts";

function amount(value: StrokeAmount): string {
  return value === undefined ? words.strip.notSaid : String(value);
}

function done({ state, done, asked }: Stroke): string {
  if (state === "missed") return words.strip.missed;
  if (done === undefined) return printSpan(asked.from, asked.to);
  return "both" in done ? amount(done.both) : words.strip.sides(amount(done.left), amount(done.right));
}

/** Sets in words, as on a slate. @example saySets([tenReps, nineReps]) //=> "10, 9" */
export function saySets(strokes: readonly Stroke[]): string {
  return strokes
    .map((stroke) => {
      const said = stroke.hold && stroke.state !== "missed" ? words.strip.seconds(done(stroke)) : done(stroke);
      return stroke.hurt ? words.strip.hurt(said) : said;
    })
    .join(", ");
}

/** What a strip of strokes shows, for readers who do not see it: the last three sessions and what is asked next. */
export function sayStrip(
  past: readonly { readonly day: string; readonly strokes: readonly Stroke[] }[],
  next: readonly Stroke[],
): string {
  const sessions = past.slice(-3).map(({ day, strokes }) => words.strip.session(words.shortDay(day), saySets(strokes)));
  const said = sessions.length === 0 ? [words.strip.none] : [listed(sessions, words.strip.thenAgain)];
  return [...said, ...(next.length === 0 ? [] : [words.strip.next(saySets(next))])].join("; ");
}

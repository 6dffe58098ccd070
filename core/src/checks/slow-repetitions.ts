import { printDose, type Tempo } from "../model/index.ts";
import type { Check, Facts, Found } from "./run/check.ts";
import { aboutDose, pathOfDose } from "./run/walk.ts";

type Data = Facts & { readonly exercise: string; readonly name: string; readonly seconds: number };

/** Seconds a repetition that build as much muscle as any; over 10 is worse. Source: schoenfeld2015tempo. */
const AS_GOOD_UP_TO = 8;
const TOO_SLOW = 10;

function secondsOf(tempo: Tempo): number {
  return tempo.reduce((sum, part) => sum + part, 0);
}

/** A second off the longest part, the first of equals, until the repetition is quick enough. */
function quicker(tempo: Tempo): Tempo {
  let now = [...tempo];
  while (secondsOf(now as unknown as Tempo) > AS_GOOD_UP_TO) {
    const longest = now.indexOf(Math.max(...now));
    now = now.map((part, index) => (index === longest ? part - 1 : part));
  }
  return now as unknown as Tempo;
}

/**
 * Repetitions of over ten seconds when the goal is size: from half a second to eight all tempos built as much, and over
 * ten less, since the load must be so light.
 *
 * The remedy makes them eight seconds.
 */
export const slowRepetitions: Check<"dose/slow-repetitions", Data> = {
  id: "dose/slow-repetitions",
  severity: "warn",
  sources: ["schoenfeld2015tempo"],
  run({ doses, programme, catalogue }) {
    if (programme.goal !== "size") return [];
    return doses.flatMap((place): readonly Found<Data>[] => {
      const { dose, exercise } = place;
      if (dose.tempo === undefined || !(secondsOf(dose.tempo) > TOO_SLOW)) return [];
      const at = pathOfDose(place);
      const after = { ...dose, tempo: quicker(dose.tempo) };
      const name = catalogue.exercises.get(exercise)?.name ?? exercise;
      return [
        {
          at,
          data: { ...aboutDose(place), exercise, name, seconds: secondsOf(dose.tempo), most: TOO_SLOW },
          cures: () => [
            {
              id: "quicker-repetitions",
              data: { from: printDose(dose), to: printDose(after) },
              changes: [{ op: "set", at, value: after }],
            },
          ],
        },
      ];
    });
  },
};

import { type Patch, printDose } from "@stave/core/model";
import { type Names, printLoad } from "@stave/core/text";
import { words } from "../words.ts";

/** What a change would ask for, in words. @example sayPatch(to14kg, "Goblet squat", names) //=> "Goblet squat: 14 kg" */
export function sayPatch(patch: Patch, exercise: string, names: Names): string {
  const { patch: say } = words;
  switch (patch.change) {
    case "load":
      return say.to(exercise, printLoad(patch.load));
    case "reps":
      return say.to(exercise, printDose(patch.dose));
    case "exercise":
      return say.instead(names.exercise(patch.exercise), exercise);
    case "pause":
      return patch.until === undefined ? say.pause(exercise) : say.pauseUntil(exercise, words.day(patch.until));
    case "run-walk":
      return say.to(exercise, say.runLevel(patch.level));
    case "resume":
      return say.resume(exercise);
    case "light week":
      return say.lightWeek(patch.week);
    case "full week":
      return say.fullWeek(patch.week);
  }
}

import type { Reason } from "../model/index.ts";
import { reason } from "./reasons.ts";

/**
 * What some medicines mean for training, by the ends and words of their names. From memory, no source: a list for asking,
 * and no list of all that there is.
 */
const KINDS = [
  {
    code: "screen/slows-heart",
    names: /olol\b|carvedilol|labetalol|verapamil|diltiazem|ivabradin|digoxin|beta.?blocker/,
  },
  { code: "screen/lowers-sugar", names: /insulin|gliclazid|glimepirid|glipizid|gl[iy]b(?:enclamid|urid)|repaglinid/ },
  {
    code: "screen/thins-blood",
    names: /warfarin|phenprocoumon|apixaban|rivaroxaban|edoxaban|dabigatran|heparin|blood thinner/,
  },
] as const;

/**
 * What is to be known of medicines before training. A name that no rule knows is told as unknown, never as harmless.
 *
 * @param medicines as the person says them, with or without a dose
 * @source ours
 */
export function medicineFacts(medicines: readonly string[]): readonly Reason[] {
  const kindOf = (name: string) => KINDS.find(({ names }) => names.test(name.toLowerCase()))?.code;
  const known = KINDS.flatMap(({ code }): Reason[] => {
    const named = medicines.filter((name) => kindOf(name) === code);
    return named.length === 0 ? [] : [reason(code, { medicines: named })];
  });
  const unknown = medicines.filter((name) => kindOf(name) === undefined);
  return [...known, ...(unknown.length === 0 ? [] : [reason("screen/medicine-unknown", { medicines: unknown })])];
}

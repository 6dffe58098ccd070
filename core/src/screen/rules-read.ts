import { z } from "zod";
import { parseDay } from "../day.ts";
import { ALWAYS, given, namePiece, type Read, readYaml, tell, type YamlDocument } from "../model/index.ts";
import { type GlucoseRule, inMgDl } from "./glucose.ts";
import { glucosePiece } from "./glucose-text.ts";
import type { ReturnRule, ReturnStep } from "./illness.ts";
import type { PainRule } from "./pain.ts";
import type { PressureRule } from "./pressure.ts";
import { pressurePiece } from "./pressure-text.ts";
import type { RuleName } from "./rule-name.ts";
import { type BeforeRules, PRINTED_RULES, usualRules } from "./rules.ts";
import type { SleepRule } from "./sleep.ts";

/** What can be wrong with a file of rules beyond the form of its values. Each names a sentence. */
export const RULE_PROBLEMS = ["rules/dated", "rules/order", "rules/looser"] as const;

/** The loosest edges that any source prints. A practice may be stricter, never looser: a clinician's word is for that. */
const LOOSEST = { hold: { systolic: 200, diastolic: 110 }, ketones: 270, low: 70, painMost: 5, painFree: 3 };

/** A year alone is a number in a file. */
const dated = z.union([z.string().max(10), z.int().min(1900).max(2199)]).transform(String);
const named = { name: namePiece(60), dated, by: namePiece(80) };

function tellDated(ctx: z.core.$RefinementCtx, found: unknown): void {
  if (typeof found !== "string" || /^\d{4}$/.test(found) || parseDay(found) !== undefined) return;
  tell(ctx, ["dated"], { code: "rules/dated", found, allowed: "2026, 2026-05-03" });
}

function tellLooser(ctx: z.core.$RefinementCtx, path: string, found: unknown, allowed: string, looser: boolean): void {
  if (looser) tell(ctx, [path], { code: "rules/looser", found: String(found), allowed });
}

function tellOrder(ctx: z.core.$RefinementCtx, path: string, found: unknown, allowed: string, wrong: boolean): void {
  if (wrong) tell(ctx, [path], { code: "rules/order", found: String(found), allowed });
}

const written = ({ systolic, diastolic }: { systolic: number; diastolic: number }) => `${systolic}/${diastolic}`;

const pressure = z
  .strictObject({ ...named, hold: pressurePiece, light: pressurePiece })
  .superRefine((said, ctx) => {
    tellDated(ctx, said?.dated);
    const { hold, light } = said ?? {};
    if (typeof hold !== "object" || typeof light !== "object") return;
    const most = LOOSEST.hold;
    const looser = hold.systolic > most.systolic || hold.diastolic > most.diastolic;
    tellLooser(ctx, "hold", written(hold), `≤ ${written(most)}`, looser);
    const above = light.systolic > hold.systolic || light.diastolic > hold.diastolic;
    tellOrder(ctx, "light", written(light), `≤ ${written(hold)}`, above);
  }, ALWAYS)
  .transform(({ name, ...rest }): PressureRule => ({ id: name, ...rest }));

const glucose = z
  .strictObject({ ...named, low: glucosePiece, carbohydrate: glucosePiece, ketones: glucosePiece })
  .superRefine((said, ctx) => {
    tellDated(ctx, said?.dated);
    const edge = (amount: unknown) => {
      const { value, unit } = (amount ?? {}) as Partial<z.infer<typeof glucosePiece>>;
      return value === undefined || unit === undefined ? undefined : inMgDl(value, unit);
    };
    const [low, middle, high] = [edge(said?.low), edge(said?.carbohydrate), edge(said?.ketones)];
    if (low === undefined || middle === undefined || high === undefined) return;
    tellLooser(ctx, "low", `${low} mg/dL`, `≥ ${LOOSEST.low} mg/dL`, low < LOOSEST.low);
    tellLooser(ctx, "ketones", `${high} mg/dL`, `≤ ${LOOSEST.ketones} mg/dL`, high > LOOSEST.ketones);
    tellOrder(ctx, "carbohydrate", `${middle} mg/dL`, `${low}–${high} mg/dL`, !(low <= middle && middle <= high));
  }, ALWAYS)
  .transform(({ name, low, carbohydrate, ketones, ...rest }): GlucoseRule => {
    const edge = ({ value, unit }: z.infer<typeof glucosePiece>) => inMgDl(value, unit);
    return { id: name, ...rest, low: edge(low), carbohydrate: edge(carbohydrate), ketones: edge(ketones) };
  });

const score = z.int().min(0).max(10);
const pain = z
  .strictObject({ ...named, free: score, most: score })
  .superRefine((said, ctx) => {
    tellDated(ctx, said?.dated);
    const { free, most } = said ?? {};
    if (typeof free !== "number" || typeof most !== "number") return;
    tellLooser(ctx, "free", free, `≤ ${LOOSEST.painFree}`, free > LOOSEST.painFree);
    tellLooser(ctx, "most", most, `≤ ${LOOSEST.painMost}`, most > LOOSEST.painMost);
    tellOrder(ctx, "free", free, `≤ ${most}`, free > most);
  }, ALWAYS)
  .transform(({ name, ...rest }): PainRule => ({ id: name, ...rest }));

const step = z
  .strictObject({
    minutes: z.int().min(5).max(120),
    percent: z.int().min(40).max(90).optional(),
    resistance: z.enum(["none", "light", "full"]),
    days: z.int().min(1).max(60),
  })
  .transform((said): ReturnStep => given(said));
const illness = z
  .strictObject({ ...named, free: z.int().min(1).max(60), steps: z.array(step).min(1).max(12) })
  .superRefine((said, ctx) => tellDated(ctx, said?.dated), ALWAYS)
  .transform(({ name, free, ...rest }): ReturnRule => ({ id: name, ...rest, freeDays: free }));

const sleep = z
  .strictObject({ ...named, under: z.number().min(3).max(9) })
  .superRefine((said, ctx) => tellDated(ctx, said?.dated), ALWAYS)
  .transform(({ name, ...rest }): SleepRule => ({ id: name, ...rest }));

/** A printed rule by its name. */
function printedIn<Rule extends RuleName>(rules: readonly Rule[]) {
  return z
    .enum(rules.map(({ id }) => id) as [string, ...string[]])
    .transform((chosen): Rule => rules.find(({ id }) => id === chosen)!);
}

const rulesFile = z
  .strictObject({
    stave: z.literal(1),
    pressure: z.union([printedIn(PRINTED_RULES.pressure), pressure]).optional(),
    glucose: z.union([printedIn(PRINTED_RULES.glucose), glucose]).optional(),
    pain: z.union([printedIn(PRINTED_RULES.pain), pain]).optional(),
    illness: z.union([printedIn(PRINTED_RULES.illness), illness]).optional(),
    sleep: z.union([printedIn(PRINTED_RULES.sleep), sleep]).optional(),
  })
  .transform(({ stave: _, ...chosen }): BeforeRules => ({ ...usualRules(), ...given(chosen) }));

/**
 * Reads the rules that a practice runs before a session: for each kind a printed one by its name, or one of its own with
 * its name, its date and who wrote it. What is left out is the first of the printed ones. A rule that is looser than
 * every printed one is refused: that takes a clinician's limit for the person, and no rule.
 */
export function readRules(text: string, file: string): Read<YamlDocument<BeforeRules>> {
  return readYaml(text, file, rulesFile);
}

import { z } from "zod";
import type { Day } from "../day.ts";
import {
  ALWAYS,
  dayPiece,
  given,
  idPiece,
  namePiece,
  type Read,
  readYaml,
  tell,
  type YamlDocument,
} from "../model/index.ts";
import { DISEASES, EFFORTS, SIGNS } from "./answers.ts";
import { consentsPiece } from "./consent-read.ts";
import type { GlucoseReading } from "./glucose.ts";
import { glucosePiece } from "./glucose-text.ts";
import { ILL_SIGNS } from "./illness.ts";
import { PAIN_SIGNS } from "./pain.ts";
import type { Pressure } from "./pressure.ts";
import { pressurePiece } from "./pressure-text.ts";
import { STOP_SIGNS } from "./stop-list.ts";
import type { NewToday, PainPlace, Today } from "./today.ts";

/** What can be wrong with what a person says before a session beyond the form of its values. Each names a sentence. */
export const TODAY_PROBLEMS = [
  "before/pressure-form",
  "before/pressure-size",
  "before/glucose-form",
  "before/glucose-unit",
  "before/glucose-size",
  "before/slept-form",
  "before/ill-later",
] as const;

/** What stands in the file: whose day it is and what was said. */
export interface TodayFile {
  readonly person: string;
  readonly today: Today;
}

const yesNo = z.enum(["yes", "no"]).transform((word) => word === "yes");

const news = z.union([
  z.literal("nothing").transform((): NewToday => ({})),
  z
    .strictObject({
      disease: z.array(z.enum(DISEASES)).max(DISEASES.length).optional(),
      signs: z.array(z.enum(SIGNS)).max(SIGNS.length).optional(),
      wanted: z.enum(EFFORTS).optional(),
      active: yesNo.optional(),
      other: z.array(namePiece(200)).max(20).optional(),
    })
    .transform((said): NewToday => given(said)),
]);

const pressure = z
  .strictObject({ readings: z.array(pressurePiece).min(1).max(5), "note allows light": yesNo.optional() })
  .transform((said) => ({
    readings: said.readings as unknown as readonly [Pressure, ...Pressure[]],
    note: said["note allows light"] ?? false,
  }));

const glucose = z
  .strictObject({
    reading: glucosePiece,
    ketones: z.enum(["none or small", "moderate or large"]).optional(),
    "severe low": yesNo.optional(),
    "short or very hard": yesNo.optional(),
  })
  .transform(
    ({ reading, ketones, "severe low": severeLow, "short or very hard": shortOrHard }): GlucoseReading =>
      given({ ...reading, ketones, severeLow, shortOrHard }),
  );

const score = z.number().min(0).max(10);
const pain = z
  .strictObject({
    where: namePiece(80),
    score,
    morning: score.optional(),
    rising: yesNo.optional(),
    signs: z.array(z.enum(PAIN_SIGNS)).max(PAIN_SIGNS.length).optional(),
  })
  .transform(
    ({ rising, signs, ...rest }): PainPlace => ({ ...given(rest), rising: rising ?? false, signs: signs ?? [] }),
  );

const HOURS = /^(\d{1,2}(?:[.,]\d{1,2})?)\s*h$/;
const slept = z.union([z.string(), z.number()]).transform((said, ctx): number => {
  const hours = Number(HOURS.exec(String(said).trim())?.[1]?.replace(",", "."));
  if (hours >= 0 && hours <= 24) return hours;
  tell(ctx, [], { code: "before/slept-form", found: String(said).slice(0, 40), allowed: "6.5 h, 0–24 h" });
  return z.NEVER;
});

const todayFile = z
  .strictObject({
    stave: z.literal(1),
    person: idPiece,
    on: dayPiece,
    by: namePiece(80),
    new: news.optional(),
    consents: consentsPiece.optional(),
    pressure: pressure.optional(),
    glucose: glucose.optional(),
    pain: z.array(pain).max(20).optional(),
    ill: z.array(z.enum(ILL_SIGNS)).max(ILL_SIGNS.length).optional(),
    "last ill": dayPiece.optional(),
    slept: slept.optional(),
    stop: z.array(z.enum(STOP_SIGNS)).max(STOP_SIGNS.length).optional(),
  })
  .superRefine((file, ctx) => {
    const { on, "last ill": last } = file ?? {};
    if (typeof on === "number" && typeof last === "number" && !(last <= on)) {
      tell(ctx, ["last ill"], { code: "before/ill-later" });
    }
  }, ALWAYS)
  .transform(({ stave: _, person, ...said }): TodayFile => {
    const { new: fresh, "last ill": lastIll, consents, pain: hurts, stop, ...rest } = said;
    const asked = given({ ...rest, news: fresh, lastIll: lastIll as Day | undefined });
    return { person, today: { ...asked, consents: consents ?? [], pain: hurts ?? [], stop: stop ?? [] } };
  });

/** Reads what one person said and what was measured before one session. */
export function readToday(text: string, file: string): Read<YamlDocument<TodayFile>> {
  return readYaml(text, file, todayFile);
}

import { z } from "zod";
import { tell } from "../model/index.ts";
import type { Pressure } from "./pressure.ts";

const FORM = /^(\d{2,3})\s*\/\s*(\d{2,3})(?:\s*mmHg)?$/;

/** A blood pressure as it is written, `128/82`, within what anybody can have; the first is the higher. */
export const pressurePiece = z.string().transform((text, ctx): Pressure => {
  const match = FORM.exec(text.trim());
  const [systolic, diastolic] = [Number(match?.[1]), Number(match?.[2])];
  const possible = systolic >= 60 && systolic <= 300 && diastolic >= 30 && diastolic <= 200 && systolic > diastolic;
  if (match !== null && possible) return { systolic, diastolic };
  tell(ctx, [], {
    code: match === null ? "before/pressure-form" : "before/pressure-size",
    found: text.slice(0, 40),
    allowed: match === null ? "128/82" : "60–300/30–200 mmHg",
  });
  return z.NEVER;
});

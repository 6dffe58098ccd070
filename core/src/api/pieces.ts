import { z } from "zod";
import { parseDay } from "../day.ts";
import { canonicalJson, isStorable, type Json, MAX_LOAD, type Reason } from "../model/index.ts";
import type { Load } from "../units.ts";

/** Most characters of a reason's data; reasons hold reasons. Ours, no source. */
const MOST_REASON = 20_000;

/** Names that key records: ids of people, plans, sessions and slots, in any script. */
export const namePiece = z.string().min(1).max(200).refine(isStorable);
/** Ids that devices make: UUIDs and the like. */
export const madeIdPiece = z.string().regex(/^[0-9A-Za-z_-]{8,64}$/);
/** Text for people to read. */
export const textPiece = z.string().max(2000).refine(isStorable);
/** 32 random bytes, base64url. */
export const tokenPiece = z.string().regex(/^[0-9A-Za-z_-]{43}$/);
export const dayTextPiece = z
  .string()
  .max(10)
  .refine((text) => parseDay(text) !== undefined);
/** Wall minutes after midnight. */
export const minutePiece = z.int().min(0).max(1440);
/** A Lamport counter. No person records so often that it comes near the bound; past it, order would be lost. */
export const counterPiece = z.int().min(0).max(1_000_000_000_000);

export const loadPiece: z.ZodType<Load> = z
  .strictObject({ value: z.number().min(0), unit: z.enum(["kg", "lb"]) })
  .refine(({ value, unit }) => value <= MAX_LOAD[unit] && Math.round(value * 1000) / 1000 === value);

/**
 * JSON that has a canonical spelling, as long as that is not too long. Nesting that is too deep to be spelled is refused
 * as well.
 */
export function dataPiece(most: number): z.ZodType<Readonly<Record<string, Json>>> {
  return z.custom<Readonly<Record<string, Json>>>((data) => {
    if (typeof data !== "object" || data === null || Array.isArray(data)) return false;
    try {
      return canonicalJson(data).length <= most;
    } catch {
      return false;
    }
  });
}

export const reasonPiece: z.ZodType<Reason> = z.strictObject({
  code: z.string().min(1).max(80),
  data: dataPiece(MOST_REASON),
});

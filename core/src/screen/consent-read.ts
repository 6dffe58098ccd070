import { z } from "zod";
import { dayPiece, namePiece } from "../model/index.ts";
import { type Consent, PURPOSES } from "./consent.ts";

const yesNo = z.enum(["yes", "no"]).transform((word) => word === "yes");

const speaker = z.union([
  z.literal("self").transform(() => ({ who: "self" as const })),
  z
    .strictObject({ guardian: namePiece(80) })
    .transform(({ guardian }) => ({ who: "guardian" as const, name: guardian })),
]);

/** One dated statement about one purpose: `{ purpose: photos, on: 2027-01-11, given: no, by: self }`. */
const statement = z
  .strictObject({ purpose: z.enum(PURPOSES), on: dayPiece, given: yesNo, by: speaker })
  .transform((said): Consent => said);

/** Statements about purposes, in the order in which they were made. */
export const consentsPiece = z.array(statement).max(200);

/** The age under which a parent or guardian speaks, with the country whose law it is. */
export const consentAgePiece = z.strictObject({ country: namePiece(60), age: z.int().min(13).max(18) });

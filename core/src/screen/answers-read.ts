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
  STATEMENTS,
  tell,
  type YamlDocument,
} from "../model/index.ts";
import { type Answers, DISEASES, EFFORTS, SIGNS } from "./answers.ts";
import type { Consent, ConsentAge } from "./consent.ts";
import { consentAgePiece, consentsPiece } from "./consent-read.ts";

/** What can be wrong with a file of answers beyond the form of its values. Each names a sentence. */
export const ANSWER_PROBLEMS = ["answers/born-later", "answers/cleared-later"] as const;

/** Somebody's answers with what the file says of them. */
export interface AnswersFile {
  readonly person: string;
  /** As it is written on a page for somebody else; the id when it is not said. */
  readonly name?: string;
  readonly born: Day;
  readonly answers: Answers;
  readonly consents: readonly Consent[];
  readonly consentAge?: ConsentAge;
}

const yesNo = z.enum(["yes", "no"]).transform((word) => word === "yes");

const cleared = z
  .strictObject({
    on: dayPiece,
    who: namePiece(80),
    effort: z.enum(EFFORTS),
    about: z.array(z.enum(SIGNS)).max(SIGNS.length).optional(),
  })
  .transform(given);

const answersFile = z
  .strictObject({
    stave: z.literal(1),
    person: idPiece,
    name: namePiece(80).optional(),
    born: dayPiece,
    on: dayPiece,
    by: namePiece(80),
    active: yesNo.optional(),
    disease: z.partialRecord(z.enum(DISEASES), yesNo).optional(),
    signs: z.partialRecord(z.enum(SIGNS), yesNo).optional(),
    wanted: z.enum(EFFORTS).optional(),
    cleared: cleared.optional(),
    also: z.array(z.enum(STATEMENTS)).max(STATEMENTS.length).optional(),
    medicines: z.array(namePiece(80)).max(30).optional(),
    other: z.array(namePiece(200)).max(20).optional(),
    past: z.array(namePiece(200)).max(20).optional(),
    consents: consentsPiece.optional(),
    "age of consent": consentAgePiece.optional(),
  })
  .superRefine((file, ctx) => {
    const { born, on, cleared: agreed } = file ?? {};
    if (typeof born === "number" && typeof on === "number" && !(born <= on)) {
      tell(ctx, ["born"], { code: "answers/born-later" });
    }
    if (typeof agreed?.on === "number" && typeof on === "number" && !(agreed.on <= on)) {
      tell(ctx, ["cleared", "on"], { code: "answers/cleared-later" });
    }
  }, ALWAYS)
  .transform(
    ({
      stave: _,
      person,
      name,
      born,
      disease,
      signs,
      consents,
      "age of consent": consentAge,
      ...rest
    }): AnswersFile => ({
      person,
      ...given({ name, consentAge }),
      born,
      answers: { ...given(rest), disease: disease ?? {}, signs: signs ?? {} },
      consents: consents ?? [],
    }),
  );

/**
 * Reads one person's screening answers. Each answer is `yes` or `no`; one that is left out counts as not answered,
 * which is never an error and is read the safe way by `screen`.
 *
 * @param file its name, for the problems
 */
export function readAnswers(text: string, file: string): Read<YamlDocument<AnswersFile>> {
  return readYaml(text, file, answersFile);
}

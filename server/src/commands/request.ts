import { CATALOGUE } from "@stave/core/exercises";
import type { Problem, Reason } from "@stave/core/model";
import { requestPage } from "@stave/core/report";
import { type AnswersFile, adviceRequest, type BeforeSession, type Screened, type Today } from "@stave/core/screen";
import { namesFrom, sayReason } from "@stave/core/text";
import { Press } from "../documents/sheet/index.ts";
import { paperOf } from "./sheet.ts";
import { type Written, writeFiles } from "./write-files.ts";

export interface RequestOptions {
  /** Where to write the request for a clinician; none is written when it is left out. */
  readonly request?: string;
  readonly paper: string;
}

/** What came of a request: the page, or why there is none. */
export type Requested = { readonly file: Written } | { readonly withheld: Reason };

const NAMES = namesFrom(CATALOGUE);

/** Writes the page that asks a clinician, when one is wanted, there is something to ask and the person agreed to it. */
export async function writeRequest(
  options: RequestOptions,
  file: AnswersFile,
  screened: Screened,
  session?: { readonly today: Today; readonly before: BeforeSession },
): Promise<{ readonly requested?: Requested } | { readonly problem: Problem }> {
  if (options.request === undefined) return {};
  const paper = paperOf(options.paper);
  if (paper === undefined) {
    const where = { file: "--paper", at: [], line: 0, column: 0 };
    return { problem: { code: "sheet/paper", ...where, found: options.paper, allowed: "a4, letter" } };
  }
  const answer = adviceRequest(file, screened, session);
  if (!answer.ok) return { requested: { withheld: answer.reason } };
  const press = new Press();
  try {
    const content = await press.print("request.typ", requestPage(answer.request, screened.ruleSet.dated, NAMES, paper));
    const written = await writeFiles(options.request, [{ path: `${file.person}/request.pdf`, content }]);
    return "problem" in written ? written : { requested: { file: written.written[0]! } };
  } finally {
    press.close();
  }
}

/** @returns what came of it as lines of words */
export function requestWords(requested: Requested | undefined): readonly string[] {
  if (requested === undefined) return [];
  return ["file" in requested ? `wrote ${requested.file.path}` : sayReason(requested.withheld, NAMES)];
}

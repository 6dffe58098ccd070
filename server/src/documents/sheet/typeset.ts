/**
 * The typesetter's own process. It takes one job after another as messages and answers with a PDF or what went wrong.
 * Data go in as JSON only; no text of a person or coach ever becomes typesetting source.
 */
import { resolve } from "node:path";
import { NodeCompiler } from "@myriaddreamin/typst-ts-node-compiler";
import { unknownLetters, withoutLetters } from "./unknown-letters.ts";

export interface TypesetJob {
  readonly id: number;
  /** Folder that holds the layout. */
  readonly folder: string;
  readonly layout: string;
  readonly fonts: readonly string[];
  readonly data: unknown;
}

export type TypesetAnswer =
  | { readonly id: number; readonly pdf: Uint8Array }
  | { readonly id: number; readonly fault: string };

/** Marks first, then letters, then what those hid. */
const MOST_TRIES = 5;

/** The typesetter puts what is wrong into the message or into the code of its errors. */
function complaint(error: unknown): string {
  const { message, code } = error as { readonly message?: string; readonly code?: string };
  return [message, code].filter((said) => said !== undefined && said !== "").join(" ");
}

let compiler: NodeCompiler | undefined;

function typeset(job: TypesetJob, data: unknown, tries: number): Uint8Array {
  compiler ??= NodeCompiler.create({ workspace: job.folder, fontArgs: [{ fontPaths: [...job.fonts] }] });
  compiler.mapShadow(resolve(job.folder, "data.json"), Buffer.from(JSON.stringify(data)));
  try {
    return compiler.pdf(
      { mainFilePath: resolve(job.folder, job.layout), resetRead: true },
      { pdfStandard: "ua-1" as never },
    );
  } catch (error) {
    const less = withoutLetters(data, unknownLetters(complaint(error)));
    if (less === undefined || tries >= MOST_TRIES) throw error;
    return typeset(job, less, tries + 1);
  } finally {
    compiler.evictCache(0);
  }
}

process.on("message", (job: TypesetJob) => {
  let answer: TypesetAnswer;
  try {
    answer = { id: job.id, pdf: typeset(job, job.data, 1) };
  } catch (error) {
    answer = { id: job.id, fault: complaint(error) };
  }
  process.send?.(answer);
});

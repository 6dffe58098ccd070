/**
 * The typesetter's own process. It takes one job after another as messages and answers with a PDF or what went wrong.
 * Data go in as JSON only; no text of a person or coach ever becomes typesetting source.
 */
import { resolve } from "node:path";
import { NodeCompiler } from "@myriaddreamin/typst-ts-node-compiler";

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

let compiler: NodeCompiler | undefined;

function typeset(job: TypesetJob): Uint8Array {
  compiler ??= NodeCompiler.create({ workspace: job.folder, fontArgs: [{ fontPaths: [...job.fonts] }] });
  compiler.mapShadow(resolve(job.folder, "data.json"), Buffer.from(JSON.stringify(job.data)));
  try {
    return compiler.pdf(
      { mainFilePath: resolve(job.folder, job.layout), resetRead: true },
      { pdfStandard: "ua-1" as never },
    );
  } finally {
    compiler.evictCache(0);
  }
}

process.on("message", (job: TypesetJob) => {
  let answer: TypesetAnswer;
  try {
    answer = { id: job.id, pdf: typeset(job) };
  } catch (error) {
    answer = { id: job.id, fault: String(error) };
  }
  process.send?.(answer);
});

import type { Finding, Problem } from "@stave/core/model";
import { sayProblems } from "./say-problems.ts";

/** A finding with the place in its file. */
export interface PlacedFinding extends Finding {
  readonly file: string;
  readonly line: number;
  readonly column: number;
}

/** What every command answers: one document, printed as words or as JSON. */
export interface Answer {
  readonly command: string;
  readonly result: unknown;
  readonly findings: readonly PlacedFinding[];
  readonly problems: readonly Problem[];
  /** The result for a person to read; empty when there is none. */
  readonly words: string;
  /** The result itself says that what was asked about does not go ahead. */
  readonly stops?: boolean;
}

/** Where a command meets the world: files are read by the commands themselves. */
export interface Io {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** Today in the place where the program runs, YYYY-MM-DD. */
  readonly today: string;
  readonly now: number;
}

/** 0 done, 1 a finding or the answer stops, 2 unreadable input. */
export type Exit = 0 | 1 | 2;

export function exitOf(answer: Pick<Answer, "findings" | "problems" | "stops">): Exit {
  if (answer.problems.length > 0) return 2;
  return answer.stops === true || answer.findings.some((finding) => finding.severity === "stop") ? 1 : 0;
}

/** Prints an answer; standard output carries one document and nothing else, problems go beside it. */
export function give(answer: Answer, json: boolean, io: Io): Exit {
  const { command, result, findings, problems, words } = answer;
  const exit = exitOf(answer);
  if (json) {
    const document = { stave: 1, command, ok: exit === 0, result: result ?? null, findings, problems };
    io.out(`${JSON.stringify(document, undefined, 2)}\n`);
    return exit;
  }
  io.out(words);
  io.err(sayProblems(problems));
  return exit;
}

/** @returns the answer of a command that could not do its work */
export function failed(command: string, problems: readonly Problem[]): Answer {
  return { command, result: undefined, findings: [], problems, words: "" };
}

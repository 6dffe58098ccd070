import type { Finding, Problem } from "@stave/core/model";

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
  /** The same for a person to read. */
  readonly words: string;
}

/** Where a command meets the world: files are read by the commands themselves. */
export interface Io {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** Today in the place where the program runs, YYYY-MM-DD. */
  readonly today: string;
  readonly now: number;
}

/** 0 done, 1 a finding stops, 2 unreadable input. */
export type Exit = 0 | 1 | 2;

export function exitOf(answer: Pick<Answer, "findings" | "problems">): Exit {
  if (answer.problems.length > 0) return 2;
  return answer.findings.some((finding) => finding.severity === "stop") ? 1 : 0;
}

/** Prints an answer; standard output carries one document and nothing else. */
export function give(answer: Answer, json: boolean, io: Io): Exit {
  const { command, result, findings, problems, words } = answer;
  const exit = exitOf(answer);
  if (json)
    io.out(`${JSON.stringify({ stave: 1, command, ok: exit === 0, result, findings, problems }, undefined, 2)}\n`);
  else if (problems.length > 0) io.err(words);
  else io.out(words);
  return exit;
}

import type { Path } from "./finding.ts";

/** A problem that still counts characters and not lines. */
export interface Fault {
  readonly code: string;
  readonly at: Path;
  readonly offset: number;
  readonly found?: string;
  readonly allowed?: string;
  readonly maybe?: string;
}

/** A problem of the YAML itself, from what the parser says of it. */
export function syntaxFault(text: string, code: string, offset: number, message: string): Fault {
  const line = text
    .slice(offset, offset + 200)
    .split(/\r?\n/, 1)[0]!
    .trim();
  const found = line.length > 30 ? `${line.slice(0, 30)}…` : line;
  const fault = { at: [], offset, ...(found === "" ? {} : { found }) };
  const closing = /closing (["'])|end with a ([\]}])/.exec(message);
  if (closing) return { ...fault, code: "yaml/unclosed", allowed: (closing[1] ?? closing[2])! };
  switch (code) {
    case "TAB_AS_INDENT":
      return { code: "yaml/tab", at: [], offset };
    case "BAD_INDENT":
      return { ...fault, code: "yaml/indent" };
    case "BAD_SCALAR_START":
      return { ...fault, code: "yaml/quotes-needed", maybe: `"${found}"` };
    case "BLOCK_AS_IMPLICIT_KEY":
      return { ...fault, code: "yaml/second-colon" };
    case "MULTILINE_IMPLICIT_KEY":
      return { ...fault, code: "yaml/colon-missing" };
    case "BAD_DQ_ESCAPE":
      return { ...fault, code: "yaml/escape" };
    case "BAD_ALIAS":
      return { ...fault, code: "yaml/alias" };
    case "TAG_RESOLVE_FAILED":
      return { ...fault, code: "yaml/tag" };
    default:
      return message.startsWith("Implicit map keys need")
        ? { ...fault, code: "yaml/colon-missing" }
        : message.startsWith("Sequence item without")
          ? { ...fault, code: "yaml/indent" }
          : { ...fault, code: "yaml/syntax" };
  }
}

/** One slip makes the parser stumble several times on the same line. */
export function firstOfEachLine(text: string, faults: readonly Fault[]): readonly Fault[] {
  const kept: Fault[] = [];
  let last = -1;
  for (const fault of [...faults].sort((a, b) => a.offset - b.offset)) {
    if (last >= 0 && !text.slice(last, fault.offset).includes("\n")) continue;
    kept.push(fault);
    last = fault.offset;
  }
  return kept;
}

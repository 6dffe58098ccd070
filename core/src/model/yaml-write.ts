import { Document, isScalar, isSeq, Scalar, visit } from "yaml";
import type { Json } from "./finding.ts";

/** No line is ever folded, since a fold would move text to lines that nobody touched. */
const AS_WRITTEN = {
  lineWidth: 0,
  blockQuote: false,
  doubleQuotedMinMultiLineLength: Number.MAX_SAFE_INTEGER,
  flowCollectionPadding: false,
} as const;

/** How a text was written before, so that its heir is written alike. */
export type Quotes = "single" | "double" | "plain";

/**
 * A value in one line, as it may stand inside brackets or behind a name.
 *
 * @param inFlow whether it will stand inside brackets, where a comma divides
 * @example
 * writeInline("3 × 8, rest 90 s", true) //=> '"3 × 8, rest 90 s"'
 */
export function writeInline(value: Json, inFlow: boolean, quotes: Quotes = "plain"): string {
  const document = new Document(inFlow ? [value] : value);
  visit(document, {
    Collection: (_, node) => {
      node.flow = true;
    },
    Scalar: (_, node) => quote(node, quotes),
  });
  const text = document.toString(AS_WRITTEN).replace(/\n$/, "");
  return inFlow ? text.slice(1, -1) : text;
}

/** Text of several lines is put between double quotes, where its breaks are written as \n. */
function quote(node: Scalar, quotes: Quotes): void {
  if (typeof node.value !== "string") return;
  if (quotes === "double" || /[\n\r]/.test(node.value)) node.type = Scalar.QUOTE_DOUBLE;
  else if (quotes === "single") node.type = Scalar.QUOTE_SINGLE;
}

/**
 * A value over several lines, without an indentation of its own; lists of single words stay on one line.
 *
 * @example
 * writeBlock([{ week: 3, dose: "3 × 8" }]) //=> ["- week: 3", "  dose: 3 × 8"]
 */
export function writeBlock(value: Json): readonly string[] {
  const document = new Document(value);
  visit(document, {
    Scalar: (_, node) => quote(node, "plain"),
    Seq: (key, node) => {
      if (isSeq(node) && key !== null && node.items.length > 0 && node.items.every((item) => isScalar(item))) {
        node.flow = true;
      }
    },
  });
  return document.toString(AS_WRITTEN).replace(/\n$/, "").split("\n");
}

/** @returns whether a value needs lines of its own when it is not written in brackets */
export function isBranching(value: Json): boolean {
  return typeof value === "object" && value !== null && Object.keys(value).length > 0;
}

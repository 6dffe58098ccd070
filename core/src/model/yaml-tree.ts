import {
  Composer,
  type CST,
  isAlias,
  isMap,
  isPair,
  isScalar,
  isSeq,
  type ParsedNode,
  Parser,
  type Scalar,
} from "yaml";
import type { Path } from "./finding.ts";
import { type Fault, firstOfEachLine, syntaxFault } from "./yaml-syntax.ts";

/** One value of the text with its place, counted in characters from the start. */
export interface Branch {
  readonly value: unknown;
  readonly start: number;
  /** Where its name stands, when it has one. */
  readonly nameStart?: number;
  /** A scalar as it is written, quotes included. */
  readonly written?: { readonly text: string; readonly style: "plain" | "single" | "double" | "block" };
  readonly children?: ReadonlyMap<string | number, Branch>;
}

export interface Grown {
  /** Undefined when the text is no YAML or holds nothing. */
  readonly root?: Branch;
  readonly faults: readonly Fault[];
}

/** Lists and maps inside one another; a programme needs about ten. */
const MAX_DEPTH = 30;
const STYLES: Readonly<Record<string, "plain" | "single" | "double" | "block">> = {
  PLAIN: "plain",
  QUOTE_SINGLE: "single",
  QUOTE_DOUBLE: "double",
  BLOCK_LITERAL: "block",
  BLOCK_FOLDED: "block",
};
const NUMBER = /^-?(0|[1-9]\d*)(\.\d+)?$/;

/**
 * Reads YAML 1.2 into values that remember where they stand.
 *
 * Anchors, aliases, tags, merge keys, directives, a second document and numbers in any but the everyday notation are
 * refused by name: a programme file has no use for them, and each can change a value without a word.
 *
 * @param text without a byte order mark
 */
export function growTree(text: string): Grown {
  const tokens = [...new Parser().parse(text)];
  const deep = firstTooDeep(tokens);
  if (deep !== undefined) {
    return {
      faults: [{ code: "yaml/too-deep", at: [], offset: deep, found: `> ${MAX_DEPTH}`, allowed: `1–${MAX_DEPTH}` }],
    };
  }
  const faults: Fault[] = [];
  for (const token of tokens) {
    if (token.type === "directive") {
      faults.push({ code: "yaml/directive", at: [], offset: token.offset, found: token.source.trim() });
    }
  }
  // A directive can change what the rest means, so nothing after it is judged.
  if (faults.length > 0) return { faults };
  // Names are compared here and not by the parser, which takes time in the square of their number.
  const documents = [...new Composer({ uniqueKeys: false, strict: true }).compose(tokens, false, text.length)];
  const [document, second] = documents;
  if (second) faults.push({ code: "yaml/second-document", at: [], offset: second.range[0] });
  for (const error of document?.errors ?? []) faults.push(syntaxFault(text, error.code, error.pos[0], error.message));
  if (document && document.errors.length > 0) return { faults: firstOfEachLine(text, faults) };
  const contents = document?.contents;
  if (!contents || (isScalar(contents) && contents.source === "")) {
    return { faults: [{ code: text.includes("#") ? "yaml/only-comments" : "yaml/empty", at: [], offset: 0 }] };
  }
  const root = grow(text, contents as ParsedNode, [], undefined, faults);
  return { root, faults };
}

function firstTooDeep(tokens: readonly CST.Token[]): number | undefined {
  const open = tokens.map((token) => ({ token, depth: 0 }));
  let first: number | undefined;
  for (let next = open.pop(); next; next = open.pop()) {
    const { token, depth } = next;
    if (token.type === "document") {
      if (token.value) open.push({ token: token.value, depth });
    } else if ("items" in token) {
      if (depth >= MAX_DEPTH) {
        first = Math.min(first ?? token.offset, token.offset);
        continue;
      }
      for (const item of token.items) {
        if (item.key) open.push({ token: item.key, depth: depth + 1 });
        if (item.value) open.push({ token: item.value, depth: depth + 1 });
      }
    }
  }
  return first;
}

function grow(text: string, node: ParsedNode | null, at: Path, nameStart: number | undefined, faults: Fault[]): Branch {
  const start = node?.range[0] ?? nameStart ?? 0;
  const name = nameStart === undefined ? {} : { nameStart };
  if (node === null) return { value: null, start, ...name };
  if (isAlias(node)) {
    faults.push({ code: "yaml/alias", at, offset: start, found: `*${node.source}` });
    return { value: undefined, start, ...name };
  }
  if (node.anchor !== undefined) faults.push({ code: "yaml/anchor", at, offset: start, found: `&${node.anchor}` });
  if (node.tag !== undefined) faults.push({ code: "yaml/tag", at, offset: start, found: node.tag });
  if (isSeq(node)) {
    node.items.forEach((item, i) => {
      const comma = tightComma(text, node.items[i - 1], item);
      if (comma !== undefined) {
        faults.push({ code: "yaml/comma", at: [...at, i - 1], offset: comma, found: ",", maybe: ", " });
      }
    });
    const children = new Map<number, Branch>();
    node.items.forEach((item, i) => {
      children.set(i, isPair(item) ? { value: null, start } : grow(text, item, [...at, i], undefined, faults));
    });
    return { value: [...children.values()].map((child) => child.value), start, ...name, children };
  }
  if (isMap(node)) {
    const children = new Map<string, Branch>();
    const value: Record<string, unknown> = {};
    for (const { key, value: item } of node.items) {
      const keyStart = (key as ParsedNode | null)?.range[0] ?? start;
      const word = keyWord(key as ParsedNode | null, at, keyStart, faults);
      if (word === undefined) continue;
      if (children.has(word)) {
        faults.push({ code: "yaml/duplicate-key", at: [...at, word], offset: keyStart, found: word });
        continue;
      }
      const child = grow(text, item as ParsedNode | null, [...at, word], keyStart, faults);
      children.set(word, child);
      value[word] = child.value;
    }
    return { value, start, ...name, children };
  }
  const fault = oddNumber(node, at, start);
  if (fault) faults.push(fault);
  const style = STYLES[node.type ?? "PLAIN"] ?? "plain";
  return { value: node.value, start, ...name, written: { text: text.slice(start, node.range[1]), style } };
}

/** In a list in brackets a comma parts two values, so that "by 2,5 kg" would be read as "by 2" and "5 kg". */
function tightComma(text: string, before: unknown, after: unknown): number | undefined {
  if (!isScalar(before) || !isScalar(after)) return undefined;
  if (typeof before.value !== "string" && typeof after.value !== "string") return undefined;
  const [from, to] = [before.range?.[1], after.range?.[0]];
  if (from === undefined || to !== from + 1 || text[from] !== ",") return undefined;
  return /\d,\d/.test(text.slice(from - 1, to + 1)) ? from : undefined;
}

function keyWord(key: ParsedNode | null, at: Path, offset: number, faults: Fault[]): string | undefined {
  if (isAlias(key)) {
    faults.push({ code: "yaml/alias", at, offset, found: `*${key.source}` });
    return undefined;
  }
  if (!isScalar(key) || key.source === "" || key.source === undefined || key.source === "__proto__") {
    faults.push({ code: "yaml/key", at, offset });
    return undefined;
  }
  if (key.source === "<<") {
    faults.push({ code: "yaml/merge", at, offset, found: "<<" });
    return undefined;
  }
  if (key.anchor !== undefined) faults.push({ code: "yaml/anchor", at, offset, found: `&${key.anchor}` });
  if (key.tag !== undefined) faults.push({ code: "yaml/tag", at, offset, found: key.tag });
  return key.source;
}

/** YAML would turn 012 into 12 and 1e9 into a thousand million without a word. */
function oddNumber(node: Scalar.Parsed, at: Path, offset: number): Fault | undefined {
  if (node.type !== "PLAIN" || typeof node.value !== "number" || NUMBER.test(node.source)) return undefined;
  const plain = String(node.value);
  return {
    code: "yaml/number",
    at,
    offset,
    found: node.source,
    allowed: "12, 12.5, -3",
    ...(NUMBER.test(plain) ? { maybe: plain } : {}),
  };
}

import {
  type CST,
  isMap,
  isScalar,
  isSeq,
  type Pair,
  parseDocument,
  type Scalar,
  type YAMLMap,
  type YAMLSeq,
} from "yaml";
import type { Path } from "./finding.ts";

export type Node = (Scalar | YAMLMap | YAMLSeq) & { range: [number, number, number] };

/** A YAML text ready to be cut: its tree, and where every part of it stands. */
export interface Cuttable {
  readonly text: string;
  readonly newline: string;
  readonly root: Node;
}

/** @param text YAML that has been read without a problem: no anchors, aliases, tags or tabs */
export function cuttable(text: string): Cuttable {
  const root = parseDocument(text, { keepSourceTokens: true }).contents as Node;
  return { text, newline: text.includes("\r\n") ? "\r\n" : "\n", root };
}

/** @returns the value at a path, or undefined where there is none */
export function nodeAt({ root }: Cuttable, path: Path): Node | undefined {
  let node: Node | undefined = root;
  for (const step of path) node = node && childAt(node, step);
  return node;
}

function childAt(node: Node, step: string | number): Node | undefined {
  if (isMap(node)) return pairOf(node, step)?.value as Node | undefined;
  return isSeq(node) && typeof step === "number" ? (node.items[step] as Node | undefined) : undefined;
}

function pairOf(map: YAMLMap, name: string | number): Pair<Node, Node> | undefined {
  return (map.items as Pair<Node, Node>[]).find(({ key }) => isScalar(key) && key.source === name);
}

/** @returns the names or the number of entries that a collection has, for problems */
export function stepsOf(node: Node | undefined): readonly string[] | number | undefined {
  if (isMap(node)) return (node.items as Pair<Node>[]).map(({ key }) => (isScalar(key) ? String(key.source) : ""));
  return isSeq(node) ? node.items.length : undefined;
}

export function lineStart(text: string, at: number): number {
  return text.lastIndexOf("\n", at - 1) + 1;
}

/** The end of a line, before its break. */
export function lineEnd(text: string, at: number): number {
  const end = text.indexOf("\n", at);
  return end < 0 ? text.length : text[end - 1] === "\r" ? end - 1 : end;
}

export function startOf(node: Node): number {
  if (isMap(node) && !node.flow) return (node.items[0] as Pair<Node>).key.range[0];
  return node.range[0];
}

/** Where the last character of a value stands, without the blanks, comments and blank lines behind it. */
export function endOf(text: string, node: Node): number {
  if (isMap(node) && !node.flow) return endOfPair(text, node, node.items.length - 1);
  if (isSeq(node) && !node.flow) return endOfItem(text, node, node.items.length - 1);
  const [start, end] = node.range;
  return start + text.slice(start, end).trimEnd().length;
}

export function endOfPair(text: string, map: YAMLMap, index: number): number {
  const { key, value } = map.items[index] as Pair<Node, Node | null>;
  const colon = colonOf(map, index);
  return Math.max(key.range[1], colon + 1, value === null || isNothing(value) ? 0 : endOf(text, value));
}

export function endOfItem(text: string, seq: YAMLSeq, index: number): number {
  const item = seq.items[index] as Node | null;
  return Math.max(dashOf(seq, index) + 1, item === null || isNothing(item) ? 0 : endOf(text, item));
}

export function isNothing(node: Node): boolean {
  return isScalar(node) && (node.source ?? "") === "" && node.type === "PLAIN";
}

function tokensOf(collection: YAMLMap | YAMLSeq): readonly CST.CollectionItem[] {
  const token = collection.srcToken as CST.BlockMap | CST.BlockSequence | CST.FlowCollection;
  return token.items as readonly CST.CollectionItem[];
}

export function colonOf(map: YAMLMap, index: number): number {
  const items = tokensOf(map).filter((item) => item.key !== undefined && item.key !== null);
  const colon = items[index]?.sep?.find((token) => token.type === "map-value-ind");
  return colon?.offset ?? -1;
}

export function dashOf(seq: YAMLSeq, index: number): number {
  const dashes = tokensOf(seq).flatMap((item) => item.start.filter((token) => token.type === "seq-item-ind"));
  return dashes[index]?.offset ?? -1;
}

export function columnOf(text: string, at: number): number {
  return at - lineStart(text, at);
}

export function opensLine(text: string, at: number): boolean {
  return text.slice(lineStart(text, at), at).trim() === "";
}

/** @returns which pair of a map has the name; -1 where none has */
export function indexOfPair(map: YAMLMap, name: string | number): number {
  return map.items.indexOf(pairOf(map, name)!);
}

/** Whether a part of the tree stands inside brackets. */
export function inFlow({ root }: Cuttable, path: Path): boolean {
  let node: Node | undefined = root;
  for (const step of path) {
    if (node !== undefined && !isScalar(node) && node.flow) return true;
    node = node && childAt(node, step);
  }
  return false;
}

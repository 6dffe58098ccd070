import { isMap, isScalar, isSeq, type Pair, type Scalar, type YAMLMap, type YAMLSeq } from "yaml";
import type { Json, Path } from "./finding.ts";
import {
  type Cuttable,
  colonOf,
  columnOf,
  dashOf,
  endOf,
  endOfItem,
  endOfPair,
  indexOfPair,
  inFlow,
  isNothing,
  lineEnd,
  lineStart,
  type Node,
  nodeAt,
  opensLine,
  startOf,
} from "./yaml-places.ts";
import { isBranching, type Quotes, writeBlock, writeInline } from "./yaml-write.ts";

/** Put `text` in place of what stands from `start` up to `end`. */
export interface Splice {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

function quotesOf(node: Node): Quotes {
  if (!isScalar(node)) return "plain";
  return node.type === "QUOTE_SINGLE" ? "single" : node.type === "QUOTE_DOUBLE" ? "double" : "plain";
}

function indented(lines: readonly string[], column: number, newline: string): string {
  return lines.map((line) => " ".repeat(column) + line).join(newline);
}

/**
 * The cuts that put a new value where another stands. Comments inside the old value go with it; those around it stay.
 *
 * @param path a path that exists, not the whole text
 */
export function spliceSet(from: Cuttable, path: Path, value: Json): readonly Splice[] {
  const { text, newline } = from;
  const node = nodeAt(from, path)!;
  const parent = nodeAt(from, path.slice(0, -1))!;
  const flow = inFlow(from, path);
  const staysFlow = !isScalar(node) && node.flow === true && node.items.length > 0;
  if (flow || staysFlow || !isBranching(value)) return setInline(from, path, writeInline(value, flow, quotesOf(node)));
  const lines = writeBlock(value);
  if (isSeq(parent)) {
    const dash = dashOf(parent, path.at(-1) as number);
    const start = isNothing(node) ? dash + 1 : startOf(node);
    const column = isNothing(node) ? columnOf(text, dash) + 2 : columnOf(text, start);
    const body = indented(lines, column, newline).trimStart();
    return [{ start, end: endOfItem(text, parent, path.at(-1) as number), text: isNothing(node) ? ` ${body}` : body }];
  }
  const index = indexOfPair(parent as YAMLMap, path.at(-1)!);
  const { key } = (parent as YAMLMap).items[index] as Pair<Node, Node>;
  const column = columnOf(text, key.range[0]) + 2;
  const colonEnd = colonOf(parent as YAMLMap, index) + 1;
  const end = endOfPair(text, parent as YAMLMap, index);
  const keyLineEnd = lineEnd(text, colonEnd);
  const body = newline + indented(lines, column, newline);
  if (!isNothing(node) && startOf(node) > keyLineEnd)
    return [{ start: keyLineEnd, end: lineEnd(text, end), text: body }];
  return [
    { start: colonEnd, end, text: "" },
    { start: lineEnd(text, end), end: lineEnd(text, end), text: body },
  ];
}

function setInline(from: Cuttable, path: Path, written: string): readonly Splice[] {
  const { text } = from;
  const node = nodeAt(from, path)!;
  const parent = nodeAt(from, path.slice(0, -1))!;
  const step = path.at(-1)!;
  const opener = isMap(parent)
    ? colonOf(parent, indexOfPair(parent, step)) + 1
    : dashOf(parent as YAMLSeq, step as number) + 1;
  if (isNothing(node)) return [{ start: opener, end: opener, text: ` ${written}` }];
  const branching = !isScalar(node) && !node.flow;
  if (!branching || !isMap(parent)) return [{ start: startOf(node), end: endOf(text, node), text: written }];
  return [
    { start: opener, end: opener, text: ` ${written}` },
    { start: lineEnd(text, opener), end: lineEnd(text, endOf(text, node)), text: "" },
  ];
}

/** Names of a map in the order of the file's own form; names that are not among them come last. */
export type NameOrder = readonly string[];

/** The cuts that give a map a name that it has not. */
export function spliceAdd(
  from: Cuttable,
  mapPath: Path,
  name: string,
  value: Json,
  order: NameOrder,
): readonly Splice[] {
  const { text, newline } = from;
  const map = nodeAt(from, mapPath) as YAMLMap & Node;
  const rank = (one: string) => (order.includes(one) ? order.indexOf(one) : order.length);
  const before = (map.items as Pair<Node>[]).findLastIndex(
    ({ key }) => rank(String((key as Scalar).source)) <= rank(name),
  );
  const flow = inFlow(from, [...mapPath, name]);
  if (map.items.length === 0) return spliceWhole(from, mapPath, { [name]: value });
  if (flow) {
    const written = writeInline({ [name]: value }, true).slice(1, -1);
    if (before < 0) return [insert(startOf((map.items[0] as Pair<Node>).key), `${written}, `)];
    return [insert(endOfPair(text, map, before), `, ${written}`)];
  }
  const column = columnOf(text, startOf(map));
  const lines = indented(writeBlock({ [name]: value }), column, newline);
  if (before < 0) return [insert(startOf(map), `${lines.trimStart()}${newline}${" ".repeat(column)}`)];
  return [insert(lineEnd(text, endOfPair(text, map, before)), newline + lines)];
}

/** The cuts that put an entry into a list before the one that stands there, or at its end. */
export function spliceInsert(from: Cuttable, listPath: Path, index: number, value: Json): readonly Splice[] {
  const { text, newline } = from;
  const list = nodeAt(from, listPath) as YAMLSeq & Node;
  if (list.items.length === 0) return spliceWhole(from, listPath, [value]);
  if (inFlow(from, [...listPath, 0])) {
    const written = writeInline(value, true);
    if (index === 0) return [insert(startOf(list.items[0] as Node), `${written}, `)];
    return [insert(endOf(text, list.items[index - 1] as Node), `, ${written}`)];
  }
  const first = dashOf(list, 0);
  const column = columnOf(text, first);
  const lines = indented(writeBlock([value]), column, newline);
  if (index > 0) return [insert(lineEnd(text, endOfItem(text, list, index - 1)), newline + lines)];
  return [insert(first, `${lines.trimStart()}${newline}${" ".repeat(column)}`)];
}

/** An empty list or map gets its first entry, so that all of it is written anew. */
function spliceWhole(from: Cuttable, path: Path, value: Json): readonly Splice[] {
  if (path.length > 0) return spliceSet(from, path, value);
  const text = writeBlock(value).join(from.newline);
  return [{ start: from.root.range[0], end: from.root.range[1], text }];
}

function insert(at: number, text: string): Splice {
  return { start: at, end: at, text };
}

/** The cuts that take a name out of a map or an entry out of a list. The last one leaves empty brackets. */
export function spliceRemove(from: Cuttable, path: Path): readonly Splice[] {
  const { text } = from;
  const parentPath = path.slice(0, -1);
  const parent = nodeAt(from, parentPath) as (YAMLMap | YAMLSeq) & Node;
  const step = path.at(-1)!;
  const index = isMap(parent) ? indexOfPair(parent, step) : (step as number);
  const start = (i: number) => {
    if (isMap(parent)) return (parent.items[i] as Pair<Node>).key.range[0];
    return parent.flow ? startOf(parent.items[i] as Node) : dashOf(parent, i);
  };
  const end = (i: number) => {
    if (isMap(parent)) return endOfPair(text, parent, i);
    return parent.flow ? endOf(text, parent.items[i] as Node) : endOfItem(text, parent, i);
  };
  if (parent.items.length === 1) {
    const empty = isMap(parent) ? "{}" : "[]";
    if (parentPath.length === 0) return [{ start: startOf(parent), end: endOf(text, parent), text: empty }];
    const holder = nodeAt(from, parentPath.slice(0, -1))!;
    if (parent.flow || !isMap(holder)) return setInline(from, parentPath, empty);
    // Comments above the last entry stay, as those above any other do.
    const opener = colonOf(holder, indexOfPair(holder, parentPath.at(-1)!)) + 1;
    return [insert(opener, ` ${empty}`), cutLines(text, start(index), end(index))];
  }
  const isLast = index === parent.items.length - 1;
  if (parent.flow) {
    const behind = text.slice(end(index), lineEnd(text, end(index)));
    if (opensLine(text, start(index)) && /^\s*,\s*(?:#.*)?$/.test(behind)) {
      return [cutLines(text, start(index), end(index))];
    }
    if (!isLast) return [cut(start(index), start(index + 1))];
    // A comma may stay before the closing bracket, and does where a comment could stand behind it.
    const isAlone = text.slice(end(index - 1), start(index)).includes("\n");
    return [cut(isAlone ? start(index) : end(index - 1), end(index))];
  }
  if (opensLine(text, start(index))) return [cutLines(text, start(index), end(index))];
  // It shares its line with the dash of a list: the next one moves up to the dash, unless a comment stands between.
  const between = text.slice(end(index), start(index + 1));
  if (between.trim() === "") return [cut(start(index), start(index + 1))];
  return [cut(/^\s*\n/.test(between) ? start(index) - 1 : start(index), end(index))];
}

function cut(start: number, end: number): Splice {
  return { start, end, text: "" };
}

function cutLines(text: string, start: number, end: number): Splice {
  const from = lineStart(text, start);
  const next = text.indexOf("\n", end);
  if (next >= 0) return cut(from, next + 1);
  return cut(from >= 2 && text[from - 2] === "\r" ? from - 2 : Math.max(from - 1, 0), text.length);
}

/** @returns the text with all cuts made; they must not overlap */
export function cutText(text: string, splices: readonly Splice[]): string {
  let after = text;
  for (const { start, end, text: put } of [...splices].sort((a, b) => b.start - a.start || b.end - a.end)) {
    after = after.slice(0, start) + put + after.slice(end);
  }
  return after;
}

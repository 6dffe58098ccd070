import type { Block, Dose, Path, Programme, WarmUp } from "../../model/index.ts";

/** A change to a programme in the terms of the model. All paths are those of the programme before any of the changes. */
export type Change =
  | {
      readonly op: "set";
      readonly at: Path;
      readonly value: Dose | Block | readonly WarmUp[] | readonly number[] | string | number;
    }
  | { readonly op: "insert"; readonly at: Path; readonly value: Block }
  | { readonly op: "remove"; readonly at: Path };

function setAt(node: unknown, at: Path, value: unknown): unknown {
  const [key, ...rest] = at;
  if (key === undefined) return value;
  if (Array.isArray(node)) {
    const copy = [...node];
    copy[Number(key)] = setAt(copy[Number(key)], rest, value);
    return copy;
  }
  const object = node as Record<string, unknown>;
  return { ...object, [key]: setAt(object[key], rest, value) };
}

function valueAt(node: unknown, at: Path): unknown {
  return at.reduce<unknown>((inner, key) => (inner as Record<string | number, unknown> | undefined)?.[key], node);
}

/** Later positions first, so that a place taken out or put in moves nothing that is still to be done. */
function backwards(a: Change, b: Change): number {
  return Number(b.at.at(-1)) - Number(a.at.at(-1));
}

/**
 * A programme with changes made. The programme given stays as it is; what is not touched is shared.
 *
 * @param changes a place is put in or taken out of a list, or something that need not be said is taken out
 */
export function changed(programme: Programme, changes: readonly Change[]): Programme {
  let after: unknown = programme;
  for (const change of changes) if (change.op === "set") after = setAt(after, change.at, change.value);
  for (const change of changes.filter((each) => each.op !== "set").sort(backwards)) {
    const list = change.at.slice(0, -1);
    const key = change.at.at(-1);
    if (typeof key === "string") {
      const { [key]: _, ...rest } = valueAt(after, list) as Readonly<Record<string, unknown>>;
      after = setAt(after, list, rest);
      continue;
    }
    const copy = [...(valueAt(after, list) as readonly unknown[])];
    const index = Number(change.at.at(-1));
    if (change.op === "insert") copy.splice(index, 0, change.value);
    else copy.splice(index, 1);
    after = setAt(after, list, copy);
  }
  return after as Programme;
}

import { useState } from "react";
import type { Case } from "../decision/index.ts";

const nameOf = ({ item }: Case) => item.proposal.proposal;

/** Which of the open decisions are marked, to be taken at once. A stop is never marked by "all". */
export function useMarks(open: readonly Case[]) {
  const [names, setNames] = useState<ReadonlySet<string>>(new Set());
  const marked = open.filter((of) => names.has(nameOf(of)));
  const markable = open.filter(({ item }) => !item.stop);
  const none = () => setNames(new Set());
  const turn = (of: Case) =>
    setNames((was) => {
      const next = new Set(was);
      if (!next.delete(nameOf(of))) next.add(nameOf(of));
      return next;
    });
  const allOrNone = () => (marked.length > 0 ? none() : setNames(new Set(markable.map(nameOf))));
  return { names, marked, markable: markable.length, none, turn, allOrNone };
}

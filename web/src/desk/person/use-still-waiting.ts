import type { MorningItem } from "@stave/core/api";
import { useRef } from "react";
import { type Deeds, isRefused } from "../decision/index.ts";

/** What waits, and in its old place what was answered on this page. */
export function useStillWaiting(fresh: readonly MorningItem[], deeds: Deeds): readonly MorningItem[] {
  const shown = useRef(fresh);
  const nameOf = (item: MorningItem) => item.proposal.proposal;
  const now = new Map(fresh.map((item) => [nameOf(item), item]));
  const old = shown.current.filter(
    (item) => now.has(nameOf(item)) || (deeds.has(nameOf(item)) && !isRefused(deeds.get(nameOf(item)))),
  );
  const was = new Set(old.map(nameOf));
  shown.current = [
    ...old.map((item) => now.get(nameOf(item)) ?? item),
    ...fresh.filter((item) => !was.has(nameOf(item))),
  ];
  return shown.current;
}

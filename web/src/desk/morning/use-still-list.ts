import type { Morning } from "@stave/core/api";
import { useLayoutEffect, useRef, useState } from "react";
import { focusRow, rowInFocus } from "../keys/index.ts";
import { arrange, sameRows } from "./arrange.ts";

/**
 * The list as it may be shown: a newer one waits while it would move something under the coach's hand.
 *
 * @param kept proposals that were answered on this page
 * @param held true while a dialog is open or the pointer is over the list
 */
export function useStillList(fresh: Morning | undefined, kept: ReadonlySet<string>, held: boolean) {
  const [shown, setShown] = useState(fresh);
  const focused = useRef<string | undefined>(undefined);
  const next =
    fresh === undefined || shown === undefined
      ? fresh
      : { ...fresh, people: arrange(shown.people, fresh.people, kept) };
  const waits = next !== undefined && shown !== undefined && held && !sameRows(shown.people, next.people);
  const show = () => {
    focused.current = rowInFocus();
    setShown(next);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: `next` is made of these, anew each time
  useLayoutEffect(() => {
    if (!waits) show();
  }, [fresh, kept, waits]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: after each list; a row that was moved has lost the focus
  useLayoutEffect(() => {
    if (document.activeElement === document.body && focused.current !== undefined) focusRow(focused.current);
  }, [shown]);
  return { shown, waits, show };
}

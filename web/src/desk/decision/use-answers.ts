import { useState } from "react";
import { focusRow, rowNames } from "../keys/index.ts";
import { isOpen } from "./deeds.ts";
import { keepDraft } from "./draft.ts";
import { nextRow } from "./next-row.ts";
import { type Case, useDeeds, type Verdict } from "./use-deeds.ts";

/** The answers of one page, with the dialog of other answers, and the focus where the hand goes next. */
export function useAnswers() {
  const { deeds, decide, pin, undo, undoLast } = useDeeds();
  const [other, setOther] = useState<Case | undefined>();

  const answer = async (cases: readonly Case[], verdict: Verdict) => {
    const answered = new Set(cases.map(({ item }) => item.proposal.proposal));
    const next = nextRow(rowNames(), answered, (row) => isOpen(deeds.get(row)));
    setOther(undefined);
    const sent = decide(cases, verdict);
    // After the dialog has given the focus back.
    setTimeout(() => {
      if (next === undefined || !focusRow(next)) document.querySelector<HTMLElement>("main h1")?.focus();
    });
    if (await sent) for (const proposal of answered) keepDraft(proposal, "");
  };
  const acts = {
    take: (of: Case) => void answer([of], { kind: "accepted" }),
    refuse: (of: Case) => void answer([of], { kind: "refused" }),
    other: setOther,
    undo: (deed: Parameters<typeof undo>[0][number]) => void undo([deed]),
  };
  return { deeds, answer, acts, other, closeOther: () => setOther(undefined), pin, undo, undoLast };
}

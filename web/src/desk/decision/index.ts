/** A proposal and the coach's answer to it, wherever it is shown. */
export { DecisionRow, type RowActs } from "./decision-row.tsx";
export { type Deed, type Deeds, isOpen, isRefused, type Undoable } from "./deeds.ts";
export { keepDraft, readDraft } from "./draft.ts";
export { OtherDialog } from "./other-dialog.tsx";
export { sayPatch } from "./say-patch.ts";
export { type Slip, typedAnswer } from "./typed-answer.ts";
export { TypedField } from "./typed-field.tsx";
export { useAnswers } from "./use-answers.ts";
export type { Case, Verdict } from "./use-deeds.ts";

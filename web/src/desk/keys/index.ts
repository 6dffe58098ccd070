/** The keys: what is a row, what is typing, and the page that tells of them. */
export { isTyping, letterOf } from "./typing.ts";
export { useLetters } from "./use-letters.ts";
export { focusRow, ROW, rowInFocus, rowNames, useRows } from "./use-rows.ts";

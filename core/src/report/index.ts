/** What documents say, as data. */
export { afterDose, easyDose, slotDose } from "./dose-words.ts";
export { type LoadLine, loadLine, loadWords } from "./load-line.ts";
export * from "./report.ts";
export * from "./report-types.ts";
export * from "./request-page.ts";
export * from "./sheet.ts";
export type { SheetDates } from "./sheet-columns.ts";
export type * from "./sheet-types.ts";

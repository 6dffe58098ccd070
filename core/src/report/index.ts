export { type LoadLine, loadLine } from "./load-line.ts";
export * from "./sheet.ts";
export { nameOnSheet } from "./who.ts";

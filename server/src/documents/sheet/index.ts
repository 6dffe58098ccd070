export { Press } from "./press.ts";

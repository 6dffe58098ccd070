/** The way to the server: one sender at a time, again and again until each event is acknowledged. */
export { exchangeLink } from "./ask.ts";
export { backOff } from "./back-off.ts";
export { Sender, type SenderState } from "./sender.ts";

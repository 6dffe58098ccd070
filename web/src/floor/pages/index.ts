/** The pages of the phone. */
export { Body, Frame } from "./frame.tsx";
export { LinkPage } from "./link-page.tsx";
export { runningSession } from "./running.ts";
export { SessionPage } from "./session-page.tsx";
export { TodayPage } from "./today-page.tsx";

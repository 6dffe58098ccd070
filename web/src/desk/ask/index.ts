/** The server, as the pages see it: questions, answers, faults, and word of every change. */
export { type Answer, ask, tell } from "./ask.ts";
export { type Fault, sayFault } from "./fault.ts";
export { Live } from "./live.ts";
export { newId } from "./new-id.ts";
export { LiveContext, useLiveState } from "./use-live.ts";
export { type Loaded, useLoaded } from "./use-loaded.ts";

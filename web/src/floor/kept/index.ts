/** What this phone keeps, in IndexedDB: who it is, the bundle, what happened, what the thumb did. */
export { keepBundle } from "./bundles.ts";
export { keepFates, keepTheirs, unsentEvents } from "./fates.ts";
export { leaveForgotten } from "./leave.ts";
export { comingDevice, keepLinked } from "./link.ts";
export { makeId, makeToken } from "./made.ts";
export { type Device, type Fate, type Kept, type KeptBundle, type KeptEvent, openKept } from "./open.ts";
export { type AllKept, readAll } from "./read-all.ts";
export { type Change, record, type Said } from "./record.ts";
export { keepAloud, touchDraft } from "./touch.ts";

export { OpenStoreError } from "./engine.ts";
export { openStore } from "./open-store.ts";
export * from "./store.ts";

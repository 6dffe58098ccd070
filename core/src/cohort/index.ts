export { type Seen, seer } from "./seer.ts";

/** A coach's own rule run over records: what it would have said when, and what can be seen of it. */
export { type Occasion, type Outcome, type Replayed, type ReplayPerson, replay, type Seen } from "./replay.ts";
export { type Rule, readRule, TWO_FOR_TWO } from "./rule.ts";
export type { Move } from "./say-next.ts";

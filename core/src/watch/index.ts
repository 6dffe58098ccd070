/** What a person's record tells a coach who looks every morning. */
export { WATCH_CODES, type WatchCode } from "./reasons.ts";
export { RULE_CODES, type RuleCase, type RuleCode, ruleLeaves } from "./rule-leaves.ts";
export { TREND_WEEKS, type Trend, trendOf } from "./trend.ts";
export { type Watched, watch } from "./watch.ts";
export type { WatchInput } from "./watch-input.ts";

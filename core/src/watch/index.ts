/** What a person's record tells a coach who looks every morning. */
export { WATCH_CODES, type WatchCode } from "./reasons.ts";
export { TREND_WEEKS, type Trend, trendOf } from "./trend.ts";
export { type Watched, watch } from "./watch.ts";
export type { WatchInput } from "./watch-input.ts";

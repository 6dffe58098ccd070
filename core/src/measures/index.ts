/** Every figure that is computed from a programme or a plan: each is defined here once and nowhere else. */
export * from "./asked-amount.ts";
export * from "./asked-session.ts";
export * from "./balance.ts";
export * from "./block-seconds.ts";
export * from "./capacity-of.ts";
export * from "./exposures.ts";
export * from "./fold-record.ts";
export * from "./hard-muscles.ts";
export * from "./lanes-trained.ts";
export * from "./light-week.ts";
export * from "./ramp.ts";
export type * from "./record.ts";
export * from "./session-load.ts";
export * from "./session-seconds.ts";
export * from "./set-quarters.ts";
export * from "./set-seconds.ts";
export * from "./slot-history.ts";
export * from "./weekly-sets.ts";

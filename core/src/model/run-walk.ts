/** What ended a run, or that nothing did. Pain that grows while running is another thing than tired legs. */
export const RUN_ENDS = ["done", "breath", "legs", "pain"] as const;
export type RunEnd = (typeof RUN_ENDS)[number];

/** The levels of running and walking in turn, first to last; what each asks for is in `tables`. */
export const RUN_WALK_BOUNDS = { from: 1, to: 9 } as const;

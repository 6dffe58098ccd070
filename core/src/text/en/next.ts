/** What stands beside the next dose of a slot. */
export const nextWords = {
  up: "more is asked.",
  stay: "stays as it is.",
  down: "less is asked.",
  unknown: "what comes next cannot be told.",
  lightNone: "Light week: none is proposed.",
  lightUnknown: "Light week: cannot judge.",
  refused: "Not now:",
  other: "Or:",
} as const;

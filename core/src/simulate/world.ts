/** How many repetitions to failure a share of the maximum allows; shares over 1 allow none. */
export type RepCurve = "thirtieths" | "exponential";

/**
 * A made-up world in which ways of coaching are tried. Shares are of 1, standard deviations of the logarithm of the
 * maximum unless said otherwise. The figures of `WORLDS` are those of the sources or ours; a world is no claim about
 * people, and what holds in all of them may still fail in the gym.
 */
export interface World {
  readonly id: string;
  /** Weeks already trained before the first session: the published gain curve is entered there. */
  readonly trainedWeeks: readonly [number, number];
  /** Factor on the published gain, from person to person; 0 to 0 is a world without any trend. */
  readonly gain: readonly [number, number];
  readonly curve: RepCurve;
  /** Day to day, from person to person. */
  readonly daySd: readonly [number, number];
  /** How much of today's deviation is carried into the next session. */
  readonly carried: number;
  /** Single sessions missed. */
  readonly missed: number;
  /** Weeks in which an absence of 1 to 4 weeks begins. */
  readonly away: number;
  /** Age 60 or more loses from the first week off. */
  readonly older: boolean;
  /** Stated minus true repetitions in reserve: mean over people, spread over people. */
  readonly reserveBias: readonly [mean: number, sd: number];
  /** How often reserve is not said. */
  readonly reserveUnsaid: number;
  /** How often a set that fell short of what was asked is not written down. */
  readonly hidesFailure: number;
  /** Smallest step of the loads that exist, kg. */
  readonly stepKg: number;
  /** Share of sets whose load was typed ten times too high. */
  readonly slips: number;
}

const MATCHED: World = {
  id: "matched",
  trainedWeeks: [0, 60],
  gain: [0.4, 1.6],
  curve: "thirtieths",
  daySd: [0.02, 0.05],
  carried: 0,
  missed: 0.08,
  away: 0.04,
  older: false,
  reserveBias: [-0.95, 0.5],
  reserveUnsaid: 0.15,
  hidesFailure: 0,
  stepKg: 2.5,
  slips: 0,
};

/**
 * The worlds, frozen: an estimator is never tuned by changing them.
 *
 * Misses, absences and slips are ours.
 *
 * @source grgic2020, halperin2022, steele2023, halonen2024, ours
 */
export const WORLDS: readonly World[] = [
  MATCHED,
  { ...MATCHED, id: "fast gains", trainedWeeks: [0, 2], gain: [1, 2] },
  { ...MATCHED, id: "slow gains", trainedWeeks: [100, 300] },
  { ...MATCHED, id: "no trend", gain: [0, 0] },
  { ...MATCHED, id: "other rep curve", curve: "exponential" },
  { ...MATCHED, id: "days that hang together", carried: 0.6 },
  { ...MATCHED, id: "many misses", missed: 0.35, away: 0.1 },
  { ...MATCHED, id: "steady days", daySd: [0.01, 0.02] },
  { ...MATCHED, id: "coarse loads", stepKg: 5 },
  { ...MATCHED, id: "hides failure", hidesFailure: 0.7 },
  { ...MATCHED, id: "reserve said straight", reserveBias: [0, 0.5] },
  { ...MATCHED, id: "reserve seldom said", reserveUnsaid: 0.8 },
  { ...MATCHED, id: "older", older: true, gain: [0.4, 1.2], away: 0.08 },
  { ...MATCHED, id: "slips of the pen", slips: 0.02 },
];

/** The 20 counted muscle groups, in plain words. They are the rows of every weekly count. */
export const MUSCLES = [
  "chest",
  "front shoulder",
  "side shoulder",
  "rear shoulder",
  "rotator cuff",
  "lats",
  "mid back",
  "upper traps",
  "biceps",
  "triceps",
  "forearm",
  "front trunk",
  "side trunk",
  "low back",
  "buttocks",
  "side hip",
  "inner thigh",
  "front thigh",
  "back thigh",
  "calf",
] as const;
export type Muscle = (typeof MUSCLES)[number];

/** 1 where the muscle drives the movement and may end the set, 0.5 where it helps. Nothing else is counted. */
export type MuscleShare = 1 | 0.5;
export type MuscleShares = Readonly<Partial<Record<Muscle, MuscleShare>>>;

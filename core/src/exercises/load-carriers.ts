import type { Equipment, Exercise, LoadMeaning } from "../model/index.ts";

const STACKS: readonly Equipment[] = [
  ...(["cable", "pull-down machine", "row machine", "leg press", "hack squat machine", "leg curl machine"] as const),
  ...(["leg extension machine", "chest press machine", "chest fly machine", "shoulder press machine"] as const),
  ...(["hip abduction machine", "calf machine"] as const),
];
const IN_HAND: readonly Equipment[] = ["dumbbell", "kettlebell", "weighted ball", "sandbag", "bag", "backpack"];
const BARS: readonly Equipment[] = ["barbell", "curl bar", "hex bar", "guided-bar rack", "angled bar"];

/** What carries the number beside an exercise; meanings without a number are missing. */
const CARRIERS: Readonly<Partial<Record<LoadMeaning, readonly Equipment[]>>> = {
  total: [...BARS, "sled", "plates", "hack squat machine", "leg press"],
  "per hand": IN_HAND,
  "one implement": [...IN_HAND, "plates"],
  stack: STACKS,
  "added to body": [...IN_HAND, "weight vest", "dip belt", "ankle weight", "plates"],
  assist: ["assisted pull-up machine"],
  band: ["band"],
};

/** @returns the equipment of which one has to be needed, when what is needed cannot carry the number; else undefined */
export function missingCarrier({
  loadMeaning,
  needs,
}: Pick<Exercise, "loadMeaning" | "needs">): readonly Equipment[] | undefined {
  const carriers = CARRIERS[loadMeaning];
  if (carriers === undefined || needs.some((group) => group.some((each) => carriers.includes(each)))) return undefined;
  return carriers;
}

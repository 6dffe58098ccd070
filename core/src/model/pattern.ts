/** Movement patterns, by the shape of the movement. No standards body publishes one list: ours, from trade terms. */
export const PATTERNS = [
  "squat",
  "hinge",
  "bridge",
  "single leg",
  "horizontal push",
  "vertical push",
  "horizontal pull",
  "vertical pull",
  "carry",
  "rotation",
  "anti-rotation",
  "anti-extension",
  "anti-lateral flexion",
  "mixed hold",
  "trunk flexion and extension",
  "jump",
  "throw",
  "power lift",
  "upper isolation",
  "lower isolation",
  "locomotion",
  "mobility",
  "balance",
] as const;
export type Pattern = (typeof PATTERNS)[number];

/** The lanes a week is drawn in. Every pattern that a beginner must train has one; the rest stand in "other". */
export const LANES = ["squat", "hinge", "single leg", "push", "pull", "trunk", "carry or conditioning"] as const;
export type Lane = (typeof LANES)[number];

const LANE_OF: Partial<Record<Pattern, Lane>> = {
  squat: "squat",
  hinge: "hinge",
  bridge: "hinge",
  "single leg": "single leg",
  "horizontal push": "push",
  "vertical push": "push",
  "horizontal pull": "pull",
  "vertical pull": "pull",
  carry: "carry or conditioning",
  locomotion: "carry or conditioning",
  rotation: "trunk",
  "anti-rotation": "trunk",
  "anti-extension": "trunk",
  "anti-lateral flexion": "trunk",
  "mixed hold": "trunk",
  "trunk flexion and extension": "trunk",
};

/** @returns the lane of a pattern, or undefined for isolation, jumps, throws, mobility and balance */
export function laneOf(pattern: Pattern): Lane | undefined {
  return LANE_OF[pattern];
}

const NEIGHBOURS: readonly (readonly [Pattern, Pattern])[] = [
  ["squat", "single leg"],
  ["hinge", "bridge"],
  ["horizontal push", "vertical push"],
  ["horizontal pull", "vertical pull"],
  ["anti-extension", "anti-lateral flexion"],
  ["anti-extension", "anti-rotation"],
  ["anti-extension", "trunk flexion and extension"],
  ["anti-rotation", "anti-lateral flexion"],
  ["anti-rotation", "rotation"],
  ["carry", "anti-lateral flexion"],
];

/** @returns true when one pattern may stand in for the other if the wanted one has no form for this person */
export function areNeighbours(a: Pattern, b: Pattern): boolean {
  return NEIGHBOURS.some(([x, y]) => (x === a && y === b) || (x === b && y === a));
}

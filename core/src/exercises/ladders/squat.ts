import type { Ladder } from "../../model/index.ts";

export const SQUAT_LADDER: Ladder = {
  id: "squat",
  name: "Squat",
  start: "body-squat",
  steps: [],
};

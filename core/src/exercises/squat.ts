import type { Exercise } from "../model/index.ts";
import { entry } from "./entry.ts";

/** The squat ladder, from rising out of a high seat to one leg alone. */
export const SQUAT: readonly Exercise[] = [
  entry({
    id: "body-squat",
    name: "Body squat to parallel",
    synonyms: ["air squat", "free squat", "knee-dominant"],
    pattern: "squat",
    limb: "two legs",
    position: "standing",
    muscles: { "front thigh": 1, buttocks: 1, "inner thigh": 0.5 },
    loadMeaning: "body only",
    bodyShare: { share: 0.88, source: "deLeva1996" },
    need: { count: { of: "touch-and-go-squat", reps: 12 }, conditions: ["heels stay down"] },
    stress: { hip_deep: 2, knee_deep: 2, ankle_df: 2, balance: 1, pressor: 1, abd_press: 1 },
    setUp: "Stand with the feet a little wider than the hips, toes turned out slightly, arms free to reach forward.",
    move: "Lower between the feet until the thighs are level with the floor, then stand up to full height.",
    cues: ["Lower your belt between your shoes", "Spread the floor with your shoes", "Rise like a lift, straight up"],
    faults: [
      ["Heels come off the floor", "Ankles bend little, or the stance is narrow", "Put a small wedge under the heels"],
      ["Stops well above level", "Depth is not trusted yet", "Set a low box behind as a target"],
      ["Falls forward on the way up", "Weight has moved to the toes", "Hold a door frame and slow the rise"],
    ],
  }),
];

import type { Exercise } from "../model/index.ts";
import { entry } from "./entry.ts";

/** Feet leave the floor. Counted in contacts and never in weekly sets. */
export const JUMP: readonly Exercise[] = [
  entry({
    id: "low-box-jump",
    name: "Jump onto low box",
    synonyms: ["box jump", "jump up 20–30 cm"],
    pattern: "jump",
    limb: "two legs",
    position: "standing",
    muscles: {},
    needs: [["box", "step"]],
    loadMeaning: "height",
    need: { count: { of: "body-squat", reps: 15 }, conditions: ["no pain", "a drop into a half squat lands quietly"] },
    stress: { impact: 2, knee_deep: 1, hip_deep: 1, balance: 1, head_quick: 1, pressor: 1, abd_press: 1 },
    fixed: true,
    setUp: "A steady box of 20 to 30 cm, half a step in front of you, ceiling and floor clear.",
    move: "Dip, swing the arms, land with both whole feet on the box in a soft squat; step down one foot at a time.",
    cues: ["Land like a cat on a shelf", "Leave the launch pad with both feet", "Step off, save the jump down"],
    faults: [
      ["Only the toes reach the box", "Take-off is too far away", "Begin a hand's width closer"],
      ["Lands in a deep crouch", "Box is higher than the jump", "Lower the box until the landing is a quarter squat"],
      ["Jumps back down", "Hurrying the contacts", "Walk around the box before the next one"],
    ],
  }),
  entry({
    id: "jump-squat",
    name: "Squat jump",
    synonyms: ["jump squat", "jump on the spot and stick"],
    pattern: "jump",
    limb: "two legs",
    position: "standing",
    muscles: {},
    needs: ["floor"],
    loadMeaning: "body only",
    need: {
      count: { of: "low-box-jump", reps: 15 },
      conditions: ["landings are quiet", "goblet squat is owned"],
    },
    stress: { impact: 2, knee_deep: 2, hip_deep: 1, balance: 1, head_quick: 1, pressor: 1, abd_press: 2 },
    fixed: true,
    setUp: "Stand with feet hip-width on a floor that gives a little, arms ready to swing.",
    move: "Dip to a half squat, jump straight up, land on both feet in the same dip, and hold it still.",
    cues: ["Land as if the baby sleeps", "Reach for the lamp, then freeze", "Both shoes touch down in one beat"],
    faults: [
      ["Landing is loud", "Legs are stiff on contact", "Jump half as high and listen"],
      [
        "Knees clap together on landing",
        "Strength or attention is short",
        "Step down from a low box and hold, without a jump",
      ],
      ["Travels forward with each jump", "Take-off leans", "Draw a square on the floor and stay inside"],
    ],
  }),
];

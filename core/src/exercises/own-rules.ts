import type { Exercise, Path, Pattern, Position } from "../model/index.ts";
import { missingCarrier } from "./load-carriers.ts";

/** What is wrong with one entry by the rules that the catalogue itself keeps. */
export interface EntryFault {
  readonly at: Path;
  readonly code: (typeof OWN_PROBLEMS)[number];
  readonly found?: string;
  readonly allowed?: string;
}

/** What can be wrong with a coach's own entries beyond the form of their values. Each names a sentence. */
export const OWN_PROBLEMS = [
  "own/taken",
  "own/name-taken",
  "own/name",
  "own/words",
  "own/cue-says-not",
  "own/same-cue",
  "own/fault-taken",
  "own/muscles",
  "own/no-muscles",
  "own/muscles-uncounted",
  "own/floor",
  "own/each-side",
  "own/load",
  "own/gate-self",
  "own/not-on-ladder",
  "own/no-easier",
  "own/cycle",
  "own/stress-unsaid",
  "own/hold",
  "own/stress-lower",
  "own/changed-twice",
] as const;

const UNCOUNTED: readonly Pattern[] = ["mobility", "balance", "locomotion", "jump", "throw"];
const LOW: readonly Position[] = ["supine", "prone", "side-lying", "hands and knees", "half-kneeling", "tall-kneeling"];
const MOST = { setUp: 25, move: 30, cue: 8, direct: 3, helping: 4 };
const LEAST = 4;
const SAYS_NOT = /\b(don['’]?t|do not|not|never|avoid)\b/i;

function count(text: string): number {
  return text.split(/\s+/).filter(Boolean).length;
}

function wordFaults({ setUp, move, cues }: Exercise): readonly EntryFault[] {
  const sized = (at: Path, text: string, most: number): readonly EntryFault[] =>
    count(text) >= LEAST && count(text) <= most
      ? []
      : [{ at, code: "own/words", found: String(count(text)), allowed: `${LEAST}–${most}` }];
  return [
    ...sized(["set-up"], setUp, MOST.setUp),
    ...sized(["move"], move, MOST.move),
    ...cues.flatMap((cue, at): readonly EntryFault[] => [
      ...(count(cue) <= MOST.cue
        ? []
        : [{ at: ["cues", at], code: "own/words" as const, found: String(count(cue)), allowed: `1–${MOST.cue}` }]),
      ...(SAYS_NOT.test(cue) ? [{ at: ["cues", at], code: "own/cue-says-not" as const, found: cue }] : []),
      ...(cues.indexOf(cue) === at ? [] : [{ at: ["cues", at], code: "own/same-cue" as const, found: cue }]),
    ]),
  ];
}

function muscleFaults({ muscles, pattern }: Exercise): readonly EntryFault[] {
  const shares = Object.values(muscles);
  const at = ["muscles"];
  if (UNCOUNTED.includes(pattern)) {
    return shares.length === 0 ? [] : [{ at, code: "own/muscles-uncounted", found: pattern }];
  }
  if (shares.length === 0) return [{ at, code: "own/no-muscles", found: pattern }];
  const [direct, helping] = [1, 0.5].map((share) => shares.filter((each) => each === share).length) as [number, number];
  const fine = direct <= MOST.direct && helping <= MOST.helping;
  const allowed = `1: 0–${MOST.direct}, 0.5: 0–${MOST.helping}`;
  return fine ? [] : [{ at, code: "own/muscles", found: `1: ${direct}, 0.5: ${helping}`, allowed }];
}

/** @returns what is wrong with an entry by itself, whatever else stands in the catalogue */
export function entryFaults(exercise: Exercise): readonly EntryFault[] {
  const { name, position, stress, limb, eachSide, need, id, loadMeaning, amounts, hold } = exercise;
  const carriers = missingCarrier(exercise);
  const sentenceCase = /^[\p{Lu}\d]/u.test(name) && name.length <= 40;
  return [
    ...(sentenceCase ? [] : [{ at: ["name"], code: "own/name" as const, found: name, allowed: "≤ 40" }]),
    ...wordFaults(exercise),
    ...muscleFaults(exercise),
    ...(LOW.includes(position) && !((stress.floor ?? 0) >= 1)
      ? [{ at: ["stress"], code: "own/floor" as const, found: position, allowed: "floor: 1–3" }]
      : []),
    ...(/^one |^split/.test(limb) && !eachSide
      ? [{ at: ["each side"], code: "own/each-side" as const, found: limb }]
      : []),
    ...(carriers === undefined
      ? []
      : [{ at: ["needs"], code: "own/load" as const, found: loadMeaning, allowed: carriers.join(", ") }]),
    ...(need.count?.of === id ? [{ at: ["gate", "of"], code: "own/gate-self" as const, found: id }] : []),
    ...((amounts === "hold") === (hold !== undefined)
      ? []
      : [{ at: ["hold"], code: "own/hold" as const, found: amounts }]),
  ];
}

import type {
  AmountKind,
  Goal,
  Lane,
  Muscle,
  Pattern,
  Severity,
  Statement,
  Status,
  StressTag,
} from "../../model/index.ts";
import { MUSCLES, PATTERNS } from "../../model/index.ts";
import type { Before, Readiness } from "../../screen/index.ts";

/** In English these are called what the files call them; another language has words of its own. */
function asWritten<Name extends string>(names: readonly Name[]): Readonly<Record<Name, string>> {
  return Object.fromEntries(names.map((name) => [name, name])) as unknown as Record<Name, string>;
}

export const muscles: Readonly<Record<Muscle, string>> = asWritten(MUSCLES);
export const patterns: Readonly<Record<Pattern, string>> = asWritten(PATTERNS);

export const lanes: Readonly<Record<Lane, string>> = {
  squat: "squat",
  hinge: "hinge",
  "single leg": "single-leg work",
  push: "push",
  pull: "pull",
  trunk: "trunk work",
  "carry or conditioning": "carry or conditioning",
};

export const severities: Readonly<Record<Severity, string>> = { stop: "stop", warn: "warning", note: "note" };

export const statuses: Readonly<Record<Status, string>> = {
  novice: "a novice",
  intermediate: "an intermediate",
  advanced: "an advanced person",
};

export const goals: Readonly<Record<Goal, string>> = {
  general: "general fitness",
  strength: "strength",
  size: "muscle size",
  endurance: "muscular endurance",
  power: "power",
};

/** What the published logic says, where it says more than the outcome. */
export const readinesses: Readonly<Record<Readiness, string>> = {
  "start light to moderate": "start light to moderate",
  "ask a doctor before starting": "ask a doctor first",
  "go on": "no reason found to ask a doctor first",
  "go on, moderate at most": "go on, moderate work at most",
  "ask a doctor before vigorous": "go on, moderate work at most; ask a doctor before vigorous work",
  "stop and ask a doctor": "stop, and ask a doctor",
};

/** What a person, or their clinician, has stated. Shown to coaches who may see it, never on sheets or feeds. */
export const statements: Readonly<Record<Statement, string>> = {
  pregnant: "pregnancy",
  postnatal: "birth within 12 months",
  pressure: "high blood pressure",
  bone: "osteoporosis or a low-trauma fracture",
  back: "low-back pain",
  shoulder: "shoulder pain when raising or pressing",
  knee: "pain at the front of the knee",
  wrist: "wrist pain",
  vertigo: "vertigo or dizziness with position",
  eye: "glaucoma, high eye pressure or eye surgery",
  hernia: "hernia, known or repaired",
  "surgery-arm": "surgery within 12 months, arm or shoulder",
  "surgery-leg": "surgery within 12 months, hip, knee or foot",
  "surgery-trunk": "surgery within 12 months, belly, spine or chest",
  hip: "hip replacement",
  larger: "larger body and low fitness",
  flare: "arthritis flare",
  diabetes: "diabetes on insulin, or with eye or foot complications",
  seated: "wheelchair use or an absent limb",
  young: "age under 18",
};

/** What the check before a session answers. */
export const befores: Readonly<Record<Before, string>> = {
  go: "go",
  soften: "go softer today",
  ask: "ask first, then look again",
  hold: "hold the session: no training today",
};

/** Body-region stresses, as a coach would say them. */
export const tags: Readonly<Record<StressTag, string>> = {
  sh_overhead: "arms overhead under load",
  sh_abd_er: "arm out to the side and turned back",
  sh_ir_elev: "arm turned in and raised",
  sh_ext: "arm drawn behind the trunk",
  elbow: "load on the elbow",
  wr_ext: "wrist bent back under load",
  grip: "hard grip",
  neck: "load on the neck",
  sp_axial: "load carried upright on the spine",
  sp_hold: "leaning forward under load",
  sp_flex: "bending the back forward",
  sp_ext: "arching the back",
  sp_rot: "turning the back under load",
  hip_deep: "deep hip fold",
  hip_spread: "legs spread wide",
  knee_deep: "deep knee bend under load",
  knee_open: "straightening the knee against load",
  kneel: "kneeling",
  ankle_df: "knee far over the toes",
  impact: "landing and impact",
  balance: "keeping balance",
  supine: "lying flat on the back",
  prone: "lying on the front",
  floor: "getting down to the floor and up",
  head_down: "head below the hips",
  head_quick: "quick moves of the head",
  pressor: "strain that raises blood pressure",
  abd_press: "pressure in the belly",
};

export const amounts: Readonly<Record<AmountKind, string>> = {
  reps: "repetitions",
  most: "as many repetitions as possible",
  hold: "seconds of a hold",
  metres: "metres",
  time: "time",
  contacts: "contacts",
};

/** @example capital("week 3") //=> "Week 3" */
export function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

import type { Catalogue, Exercise, Ladder } from "../model/index.ts";
import { ARM_ISOLATION } from "./arm-isolation.ts";
import { BALANCE } from "./balance.ts";
import { BRIDGE } from "./bridge.ts";
import { CALF } from "./calf.ts";
import { CARRY } from "./carry.ts";
import { CONDITIONING } from "./conditioning.ts";
import { DEADLIFT } from "./deadlift.ts";
import { DIP } from "./dip.ts";
import type { Listed } from "./entry.ts";
import { FRONT_TRUNK } from "./front-trunk.ts";
import { HINGE } from "./hinge.ts";
import { HORIZONTAL_PULL } from "./horizontal-pull.ts";
import { HORIZONTAL_PUSH } from "./horizontal-push.ts";
import { INVERTED_ROW } from "./inverted-row.ts";
import { JUMP } from "./jump.ts";
import { BRIDGE_LADDER } from "./ladders/bridge.ts";
import { CALF_LADDER } from "./ladders/calf.ts";
import { CARRY_LADDER } from "./ladders/carry.ts";
import { DIP_LADDER, PRESS_UP_LADDER } from "./ladders/dip.ts";
import { FRONT_TRUNK_LADDER } from "./ladders/front-trunk.ts";
import { HINGE_LADDER } from "./ladders/hinge.ts";
import { JUMP_LADDER } from "./ladders/jump.ts";
import { OVERHEAD_LADDER } from "./ladders/overhead.ts";
import { PULL_UP_LADDER } from "./ladders/pull-up.ts";
import { PUSH_UP_LADDER } from "./ladders/push-up.ts";
import { LOADED_ROW_LADDER, ROW_LADDER } from "./ladders/row.ts";
import { SIDE_PLANK_LADDER } from "./ladders/side-plank.ts";
import { SINGLE_LEG_LADDER } from "./ladders/single-leg.ts";
import { SQUAT_LADDER } from "./ladders/squat.ts";
import { STEP_UP_LADDER } from "./ladders/step-up.ts";
import { ListedExercises } from "./listed-exercises.ts";
import { LOCOMOTION } from "./locomotion.ts";
import { LOWER_ISOLATION } from "./lower-isolation.ts";
import { LUNGE } from "./lunge.ts";
import { MIXED_HOLD } from "./mixed-hold.ts";
import { MOBILITY } from "./mobility.ts";
import { POWER_LIFT } from "./power-lift.ts";
import { PULL_UP } from "./pull-up.ts";
import { PUSH_UP } from "./push-up.ts";
import { ROTATION } from "./rotation.ts";
import { SHOULDER_ISOLATION } from "./shoulder-isolation.ts";
import { SIDE_PLANK } from "./side-plank.ts";
import { SINGLE_LEG } from "./single-leg.ts";
import { SQUAT } from "./squat.ts";
import { SQUAT_SUPPORT } from "./squat-support.ts";
import { STEP_UP } from "./step-up.ts";
import { THROW } from "./throw.ts";
import { TRUNK } from "./trunk.ts";
import { UPPER_ISOLATION } from "./upper-isolation.ts";
import { UPSIDE_DOWN } from "./upside-down.ts";
import { VERTICAL_PULL } from "./vertical-pull.ts";
import { VERTICAL_PUSH } from "./vertical-push.ts";
import { WARM_UP } from "./warm-up.ts";

const EXERCISES: readonly Listed[] = [
  ...SQUAT,
  ...SQUAT_SUPPORT,
  ...HINGE,
  ...DEADLIFT,
  ...BRIDGE,
  ...SINGLE_LEG,
  ...LUNGE,
  ...STEP_UP,
  ...CALF,
  ...LOWER_ISOLATION,
  ...JUMP,
  ...THROW,
  ...POWER_LIFT,
  ...PUSH_UP,
  ...HORIZONTAL_PUSH,
  ...DIP,
  ...VERTICAL_PUSH,
  ...UPSIDE_DOWN,
  ...INVERTED_ROW,
  ...HORIZONTAL_PULL,
  ...VERTICAL_PULL,
  ...PULL_UP,
  ...FRONT_TRUNK,
  ...SIDE_PLANK,
  ...TRUNK,
  ...ROTATION,
  ...MIXED_HOLD,
  ...CARRY,
  ...LOCOMOTION,
  ...CONDITIONING,
  ...UPPER_ISOLATION,
  ...ARM_ISOLATION,
  ...SHOULDER_ISOLATION,
  ...WARM_UP,
  ...MOBILITY,
  ...BALANCE,
];

const LADDERS: readonly Ladder[] = [
  SQUAT_LADDER,
  HINGE_LADDER,
  BRIDGE_LADDER,
  SINGLE_LEG_LADDER,
  STEP_UP_LADDER,
  CALF_LADDER,
  PUSH_UP_LADDER,
  OVERHEAD_LADDER,
  ROW_LADDER,
  LOADED_ROW_LADDER,
  PULL_UP_LADDER,
  DIP_LADDER,
  PRESS_UP_LADDER,
  FRONT_TRUNK_LADDER,
  SIDE_PLANK_LADDER,
  CARRY_LADDER,
  JUMP_LADDER,
];

function assertOnce(ids: readonly string[]): void {
  if (new Set(ids).size === ids.length) return;
  const twice = ids.find((id, i) => ids.indexOf(id) !== i);
  throw new RangeError(`Cannot assemble a catalogue as every id must be there once: "${twice}" is there twice`);
}

function idsOf(exercises: readonly { readonly id: string }[], ladders: readonly Ladder[]): readonly string[] {
  return [...exercises.map(({ id }) => id), ...ladders.map(({ id }) => `ladder ${id}`)];
}

/**
 * A catalogue ready to look up, in the order of its entries.
 *
 * @throws RangeError when two exercises or two ladders have the same id
 */
export function assemble(exercises: readonly Exercise[], ladders: readonly Ladder[]): Catalogue {
  assertOnce(idsOf(exercises, ladders));
  return { exercises: new Map(exercises.map((exercise) => [exercise.id, exercise])), ladders };
}

assertOnce(idsOf(EXERCISES, LADDERS));
export const CATALOGUE: Catalogue = { exercises: new ListedExercises(EXERCISES), ladders: LADDERS };

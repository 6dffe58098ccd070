import type { Catalogue, Exercise, Ladder } from "../model/index.ts";
import { BRIDGE } from "./bridge.ts";
import { DEADLIFT } from "./deadlift.ts";
import { HINGE } from "./hinge.ts";
import { JUMP } from "./jump.ts";
import { BRIDGE_LADDER } from "./ladders/bridge.ts";
import { CALF_LADDER } from "./ladders/calf.ts";
import { HINGE_LADDER } from "./ladders/hinge.ts";
import { SINGLE_LEG_LADDER } from "./ladders/single-leg.ts";
import { SQUAT_LADDER } from "./ladders/squat.ts";
import { STEP_UP_LADDER } from "./ladders/step-up.ts";
import { LOWER_ISOLATION } from "./lower-isolation.ts";
import { LUNGE } from "./lunge.ts";
import { SINGLE_LEG } from "./single-leg.ts";
import { SQUAT } from "./squat.ts";
import { SQUAT_SUPPORT } from "./squat-support.ts";

const EXERCISES: readonly Exercise[] = [
  ...SQUAT,
  ...SQUAT_SUPPORT,
  ...HINGE,
  ...DEADLIFT,
  ...BRIDGE,
  ...SINGLE_LEG,
  ...LUNGE,
  ...LOWER_ISOLATION,
  ...JUMP,
];

const LADDERS: readonly Ladder[] = [
  SQUAT_LADDER,
  HINGE_LADDER,
  BRIDGE_LADDER,
  SINGLE_LEG_LADDER,
  STEP_UP_LADDER,
  CALF_LADDER,
];

/**
 * A catalogue ready to look up, in the order of its entries.
 *
 * @throws RangeError when two exercises or two ladders have the same id
 */
export function assemble(exercises: readonly Exercise[], ladders: readonly Ladder[]): Catalogue {
  const byId = new Map(exercises.map((exercise) => [exercise.id, exercise]));
  const ladderIds = new Set(ladders.map(({ id }) => id));
  if (byId.size !== exercises.length || ladderIds.size !== ladders.length) {
    const ids = [...exercises.map(({ id }) => id), ...ladders.map(({ id }) => `ladder ${id}`)];
    const twice = ids.find((id, i) => ids.indexOf(id) !== i);
    throw new RangeError(`Cannot assemble a catalogue as every id must be there once: "${twice}" is there twice`);
  }
  return { exercises: byId, ladders };
}

export const CATALOGUE: Catalogue = assemble(EXERCISES, LADDERS);

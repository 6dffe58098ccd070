import { LANES, type Lane, type PlanSession, type PlanSlot } from "@stave/core/model";

export type LaneName = Lane | "other";

/** One slot in the picture of a week. Rows and columns count from 0. */
export interface PlacedSlot {
  readonly slot: PlanSlot;
  /** Place in the session, from 1. */
  readonly order: number;
  readonly lane: LaneName;
  readonly row: number;
  readonly rows: number;
  /** True when it is done in turn with the slot before or behind it. */
  readonly inTurn: boolean;
}

export interface PlacedLane {
  readonly lane: LaneName;
  readonly row: number;
  readonly rows: number;
}

export interface PlacedWeek {
  readonly lanes: readonly PlacedLane[];
  /** For every session its slots in the order in which they are done, and the lanes that it leaves empty. */
  readonly sessions: readonly { readonly slots: readonly PlacedSlot[]; readonly gaps: readonly PlacedLane[] }[];
}

/**
 * A week in lanes: every movement pattern has one, also when nothing trains it, so that a gap is seen. A lane is as high
 * as its fullest session needs.
 *
 * @param laneOf the lane of an exercise; "other" is drawn only where something stands in it
 */
export function placeWeek(sessions: readonly PlanSession[], laneOf: (exercise: string) => LaneName): PlacedWeek {
  const inLanes = sessions.map((session) => {
    let order = 0;
    return session.blocks.flatMap(({ kind, slots }) =>
      slots.map((slot) => ({ slot, order: ++order, lane: laneOf(slot.exercise), inTurn: kind !== "straight" })),
    );
  });
  const most = (lane: LaneName) =>
    Math.max(0, ...inLanes.map((slots) => slots.filter((one) => one.lane === lane).length));
  const lanes: PlacedLane[] = [];
  let row = 0;
  for (const lane of [...LANES, "other"] as const) {
    const rows = Math.max(lane === "other" ? 0 : 1, most(lane));
    if (rows > 0) lanes.push({ lane, row, rows });
    row += rows;
  }
  return {
    lanes,
    sessions: inLanes.map((slots) => ({
      slots: slots.map((one) => {
        const lane = lanes.find((each) => each.lane === one.lane)!;
        const same = slots.filter((each) => each.lane === one.lane);
        const at = same.indexOf(one);
        const isLast = at === same.length - 1;
        return { ...one, row: lane.row + at, rows: isLast ? lane.rows - at : 1 };
      }),
      gaps: lanes.filter(({ lane }) => !slots.some((one) => one.lane === lane)),
    })),
  };
}

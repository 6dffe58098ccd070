/** For every day after the home week. Source: ours. */
const LATE_POINTS = 15;
/** For every muscle that two sessions both load hard, for every six hours begun that are missing. Source: ours. */
const CLOSE_POINTS = 2;
const CLOSE_STEP_MINUTES = 360;
/** For a session on the day after another, whatever they load: less than any unwelcome hour. Source: ours. */
export const NEXT_DAY_POINTS = 1;
/** For a session that was announced and now stands on another day, at another hour or in another place. Source: ours. */
export const MOVED_POINTS = 8;

/**
 * Points for days after the end of the home week.
 *
 * @param days whole days late, 0 or more
 * @source ours
 * @example
 * latePoints(2) //=> 30
 */
export function latePoints(days: number): number {
  return LATE_POINTS * days;
}

/**
 * Points for two sessions that stand closer than wanted: 2 × shared hard muscles × missing hours / 6, rounded up.
 *
 * @param shared muscles that both load hard
 * @param minutes wall minutes from the start of one to the start of the other
 * @param wanted wall minutes wanted between them
 * @returns whole points, 0 when nothing is shared or enough time lies between
 * @source ours
 * @example
 * closePoints(3, 24 * 60, 48 * 60) //=> 24
 */
export function closePoints(shared: number, minutes: number, wanted: number): number {
  return shared === 0 || minutes >= wanted
    ? 0
    : CLOSE_POINTS * shared * Math.ceil((wanted - minutes) / CLOSE_STEP_MINUTES);
}

import type { Placed, PlannedSession } from "../calendar/index.ts";
import type { Day } from "../day.ts";
import type { Plan, PlanPhase, PlanSession } from "../model/index.ts";

/** Weeks side by side, so that the boxes of a slot stand in one line: four with 3 sets, three with 4, else two. */
const MOST_COLUMNS = [
  { sets: 3, columns: 4 },
  { sets: 4, columns: 3 },
] as const;
const FEWEST_COLUMNS = 2;

/** A plan's sessions and the days they stand on. */
export interface SheetDates {
  readonly sessions: readonly Pick<PlannedSession, "id" | "phase" | "planWeek" | "session">[];
  readonly placed: Pick<Placed, "placements">;
}

/** One session in one week. */
export interface Column {
  /** Week of the whole programme, 1 = first. */
  readonly week: number;
  readonly light: boolean;
  readonly day?: Day;
  readonly session: PlanSession;
}

/** Weeks of the programme before a phase. */
export function weeksBefore(plan: Plan, phase: PlanPhase): number {
  const earlier = plan.phases.slice(0, plan.phases.indexOf(phase));
  return earlier.reduce((sum, each) => sum + each.weeks.length, 0);
}

/**
 * The weeks in which a session is done, with its day where it has one. Without dates every week counts; with them, only
 * those that the session has its turn in, since a person with fewer days does the sessions in turn.
 */
export function columnsOf(plan: Plan, phase: PlanPhase, key: string, dates: SheetDates | undefined): readonly Column[] {
  const before = weeksBefore(plan, phase);
  return phase.weeks.flatMap(({ week, light, sessions }): Column[] => {
    const session = sessions.find((each) => each.key === key);
    const planned = dates?.sessions.find(
      (each) => each.phase === phase.key && each.planWeek === week && each.session === key,
    );
    if (session === undefined || (dates !== undefined && planned === undefined)) return [];
    const day = dates?.placed.placements.find((each) => each.session === planned?.id)?.day;
    return [{ week: before + week, light, session, ...(day === undefined ? {} : { day }) }];
  });
}

/** The most boxes that stand in one cell. */
function mostSets(columns: readonly Column[]): number {
  const slots = columns.flatMap(({ session }) => session.blocks.flatMap((block) => block.slots));
  return Math.max(0, ...slots.map((slot) => slot.dose.sets.length));
}

/**
 * Weeks dealt out to as few pages as hold them, as evenly as can be.
 *
 * @returns for five weeks of three sets, three and two
 */
export function sideBySide(columns: readonly Column[]): readonly (readonly Column[])[] {
  const sets = mostSets(columns);
  const most = MOST_COLUMNS.find((each) => sets <= each.sets)?.columns ?? FEWEST_COLUMNS;
  const pages = Math.ceil(columns.length / most);
  const size = Math.ceil(columns.length / pages);
  return Array.from({ length: pages }, (_, page) => columns.slice(page * size, (page + 1) * size));
}

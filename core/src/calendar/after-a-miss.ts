import { addDays, type Day, printDay } from "../day.ts";
import type { MissCause, Reason } from "../model/index.ts";
import { placeSessions } from "./place-sessions.ts";
import { reason } from "./reasons.ts";
import { score } from "./score.ts";
import { standing } from "./standing.ts";
import { span } from "./starts.ts";
import type { CalendarTask, Placed, Placement, TaskSession } from "./task.ts";

export interface Miss {
  readonly session: string;
  readonly because: MissCause;
  /** The first day on which the person can train again; the day after the session when it is not said. */
  readonly back?: Day;
}

/** What becomes of a plan after a session was missed. */
export interface AfterMiss {
  readonly answer: "skip" | "move";
  /** The task without the sessions that are skipped, and the plan that now stands. */
  readonly task: CalendarTask;
  readonly placed: Placed;
  /** Not made up, and owed by nobody. */
  readonly skipped: readonly string[];
  readonly why: readonly Reason[];
}

/** More sessions than this are not moved one by one: the person was away, and goes on where the plan is. Ours. */
const MOST_MOVED = 6;

/**
 * A session was missed: is it skipped or moved, and what of the others? The cause decides.
 *
 * - ill: skipped; nothing ahead moves; the first session back is eased, after a question. How long an illness lasts
 *   differs so widely that no number of days is given.
 * - tired: skipped; the plan goes on with the next session on its day.
 * - pain: skipped as when ill; the movement that hurt waits for its own answer.
 * - busy, away: moved to another day, together with others of its week if need be, if every session then has a day and hours
 *   missing between hard sessions are no more than without it; else skipped. As few as can be are moved.
 *
 * Nothing is owed: one day missed does not matter to a habit, so that a session skipped is in no later week. Never two
 * on one day. Sessions before the missed one are taken as done; those after it and before `back` go its way.
 *
 * @throws RangeError when the session has no day in the plan
 * @source lally2010, schwellnus2022, practice, ours
 */
export function afterAMiss(task: CalendarTask, placed: Placed, miss: Miss): AfterMiss {
  const missed = placed.placements.find(({ session }) => session === miss.session);
  if (!missed) {
    throw new RangeError(`Cannot tell what follows a miss as the session has no day: current value is ${miss.session}`);
  }
  const back = addDays(missed.day, Math.max(1, (miss.back ?? missed.day) - missed.day));
  const lost = placed.placements.filter(({ day }) => day >= missed.day && day < back);
  const stays = placed.placements.filter(({ day }) => day < missed.day || day >= back);
  const skip = after(task, placed, stays, lost);
  const about = (code: "calendar/missed-ill" | "calendar/missed-tired" | "calendar/missed-pain") =>
    reason(code, { session: missed.session, day: printDay(missed.day) });
  const notBack = (one: Placement) =>
    reason("calendar/not-back", { session: one.session, day: printDay(one.day), back: printDay(back) });
  const others = lost.filter((one) => one !== missed).map(notBack);
  if (miss.because === "tired") return { ...skip, answer: "skip", why: [about("calendar/missed-tired"), ...others] };
  if (miss.because === "ill" || miss.because === "pain") {
    const next = stays.find(({ day }) => day >= back);
    const done = stays.filter(({ day }) => day < missed.day).at(-1);
    const eased = next && {
      session: next.session,
      day: printDay(next.day),
      since: done === undefined ? null : next.day - done.day,
      ...(miss.because === "pain" ? { because: miss.because } : {}),
    };
    const ease = eased ? [reason("calendar/ease-in", eased)] : [];
    return { ...skip, answer: "skip", why: [about(`calendar/missed-${miss.because}`), ...others, ...ease] };
  }
  return moveOrSkip(task, placed, { because: miss.because, missed, lost, stays, back, skip, notBack });
}

interface Gap {
  readonly because: "busy" | "away";
  readonly missed: Placement;
  readonly lost: readonly Placement[];
  readonly stays: readonly Placement[];
  readonly back: Day;
  readonly skip: Omit<AfterMiss, "answer" | "why">;
  readonly notBack: (one: Placement) => Reason;
}

/** Of the sessions lost, as many as can be get another day; among equals the earlier ones. */
function moveOrSkip(task: CalendarTask, placed: Placed, gap: Gap): AfterMiss {
  const { because, missed, lost, stays, back, skip, notBack } = gap;
  const sessionOf = (id: string) => task.sessions.find((session) => session.id === id)!;
  const late = lost.filter(({ session }) => span(task, sessionOf(session)).last >= back - task.start);
  const movable = late.length > MOST_MOVED ? [] : late;
  const most = score(skip.task, stays).parts.close;
  let why: Reason | undefined;
  for (const chosen of subsets(movable)) {
    const found = replanned(task, stays, chosen, back);
    const there = found.placements.find(({ session }) => session === missed.session);
    if (found.dropped.length > 0 || found.parts.close > most) {
      if (chosen.length === 1 && chosen[0] === missed) why = whyNot(task, found, missed, because);
      continue;
    }
    const result = after(
      task,
      placed,
      found.placements,
      lost.filter((one) => !chosen.includes(one)),
    );
    const moved = found.placements.flatMap((to): Reason[] => {
      const from = placed.placements.find(({ session }) => session === to.session)!;
      if (from === missed || (from.day === to.day && from.start === to.start && from.place === to.place)) return [];
      return [reason("calendar/moved", { session: to.session, day: printDay(from.day), to: printDay(to.day) })];
    });
    const gone = lost.filter((one) => one !== missed && !chosen.includes(one)).map(notBack);
    const own = { session: missed.session, day: printDay(missed.day), ...told(because) };
    const first = there
      ? reason("calendar/missed-moved", { ...own, to: printDay(there.day) })
      : (why ?? reason("calendar/missed-no-day", own));
    return { ...result, answer: there ? "move" : "skip", why: [first, ...gone, ...moved] };
  }
  const own = { session: missed.session, day: printDay(missed.day), ...told(because) };
  const gone = lost.filter((one) => one !== missed).map(notBack);
  return { ...skip, answer: "skip", why: [why ?? reason("calendar/missed-no-day", own), ...gone] };
}

/** The best plan in which the chosen sessions have new days, and only sessions of their weeks and still ahead move. */
function replanned(task: CalendarTask, stays: readonly Placement[], chosen: readonly Placement[], back: Day): Placed {
  const weekOf = new Map(task.sessions.map(({ id, week }) => [id, week]));
  const weeks = new Set(chosen.map(({ session }) => weekOf.get(session)));
  const ahead = stays.filter(({ session, day }) => day >= back && weeks.has(weekOf.get(session)));
  const free = new Set([...chosen, ...ahead].map(({ session }) => session));
  const part = standing(task, stays, free);
  const done = new Set(stays.filter(({ day }) => day < back).map(({ day }) => day - task.start));
  const announced = new Map(ahead.map((one) => [one.session, one]));
  return placeSessions({
    ...part,
    gapIsMust: true,
    sessions: part.sessions.map((session): TaskSession => {
      const at = announced.get(session.id);
      return at ? { ...session, announced: at } : session;
    }),
    windows: part.windows.map((list, day) => (task.start + day < back && !done.has(day) ? [] : list)),
  });
}

/** Why the missed session alone cannot have another day. */
/** Busy is what a reason says of itself. */
function told(because: Gap["because"]) {
  return because === "busy" ? {} : { because };
}

function whyNot(task: CalendarTask, found: Placed, missed: Placement, because: Gap["because"]): Reason {
  const own = { session: missed.session, day: printDay(missed.day), ...told(because) };
  const { close } = score(task, found.placements);
  const [pair] = [...close].sort((a, b) => b.points - a.points);
  if (found.dropped.length > 0 || !pair) return reason("calendar/missed-no-day", own);
  const { earlier, later, minutes, muscles } = pair;
  const other = later === missed.session ? (earlier ?? null) : later;
  return reason("calendar/missed-close", { ...own, with: other, hours: minutes / 60, wanted: task.gapHours, muscles });
}

/** The plan that now stands, with the sessions that are skipped taken out of the task. */
function after(
  task: CalendarTask,
  placed: Placed,
  placements: readonly Placement[],
  skipped: readonly Placement[],
): Omit<AfterMiss, "answer" | "why"> {
  const gone = new Set(skipped.map(({ session }) => session));
  const left = { ...task, sessions: task.sessions.filter(({ id }) => !gone.has(id)) };
  const { cost, parts, value } = score(left, placements);
  return {
    task: left,
    placed: { ...placed, placements, cost, parts, value, bound: value, proven: true, count: 1 },
    skipped: [...gone],
  };
}

/** All choices of some, more before fewer and earlier before later. */
function subsets(of: readonly Placement[]): readonly (readonly Placement[])[] {
  const [first, ...rest] = of;
  if (!first) return [];
  const others = [...subsets(rest), []];
  return [...others.map((some) => [first, ...some]), ...subsets(rest)].sort((a, b) => b.length - a.length);
}

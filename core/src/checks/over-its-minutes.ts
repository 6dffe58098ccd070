import { type SessionSeconds, sessionSeconds } from "../measures/index.ts";
import { type ExerciseId, type Path, type Session, slotsOf } from "../model/index.ts";
import {
  changesTo,
  inPairs,
  type Parts,
  partsOf,
  SHORT_REST_S,
  secondsOf,
  withOneSetFewer,
  withSetsThatFit,
  withShortRests,
} from "./cures/shorten.ts";
import type { Check, CheckInput, Cure, Facts, Found } from "./run/check.ts";
import type { AskedWeek, Look } from "./run/look.ts";
import { sessionPath } from "./run/walk.ts";

type Data = Facts & {
  readonly phase: string;
  readonly session: string;
  readonly title: string;
  readonly minutes: number;
  readonly side: "over" | "cannot judge";
};

/** The week in which a session takes longest, the first of equals. */
interface Longest {
  readonly week: number;
  readonly seconds: SessionSeconds;
}

function longestOf(weeks: readonly AskedWeek[], secondsIn: (week: AskedWeek) => SessionSeconds): Longest {
  return weeks
    .map((week): Longest => ({ week: week.week, seconds: secondsIn(week) }))
    .reduce((worst, one) => (one.seconds.typical > worst.seconds.typical ? one : worst));
}

/** How long a session takes at most when its work is cut to these parts. */
function longestWith(look: Look, phaseIndex: number, session: Session, parts: Parts): SessionSeconds {
  const secondsIn = ({ week, light }: AskedWeek) => secondsOf(session, parts, week, light, look.catalogue);
  return longestOf(look.weeks[phaseIndex]!, secondsIn).seconds;
}

/** Sets that are fewer, by slot. */
function fewerSets(input: CheckInput, session: Session, parts: Parts): readonly Facts[] {
  const before = new Map(session.work.flatMap(slotsOf).map((slot) => [slot.slot, slot.dose.sets.length]));
  return parts.flatMap(({ block }) =>
    slotsOf(block).flatMap((slot): readonly Facts[] => {
      const from = before.get(slot.slot) ?? 0;
      const to = slot.dose.sets.length;
      const name = input.catalogue.exercises.get(slot.first)?.name ?? slot.first;
      return to < from ? [{ slot: slot.slot, name, from, to }] : [];
    }),
  );
}

function pairsOf(input: CheckInput, parts: Parts): readonly (readonly string[])[] {
  const made = parts.filter(({ from }) => from.length > 1);
  return made.map(({ block }) =>
    slotsOf(block).map(({ first }) => input.catalogue.exercises.get(first)?.name ?? first),
  );
}

/**
 * Cuts that keep every movement, the mildest first; those that fit come before those that only help. Of those that fit,
 * the mildest with pairs and the mildest without are offered.
 */
function cutsOf(look: Look, phaseIndex: number, session: Session, limitS: number): readonly Cure[] {
  const sessionIndex = look.programme.phases[phaseIndex]!.sessions.indexOf(session);
  const at = sessionPath(phaseIndex, sessionIndex);
  const fits = (parts: Parts) => longestWith(look, phaseIndex, session, parts).high <= limitS;
  const whole = partsOf(session);
  const rested = withShortRests(whole);
  const paired = inPairs(rested, look.catalogue);
  const ways = [
    { parts: rested, rest: true },
    { parts: paired, rest: true },
    { parts: withSetsThatFit(whole, fits), rest: false },
    { parts: withOneSetFewer(rested), rest: true },
    { parts: withOneSetFewer(paired), rest: true },
    { parts: withSetsThatFit(paired, fits), rest: true },
  ];
  const before = longestWith(look, phaseIndex, session, whole);
  const cures = ways.flatMap(({ parts, rest }): readonly Cure[] => {
    const changes = changesTo(session, parts, at);
    const { typical, high } = longestWith(look, phaseIndex, session, parts);
    if (typical >= before.typical) return [];
    const overS = Math.max(0, high - limitS);
    const rests = rest && changesTo(session, rested, at).length > 0 ? { restS: SHORT_REST_S } : {};
    const pairs = pairsOf(look, parts);
    const data = {
      ...rests,
      pairs,
      fewer: fewerSets(look, session, parts),
      typicalS: typical,
      highS: high,
      overS,
    };
    if (overS > 0) return [{ id: "shorten", data, changes, partly: true }];
    return [{ id: "shorten", group: pairs.length > 0 ? "fits in pairs" : "fits", data, changes }];
  });
  const distinct = [...new Map(cures.map((cure) => [JSON.stringify(cure.changes), cure])).values()];
  return [...distinct.filter((cure) => !cure.partly), ...distinct.filter((cure) => cure.partly)];
}

/** The longest session that a programme's file takes, in minutes. */
const LONGEST_SESSION = 240;

/** The session given the time it takes, in whole fives of minutes. */
function givenMore(session: Session, minutesAt: Path, highS: number): readonly Cure[] {
  const minutes = Math.ceil(highS / 300) * 5;
  if (minutes > LONGEST_SESSION) return [];
  const data = { from: session.minutes, to: minutes };
  return [{ id: "longer-session", data, changes: [{ op: "set", at: minutesAt, value: minutes }] }];
}

function judgeSession(look: Look, phaseAt: number, sessionAt: number): Found<Data> | undefined {
  const phase = look.programme.phases[phaseAt]!;
  const session = phase.sessions[sessionAt]!;
  const of = look.person !== undefined && look.person.minutes < session.minutes ? "person" : "session";
  const minutes = of === "person" ? look.person!.minutes : session.minutes;
  const limitS = minutes * 60;
  const timing = (id: ExerciseId) => look.catalogue.exercises.get(id);
  const { week, seconds } = longestOf(look.weeks[phaseAt]!, ({ sessions }) =>
    sessionSeconds(sessions[sessionAt]!, timing),
  );
  const { parts, low, typical, high, assumed, unknown } = seconds;
  const isOver = !(high <= limitS);
  if (!isOver && unknown.length === 0) return undefined;
  const at = [...sessionPath(phaseAt, sessionAt), "minutes"];
  const about = { phase: phase.key, session: session.key, title: session.title, minutes };
  if (!isOver) {
    return { at, severity: "note", data: { ...about, side: "cannot judge", unknown, typicalS: typical } };
  }
  return {
    at,
    severity: low <= limitS ? "warn" : "stop",
    data: {
      ...about,
      side: "over",
      of,
      week,
      lowS: low,
      typicalS: typical,
      highS: high,
      overS: high - limitS,
      parts: { ...parts },
      assumed: assumed.map(({ exercise, what }) => ({ exercise, what })),
      unknown,
    },
    cures: () => [...cutsOf(look, phaseAt, session, limitS), ...(of === "session" ? givenMore(session, at, high) : [])],
  };
}

/**
 * A session that takes longer than its minutes: a warning when only the upper estimate does, a stop when even the
 * lower one does. The week that asks for most counts; a person's own minutes count where they are fewer.
 *
 * The remedies cut rests, sets and pair movements that do not compete, keeping every movement, and say what is left;
 * or give the session its time.
 */
export const overItsMinutes: Check<"session/over-its-minutes", Data> = {
  id: "session/over-its-minutes",
  severity: "warn",
  sources: ["ours"],
  run(look) {
    const found: Found<Data>[] = [];
    look.programme.phases.forEach((phase, p) => {
      phase.sessions.forEach((_, s) => {
        const one = judgeSession(look, p, s);
        if (one !== undefined) found.push(one);
      });
    });
    return found;
  },
};

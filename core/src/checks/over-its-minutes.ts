import type { SessionSeconds } from "../measures/index.ts";
import { type Path, type Session, slotsOf } from "../model/index.ts";
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
import { judgedWeeks } from "./run/judged-weeks.ts";
import { sessionPath } from "./run/walk.ts";

type Data = Facts & {
  readonly phase: string;
  readonly session: string;
  readonly title: string;
  readonly minutes: number;
  readonly side: "over" | "cannot judge";
};

/** A week with how long the session takes in it. */
interface Judged {
  readonly week: number;
  readonly light: boolean;
  readonly seconds: SessionSeconds;
}

function longest(input: CheckInput, phaseIndex: number, session: Session, parts: Parts): Judged {
  const weeks = judgedWeeks(input.programme.phases[phaseIndex]!).map(({ week, light }): Judged => {
    return { week, light, seconds: secondsOf(session, parts, week, light, input.catalogue) };
  });
  return weeks.reduce((worst, judged) => (judged.seconds.typical > worst.seconds.typical ? judged : worst));
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
function cutsOf(input: CheckInput, phaseIndex: number, session: Session, limitS: number): readonly Cure[] {
  const sessionIndex = input.programme.phases[phaseIndex]!.sessions.indexOf(session);
  const at = sessionPath(phaseIndex, sessionIndex);
  const fits = (parts: Parts) => longest(input, phaseIndex, session, parts).seconds.high <= limitS;
  const whole = partsOf(session);
  const rested = withShortRests(whole);
  const paired = inPairs(rested, input.catalogue);
  const ways = [
    { parts: rested, rest: true },
    { parts: paired, rest: true },
    { parts: withSetsThatFit(whole, fits), rest: false },
    { parts: withOneSetFewer(rested), rest: true },
    { parts: withOneSetFewer(paired), rest: true },
    { parts: withSetsThatFit(paired, fits), rest: true },
  ];
  const before = longest(input, phaseIndex, session, whole).seconds;
  const cures = ways.flatMap(({ parts, rest }): readonly Cure[] => {
    const changes = changesTo(session, parts, at);
    const { typical, high } = longest(input, phaseIndex, session, parts).seconds;
    if (changes.length === 0 || typical >= before.typical) return [];
    const overS = Math.max(0, high - limitS);
    const rests = rest && changesTo(session, rested, at).length > 0 ? { restS: SHORT_REST_S } : {};
    const pairs = pairsOf(input, parts);
    const data = {
      ...rests,
      pairs,
      fewer: fewerSets(input, session, parts),
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
  run(input) {
    return input.programme.phases.flatMap((phase, p) =>
      phase.sessions.flatMap((session, s): readonly Found<Data>[] => {
        const of = input.person !== undefined && input.person.minutes < session.minutes ? "person" : "session";
        const minutes = of === "person" ? input.person!.minutes : session.minutes;
        const limitS = minutes * 60;
        const { week, seconds } = longest(input, p, session, partsOf(session));
        const { parts, low, typical, high, assumed, unknown } = seconds;
        const at = [...sessionPath(p, s), "minutes"];
        const about = { phase: phase.key, session: session.key, title: session.title, minutes };
        const found: Found<Data>[] = [];
        if (!(high <= limitS)) {
          found.push({
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
            cures: () => [
              ...cutsOf(input, p, session, limitS),
              ...(of === "session" ? givenMore(session, at, high) : []),
            ],
          });
        } else if (unknown.length > 0) {
          found.push({ at, severity: "note", data: { ...about, side: "cannot judge", unknown, typicalS: typical } });
        }
        return found;
      }),
    );
  },
};

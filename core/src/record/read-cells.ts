import {
  HURT_PLACES,
  NOT_DONE,
  type NotDone,
  nameKey,
  OUTSIDE_WORK,
  type OutsideWork,
  RUN_ENDS,
  type RunEnd,
  readWrittenResult,
  type SwapCause,
} from "../model/index.ts";
import { ask, type Taken, taken } from "./taken.ts";

/** Repetitions in reserve that a set can be told to have; past it nobody can tell. Ours, no source. */
const MOST_RESERVE = 10;

/** Reserves of a row: one for all of its sets, or one for each: `2`, `2/1/0`. */
export function readReserves(text: string): Taken<readonly number[]> {
  if (text === "") return taken([]);
  const parts = text.split(/ ?[/ ] ?/).map((part) => part.replace(",", "."));
  const good = parts.every((part) => /^\d{1,2}(\.5)?$/.test(part) && Number(part) <= MOST_RESERVE);
  return good ? taken(parts.map(Number)) : ask("record/reserve", { allowed: `0 to ${MOST_RESERVE}` });
}

export function readTechnique(text: string): Taken<"kept" | "lost" | undefined> {
  const said = nameKey(text);
  if (said === "") return taken(undefined);
  if (["kept", "good", "ok", "clean"].includes(said)) return taken("kept");
  return ["lost", "bad", "broke"].includes(said) ? taken("lost") : ask("record/technique", { allowed: "kept, lost" });
}

export interface PainSaid {
  readonly where: string;
  readonly howMuch: number;
}

/** `knee 3`, `3/10` with the place in its own column; 0 to 10. */
export function readPain(text: string, place: string): Taken<PainSaid | undefined> {
  if (text === "") return taken(undefined);
  const match = /^(?:(.{1,60}?)[ :]*)??(\d{1,2})(?: ?\/ ?10)?$/.exec(text);
  const howMuch = Number(match?.[2] ?? Number.NaN);
  const where = nameKey(match?.[1] ?? place);
  if (!(howMuch >= 0 && howMuch <= 10) || where === "") return ask("record/pain", { allowed: "knee 3" });
  const known = Object.hasOwn(HURT_PLACES, where);
  return taken(
    { where, howMuch },
    ...(known ? [] : [{ code: "record/place-in-words", data: { read: where } } as const]),
  );
}

/** Pain of a morning after, 0 to 10. */
export function readMorning(text: string): Taken<number | undefined> {
  if (text === "") return taken(undefined);
  const said = /^(\d{1,2})(?: ?\/ ?10)?$/.exec(text);
  const howMuch = Number(said?.[1] ?? Number.NaN);
  return howMuch >= 0 && howMuch <= 10 ? taken(howMuch) : ask("record/morning", { allowed: "0 to 10" });
}

/** Effort of a whole session, 0 to 10, halves too. */
export function readEffort(text: string): Taken<number | undefined> {
  if (text === "") return taken(undefined);
  const said = /^(\d{1,2}(?:[.,]5)?)(?: ?\/ ?10)?$/.exec(text);
  const effort = Number(said?.[1]?.replace(",", ".") ?? Number.NaN);
  return effort >= 0 && effort <= 10 ? taken(effort) : ask("record/effort", { allowed: "0 to 10" });
}

export function readMinutes(text: string): Taken<number | undefined> {
  if (text === "") return taken(undefined);
  const said = /^(\d{1,4}) ?(?:min)?$/i.exec(text);
  const minutes = Number(said?.[1] ?? Number.NaN);
  return minutes >= 1 && minutes <= 1440 ? taken(minutes) : ask("record/minutes", { allowed: "1 to 1440" });
}

/** Wall minutes after midnight: `18:30`. */
export function readTime(text: string): Taken<number | undefined> {
  if (text === "") return taken(undefined);
  const said = /^([01]?\d|2[0-3])[:.]([0-5]\d)$/.exec(text);
  return said ? taken(Number(said[1]) * 60 + Number(said[2])) : ask("record/time", { allowed: "18:30" });
}

export function readOutside(text: string): Taken<OutsideWork | undefined> {
  const said = nameKey(text);
  if (said === "") return taken(undefined);
  const found = OUTSIDE_WORK.find((each) => each === said);
  return found === undefined ? ask("record/outside", { allowed: OUTSIDE_WORK.join(", ") }) : taken(found);
}

/** Blood pressure in mmHg, the upper number first: `128/76`. The other way round it is refused, not turned. */
export function readPressure(
  text: string,
  when: string,
): Taken<{ readonly systolic: number; readonly diastolic: number; readonly when: "before" | "after" } | undefined> {
  if (text === "") return taken(undefined);
  const said = /^(\d{2,3}) ?\/ ?(\d{2,3})$/.exec(text);
  const [systolic, diastolic] = [Number(said?.[1] ?? Number.NaN), Number(said?.[2] ?? Number.NaN)];
  const time = nameKey(when);
  if (time !== "before" && time !== "after") return ask("record/pressure", { allowed: "before, after" });
  if (!(systolic > diastolic && diastolic >= 20 && systolic <= 300))
    return ask("record/pressure", { allowed: "128/76" });
  return taken({ systolic, diastolic, when: time });
}

/** What ended a run; a run that nothing ended was done. */
export function readRunEnd(text: string): Taken<RunEnd> {
  const said = nameKey(text);
  const end = RUN_ENDS.find((each) => each === said);
  return end === undefined ? ask("record/run-end", { allowed: RUN_ENDS.join(", ") }) : taken(end);
}

/** @returns true for a session that ended early; nobody has to say why */
export function readEnded(text: string): Taken<boolean | undefined> {
  const said = nameKey(text);
  if (said === "") return taken(undefined);
  if (["early", "stopped", "stopped early"].includes(said)) return taken(true);
  return ["done", "whole"].includes(said) ? taken(false) : ask("record/ended", { allowed: "early, done" });
}

/** Why something was not done, in the words that results use too. */
export function readBecause(text: string): Taken<NotDone | undefined> {
  if (text === "") return taken(undefined);
  const read = readWrittenResult(text);
  return read.kind === "not done" && read.because !== undefined
    ? taken(read.because)
    : ask("record/because", { allowed: NOT_DONE.join(", ") });
}

/** Why another form was done. */
export function readSwapCause(text: string): Taken<SwapCause> {
  const said = nameKey(text);
  const words: Readonly<Record<string, SwapCause>> = {
    "": "not said",
    easier: "easier",
    hurt: "hurt",
    pain: "hurt",
    equipment: "equipment",
    busy: "busy",
  };
  const cause = Object.hasOwn(words, said) ? words[said] : undefined;
  return cause === undefined ? ask("record/because", { allowed: "easier, hurt, equipment, busy" }) : taken(cause);
}

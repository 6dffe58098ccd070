import type { Amount, Dose, SetDose, Span } from "./dose.ts";

/**
 * The one way in which Stave writes a dose. Reading it back gives the same dose.
 *
 * @param dose any dose that `readDose` can give
 * @example
 * printDose(dose) //=> "3 × 8–10, rest 90 s, 2 in reserve"
 */
export function printDose(dose: Dose): string {
  const reserve = sameOf(dose.sets, ({ reserve }) => reserve && printSpan(reserve));
  const bouted = dose.sets.filter(({ within }) => within);
  const insideS = sameOf(bouted, ({ within }) => within!.restS);
  const own = (set: SetDose) => printOwn(set, reserve === undefined, insideS === undefined);
  const pieces = [printSets(dose.sets, own)];
  if (dose.restS !== undefined) pieces.push(`rest ${printSeconds(dose.restS)}`);
  if (reserve !== undefined) pieces.push(`${reserve} in reserve`);
  if (dose.tempo !== undefined) pieces.push(`tempo ${dose.tempo.join("-")}`);
  if (insideS !== undefined) pieces.push(`${insideS} s inside`);
  return pieces.join(", ");
}

/** Sets that differ only in the amount are a list, unless more than two in a row are alike or an entry has a comma of its own. */
function printSets(sets: readonly SetDose[], own: (set: SetDose) => string): string {
  const runs: { set: SetDose; amount: string; own: string; count: number }[] = [];
  for (const set of sets) {
    const last = runs.at(-1);
    const amount = printAmount(set);
    const behind = own(set);
    if (last?.amount === amount && last.own === behind) last.count++;
    else runs.push({ set, amount, own: behind, count: 1 });
  }
  const [first] = runs;
  const isList =
    runs.length > 1 &&
    runs.every((run) => run.count <= 2 && run.own === first!.own && !/[(,]/.test(run.amount + run.own));
  if (!isList) return runs.map((run) => `${run.count} × ${run.amount}${run.own}`).join(" + ");
  return runs.flatMap(({ amount, count }) => Array<string>(count).fill(amount)).join(", ") + first!.own;
}

function printOwn(set: SetDose, withReserve: boolean, withInside: boolean): string {
  const { eachSide, percent, load, reserve, within } = set;
  const brackets = [
    ...(withReserve && reserve ? [`${printSpan(reserve)} in reserve`] : []),
    ...(withInside && within ? [`${within.restS} s inside`] : []),
  ];
  return [
    eachSide ? " each side" : "",
    percent === undefined ? "" : ` @${percent} %`,
    load ? ` @${load.value} ${load.unit}` : "",
    brackets.length > 0 ? ` (${brackets.join(", ")})` : "",
  ].join("");
}

function printAmount({ amount, within }: SetDose): string {
  const bouts = within ? within.bouts.map((reps) => `+${reps}`).join("") : "";
  switch (amount.kind) {
    case "most":
      return amount.least === undefined ? "as many as possible" : `as many as possible, at least ${amount.least}`;
    case "reps":
      return printSpan(amount.span) + bouts;
    case "hold":
      return `${printSpan(amount.span)} s`;
    case "metres":
      return `${printSpan(amount.span)} m`;
    case "contacts":
      return `${printSpan(amount.span)} contacts`;
    case "time":
      return printMinutes(amount);
  }
}

function printMinutes({ span }: Amount & { kind: "time" }): string {
  const whole = span.from % 60 === 0 && span.to % 60 === 0;
  const one = (seconds: number) =>
    whole ? String(seconds / 60) : `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")}`;
  return `${span.from === span.to ? one(span.from) : `${one(span.from)}–${one(span.to)}`} min`;
}

/** @example printSpan({ from: 8, to: 10 }) //=> "8–10" */
export function printSpan({ from, to }: Span): string {
  return from === to ? String(from) : `${from}–${to}`;
}

/** @example printSeconds(180) //=> "3 min" */
export function printSeconds(seconds: number): string {
  return seconds >= 120 && seconds % 60 === 0 ? `${seconds / 60} min` : `${seconds} s`;
}

/** What all say, or undefined where they differ or nobody says anything. */
function sameOf<T, V>(all: readonly T[], of: (one: T) => V | undefined): V | undefined {
  const [first] = all;
  const value = first === undefined ? undefined : of(first);
  return all.every((one) => of(one) === value) ? value : undefined;
}

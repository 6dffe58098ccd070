import type { Json, Reason } from "../model/index.ts";
import type { Load } from "../units.ts";

/**
 * What is proposed, and with what it rests. Each code names one sentence; its data are listed beside it. Loads are
 * { value, unit } in the meaning of the exercise; ranges are { from, to }; days are written YYYY-MM-DD.
 */
export const PROGRESS_CODES = [
  // What is proposed, or was decided.
  /** exercise or null, to, from: load now or null, percent: of the step, or null */
  "progress/go-to-load",
  /** exercise or null, from, to: ranges of repetitions */
  "progress/widen-range",
  /** exercise or null, sets, amount: as the dose says it */
  "progress/set-dose",
  /** exercise: instead, from: exercise or null */
  "progress/use-form",
  /** exercise or null, until or null */
  "progress/pause",
  /** where: a sign to stop everything */
  "progress/pause-all",
  /** exercise or null */
  "progress/resume",
  /** exercise or null, tempo: seconds for lowering, pause, lifting, pause */
  "progress/slow-down",
  /** exercise or null, from, to: sets */
  "progress/add-set",
  /** exercise or null, load, amount */
  "progress/try-set",
  /** exercise or null, sets, load or null, reserve or null: after time away */
  "progress/begin-again",
  /** level, bouts, runS, walkS: seconds of running and of the walk between */
  "progress/run-level",
  // With what it rests.
  /** level, sessions: { on }: runs of the level that went well, running */
  "progress/runs-good",
  /** level, end: what ended the last run, on */
  "progress/run-ended",
  /** days, since: without a run */
  "progress/runs-away",
  /** level, more: minutes that the next level takes over what the session leaves */
  "progress/run-no-room",
  /** level: of which the session leaves half the bouts */
  "progress/run-cut",
  /** exercise, goal: repetitions, over: repetitions, load or null, sessions: { on, reps, reserve or null } */
  "progress/two-for-two",
  /** from, to: loads, percent, most: per cent */
  "progress/step-fine",
  /** from, to, percent, most */
  "progress/step-too-large",
  /** from, to, percent, most: large, and sure by the record */
  "progress/step-large-sure",
  /** from, to, percent, reps: done, needed: repetitions with the lighter that make up for the step */
  "progress/step-earned",
  /** most: per cent of today's best that limits allow; to, reps: about what to expect with it */
  "progress/share-unknown",
  /** load: the heaviest here that limits leave */
  "progress/nothing-heavier",
  /** load, reps: about what to expect with it */
  "progress/expect",
  /** where, howMuch: 0–10, on, exercise or null, hurt: id of the record */
  "progress/pain",
  /** exercise, tags */
  "progress/shares-stress",
  /** where: a sign to stop everything */
  "progress/stop-sign",
  /** exercise, goal, load or null, sessions: { on, reps, reserve or null } */
  "progress/bottom-reached",
  /** exercise, goal, load, sessions: { on } */
  "progress/all-sets",
  /** exercise, chance: per cent, reps, load or null, reserve, sessions, carried: zone or null */
  "progress/likely",
  /** as likely */
  "progress/unlikely",
  /** exercise, chance: per cent, seconds, sessions */
  "progress/likely-hold",
  /** exercise, asked: range, load, sessions: { on, reserve: least of the session } */
  "progress/more-in-reserve",
  /** as more-in-reserve */
  "progress/less-in-reserve",
  /** exercise, sessions */
  "progress/reserve-missing",
  /** exercise, seconds: the shortest hold, sessions: { on } */
  "progress/held",
  /** exercise, most: seconds */
  "progress/hold-full",
  /** exercise, next, sets, amount: { kind, value }, sessions: { on } */
  "progress/gate-met",
  /** conditions: what must be true of the next form besides */
  "progress/gate-conditions",
  /** exercise */
  "progress/try-first",
  /** exercise, days: that must lie between */
  "progress/gate-too-soon",
  /** exercise, from, to, most: contacts of a session, sessions: { on } */
  "progress/contacts-done",
  /** exercise, floor, limit, done, kind, load or null, sessions, on */
  "progress/under-floor",
  /** exercise, sessions: { on }, clean: sessions needed */
  "progress/technique-lost",
  /** exercise, under: years, clean: sessions needed */
  "progress/technique-unseen",
  /** load, on */
  "progress/last-clean",
  /** exercise, from, to: loads, days, percent: a week, most */
  "progress/fast-rise",
  /** where, on, days */
  "progress/morning-unanswered",
  /** where, on, days: after which an answer is late */
  "progress/morning-late",
  /** where, on, morning, usual, most, rising */
  "progress/morning-normal",
  /** where, on, morning, usual, most, rising */
  "progress/morning-above",
  /** muscle, from, to, most: weekly sets */
  "progress/weekly-growth",
  /** exercise, days, ill, rule, load or null, since */
  "progress/comeback",
  /** no data */
  "progress/well-first",
  /** exercise, load: before the break, sessions: { on } */
  "progress/back-again",
  /** muscle, days: without it, since: last set or first day known, while the break lasts, or null, exposures: sessions since, usual: 0, most: direct sets a session */
  "progress/muscle-new",
  /** muscle, days, since, exposures, usual: weekly sets before, most: weekly sets now */
  "progress/muscle-back",
  /** exercise: it only lowers */
  "progress/lowering-first",
  /** muscles: trained by other movements since */
  "progress/muscles-used",
  /** exercise, from, to: sets, why: comeback or first, sessions: { on } */
  "progress/full-again",
  /** exercise, seconds, settles: decisions on average, slots: that it bears on */
  "progress/tells-most",
  // Light weeks. Weeks are phase/week.
  /** week, instead: week or null, lighter: loads too */
  "progress/light-week",
  /** week */
  "progress/full-week",
  /** week: before which, weeks: hard ones running, ended: what ended the run before them or null, on: its first day or null */
  "progress/hard-weeks",
  /** rule, weeks: hard ones, other: rule, otherWeeks */
  "progress/light-rule",
  /** week */
  "progress/light-planned",
  /** again: weeks after which it is asked once more, or null */
  "progress/light-refused",
  /** apart: weeks */
  "progress/light-too-soon",
  /** light: week, apart: weeks */
  "progress/light-near-rest",
  /** week, because: away, sick, nothing recorded or little done, on: its first day */
  "progress/week-off",
  /** week, days: on which the plan stood still, on: its first day */
  "progress/stood-still",
  /** no data */
  "progress/light-no-record",
  /** no data */
  "progress/light-no-week",
  /** no data */
  "progress/light-not-measured",
  /** no data: sleep and soreness */
  "progress/light-not-recorded",
  /** exercise, kind: reps or hold, sessions: { on, done, low: of the 80 % interval, load or null } */
  "progress/fell-short",
  /** now, was: mean efforts, sessions, before: rated sessions, needed */
  "progress/effort-up",
  /** as effort-up */
  "progress/effort-level",
  /** sessions, before, needed */
  "progress/effort-unrated",
  // What stays as it is, and what it waits for.
  /** sessions: on record, needed: running, of one form, within two weeks of one another */
  "progress/waits-sessions",
  /** asked, done: loads that differ */
  "progress/waits-load",
  /** goal: repetitions of the last set, needed: sessions running */
  "progress/waits-repetitions",
  /** goal: repetitions of every set, needed */
  "progress/waits-all-sets",
  /** no data */
  "progress/waits-no-harder",
  /** way */
  "progress/waits-way",
] as const;
export type ProgressCode = (typeof PROGRESS_CODES)[number];

export function reason(code: ProgressCode, data: Readonly<Record<string, Json>> = {}): Reason {
  return { code, data };
}

/** @returns the load as plain data, null when there is none */
export function plain(load: Load | undefined): Json {
  return load === undefined ? null : { value: load.value, unit: load.unit };
}

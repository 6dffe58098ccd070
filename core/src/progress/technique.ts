import { ageOn, printDay } from "../day.ts";
import type { SlotSession } from "../measures/index.ts";
import type { Reason } from "../model/index.ts";
import { massOf } from "../units.ts";
import type { DoseState, NextDose } from "./dose-state.ts";
import { plain, reason } from "./reasons.ts";
import { trained } from "./trained.ts";

/** Sessions running with a clean technique before a load is raised. Source: open case of the goblet squat; ours. */
const CLEAN = 2;
/** Under this age a load is raised only when the technique was seen to be kept. Source: lloyd2014, ours. */
const GROWN_UP = 18;

const isLost = ({ sets }: SlotSession) => sets.some(({ technique }) => technique === "lost");
const isKept = ({ sets }: SlotSession) =>
  sets.some(({ technique }) => technique === "kept") && sets.every(({ technique }) => technique !== "lost");

/**
 * What the technique says against more: it was lost in one of the last two sessions, or, under 18, was not seen to be
 * kept in both. Numbers never outweigh it.
 *
 * @source lloyd2014, ours
 */
export function techniqueAgainst(state: DoseState): Reason | undefined {
  const last = trained(state).slice(-CLEAN);
  const { exercise, dayOf } = state;
  const lost = last.filter(isLost);
  if (lost.length > 0) {
    const sessions = lost.map(({ at }) => ({ on: printDay(dayOf(at)) }));
    return reason("progress/technique-lost", { exercise: exercise.id, sessions, clean: CLEAN });
  }
  if (ageOn(state.person.born, state.today) < GROWN_UP && !(last.length === CLEAN && last.every(isKept)))
    return reason("progress/technique-unseen", { exercise: exercise.id, under: GROWN_UP, clean: CLEAN });
  return undefined;
}

/**
 * Back to the last load that was lifted cleanly, where the technique was lost in the last two sessions.
 *
 * @returns undefined where it was not, or no easier load was lifted cleanly
 * @source ours
 */
export function toCleanLoad(state: DoseState): NextDose | undefined {
  const done = trained(state);
  const last = done.slice(-CLEAN);
  const { slot, exercise } = state;
  if (last.length < CLEAN || !last.every(isLost)) return undefined;
  const clean = done.findLast((session) => !isLost(session) && session.sets.some(({ lifted }) => lifted !== undefined));
  const load = clean?.sets.find(({ lifted }) => lifted !== undefined)?.lifted;
  const now = slot.load ?? last.at(-1)!.sets.find(({ lifted }) => lifted !== undefined)?.lifted;
  if (load === undefined || now === undefined) return undefined;
  const easier = exercise.loadMeaning === "assist" ? massOf(load) > massOf(now) : massOf(load) < massOf(now);
  if (!easier) return undefined;
  const sessions = last.map(({ at }) => ({ on: printDay(state.dayOf(at)) }));
  const why = reason("progress/technique-lost", { exercise: exercise.id, sessions, clean: CLEAN });
  const to = reason("progress/last-clean", { load: plain(load), on: printDay(state.dayOf(clean!.at)) });
  return {
    kind: "down",
    patch: { slot: slot.key, change: "load", load, exercise: exercise.id },
    evidence: [why, to],
    refused: [],
    others: [],
    since: Math.min(...last.map(({ n }) => n)),
  };
}

import { type AskedSession, askedSession, type SessionSeconds, sessionSeconds } from "../../measures/index.ts";
import {
  type Block,
  type Catalogue,
  type Dose,
  type Path,
  type Session,
  type Slot,
  STATIONS,
  slotsOf,
} from "../../model/index.ts";
import type { Change } from "../run/change.ts";
import { slotPaths } from "../run/walk.ts";
import { doseWith, setsOf } from "./block-sets.ts";

/** Rest that a session short of time can do with, and the share of the 1RM from which rest is left alone. Practice. */
export const SHORT_REST_S = 90;
const HEAVY_PERCENT = 80;
/** A slot is not cut to fewer sets than this. Ours, no source. */
const FEWEST_SETS = 2;

/** A block of a session that is being cut, with the positions it had. */
interface Part {
  readonly block: Block;
  readonly from: readonly number[];
}
export type Parts = readonly Part[];

export function partsOf(session: Session): Parts {
  return session.work.map((block, index) => ({ block, from: [index] }));
}

function mapSlots(block: Block, change: (slot: Slot) => Slot): Block {
  if ("pair" in block) return { ...block, pair: block.pair.map(change) };
  if ("round" in block) return { ...block, round: block.round.map(change) };
  return change(block);
}

function mapDoses(slot: Slot, change: (dose: Dose) => Dose): Slot {
  const dose = change(slot.dose);
  if (slot.changes === undefined) return { ...slot, dose };
  return { ...slot, dose, changes: slot.changes.map((each) => ({ ...each, dose: change(each.dose) })) };
}

function isHeavy(dose: Dose): boolean {
  return dose.sets.some((set) => set.percent !== undefined && set.percent >= HEAVY_PERCENT);
}

/** Rests over 90 s cut to 90 s, but not after heavy sets. */
export function withShortRests(parts: Parts): Parts {
  return parts.map(({ block, from }) => {
    if (slotsOf(block).some((slot) => isHeavy(slot.dose))) return { block, from };
    const isLong = (restS: number | undefined) => restS !== undefined && restS > SHORT_REST_S;
    const cut = (dose: Dose) => (isLong(dose.restS) ? { ...dose, restS: SHORT_REST_S } : dose);
    const shorter = mapSlots(block, (slot) => mapDoses(slot, cut));
    if ("slot" in shorter || !isLong(shorter.restS)) return { block: shorter, from };
    return { block: { ...shorter, restS: SHORT_REST_S }, from };
  });
}

/** One set fewer in the blocks named, where more than two are asked. */
function oneSetFewer(parts: Parts, which: (part: Part) => boolean): Parts {
  return parts.map((part) => {
    if (!which(part) || setsOf(part.block) <= FEWEST_SETS) return part;
    return { ...part, block: mapSlots(part.block, (slot) => mapDoses(slot, (dose) => doseWith(dose, -1))) };
  });
}

export function withOneSetFewer(parts: Parts): Parts {
  return oneSetFewer(parts, () => true);
}

/** One set fewer at a time, from the block with most sets, the last of equals, until the session fits. */
export function withSetsThatFit(parts: Parts, fits: (parts: Parts) => boolean): Parts {
  let now = parts;
  while (now.length > 0 && !fits(now)) {
    const most = now.reduce((best, part) => (setsOf(part.block) >= setsOf(best.block) ? part : best), now[0]!);
    if (setsOf(most.block) <= FEWEST_SETS) return now;
    now = oneSetFewer(now, (part) => part === most);
  }
  return now;
}

/** Two movements compete when one of them is for a muscle that the other uses at all, or both take a busy station. */
function compete(a: Slot, b: Slot, catalogue: Catalogue): boolean {
  const one = catalogue.exercises.get(a.first);
  const other = catalogue.exercises.get(b.first);
  if (one === undefined || other === undefined) return true;
  const muscles = Object.keys(one.muscles) as (keyof typeof one.muscles)[];
  const shared = muscles.some(
    (m) => other.muscles[m] !== undefined && (one.muscles[m] === 1 || other.muscles[m] === 1),
  );
  const busy = [one, other].every(({ needs }) =>
    needs.some((group) => group.every((thing) => STATIONS.includes(thing))),
  );
  return shared || busy;
}

/** The number of sets in every week, which a pair's slots must share. */
function setPlan(slot: Slot): string {
  return JSON.stringify([
    slot.dose.sets.length,
    (slot.changes ?? []).map(({ week, dose }) => [week, dose.sets.length]),
  ]);
}

function isPairable(block: Block): block is Slot {
  return "slot" in block && !isHeavy(block.dose);
}

/** Straight slots that do not compete and have equal sets, put in pairs, each with the next that suits. */
export function inPairs(parts: Parts, catalogue: Catalogue): Parts {
  const taken = new Set<Part>();
  return parts.flatMap((part, index): Parts => {
    if (taken.has(part)) return [];
    const { block } = part;
    if (!isPairable(block)) return [part];
    const mate = parts.slice(index + 1).find((other) => {
      if (taken.has(other) || !isPairable(other.block)) return false;
      return setPlan(block) === setPlan(other.block) && !compete(block, other.block, catalogue);
    });
    if (mate === undefined) return [part];
    taken.add(mate);
    const second = mate.block as Slot;
    const restS = Math.max(block.dose.restS ?? SHORT_REST_S, second.dose.restS ?? SHORT_REST_S);
    return [{ block: { pair: [block, second], restS }, from: [...part.from, ...mate.from] }];
  });
}

/** How long the session takes in a week with its work so cut. */
export function secondsOf(
  session: Session,
  parts: Parts,
  week: number,
  light: boolean,
  catalogue: Catalogue,
): SessionSeconds {
  const asked: AskedSession = askedSession({ ...session, work: parts.map(({ block }) => block) }, week, light);
  return sessionSeconds(asked, (id) => catalogue.exercises.get(id));
}

function doseChanges(before: Slot, after: Slot, at: Path): readonly Change[] {
  const base: readonly Change[] =
    before.dose === after.dose ? [] : [{ op: "set", at: [...at, "dose"], value: after.dose }];
  const later = (after.changes ?? []).flatMap((change, k): readonly Change[] =>
    change.dose === before.changes?.[k]?.dose
      ? []
      : [{ op: "set", at: [...at, "changes", k, "dose"], value: change.dose }],
  );
  return [...base, ...later];
}

/** @returns what has to be changed in a session to come to these parts */
export function changesTo(session: Session, parts: Parts, sessionAt: Path): readonly Change[] {
  return parts.flatMap(({ block, from }): readonly Change[] => {
    const [first, ...gone] = from;
    const at = [...sessionAt, "work", first!];
    if (gone.length > 0) {
      const removed = gone.map((index): Change => ({ op: "remove", at: [...sessionAt, "work", index] }));
      return [{ op: "set", at, value: block }, ...removed];
    }
    const before = session.work[first!]!;
    const paths = slotPaths(before, at);
    const slots = slotsOf(before).flatMap((slot, i) => doseChanges(slot, slotsOf(block)[i]!, paths[i]!));
    const restBefore = "slot" in before ? undefined : before.restS;
    const restAfter = "slot" in block ? undefined : block.restS;
    const rest: readonly Change[] =
      restAfter === undefined || restAfter === restBefore
        ? []
        : [{ op: "set", at: [...at, "restS"], value: restAfter }];
    return [...slots, ...rest];
  });
}

import { directSets, type RecentSets, recentSets } from "../measures/index.ts";
import { MUSCLES, type Muscle, slotsOf } from "../model/index.ts";
import { doseWith, setsOf } from "./cures/block-sets.ts";
import type { Change } from "./run/change.ts";
import type { Check, Cure, Facts } from "./run/check.ts";
import type { Look } from "./run/look.ts";
import { phasePath, sessionPath, slotPaths } from "./run/walk.ts";

type Data = Facts & { readonly phase: string; readonly side: "comeback" | "more than usual" | "new" };

/** Days off after which the first week is a comeback, and after which half is enough. Common practice, no source. */
const COMEBACK_DAYS = 14;
const LONG_DAYS = 28;
/** Share of the usual sets with which somebody comes back: a half to two thirds. Common practice, no source. */
const [HALF, TWO_THIRDS] = [1 / 2, 2 / 3];
/** Most that weekly sets go up by in about four weeks. Source: iusca2021. */
const MOST_TIMES = 1.2;
/** Fewer sets more than these are nothing to speak of. Ours, no source. */
const LEAST_OVER = { comeback: 2, "more than usual": 3 } as const;

/** Direct sets of the first session for a muscle that is new, and trained weeks from which that is known. Ours, no source. */
const NEW_SETS = 2;
const FEWEST_WEEKS = 2;

interface Rule {
  readonly side: "comeback" | "more than usual";
  readonly share: number;
}

function ruleFor({ daysOff }: RecentSets): Rule {
  if (daysOff < COMEBACK_DAYS) return { side: "more than usual", share: MOST_TIMES };
  return { side: "comeback", share: daysOff > LONG_DAYS ? HALF : TWO_THIRDS };
}

interface Over {
  readonly muscle: Muscle;
  readonly sets: number;
  readonly usual: number;
}

/** Muscles that the first week asks more of than the rule allows, of those that had anything before. */
function overIn(look: Look, { usual }: RecentSets, { side, share }: Rule): readonly Over[] {
  const { quarters } = look.weeks[0]![0]!.sets;
  return MUSCLES.flatMap((muscle): readonly Over[] => {
    const sets = (quarters[muscle] ?? 0) / 4;
    const before = usual[muscle];
    const most = share * before;
    const over = sets > most && sets - most >= LEAST_OVER[side];
    return before > 0 && over ? [{ muscle, sets, usual: Math.round(before * 10) / 10 }] : [];
  });
}

/**
 * Muscles that none of somebody's weeks trained and that the first session drives with more sets than one begins with.
 * A novice's first session is another check's matter.
 */
function newIn({ weeks, catalogue, person }: Look, { usual, weeks: known }: RecentSets): readonly Over[] {
  if (known < FEWEST_WEEKS || person?.status === "novice") return [];
  const first = directSets(weeks[0]![0]!.sessions[0]!, catalogue);
  return MUSCLES.flatMap((muscle): readonly Over[] => {
    const sets = first.get(muscle)?.direct ?? 0;
    return usual[muscle] === 0 && sets > NEW_SETS ? [{ muscle, sets, usual: 0 }] : [];
  });
}

/** The first doses of the blocks that drive one of the muscles, fewer sets of each; doses of later weeks stay. */
function fewerSets(look: Look, muscles: readonly Muscle[]): readonly Cure[] {
  return [1, 2, 3].flatMap((fewer): readonly Cure[] => {
    const slots: { slot: string; name: string; from: number; to: number }[] = [];
    const changes: Change[] = [];
    for (const [sessionAt, session] of look.programme.phases[0]!.sessions.entries()) {
      for (const [blockAt, block] of session.work.entries()) {
        const isFor = slotsOf(block).some(({ first }) => {
          const shares = look.catalogue.exercises.get(first)?.muscles ?? {};
          return muscles.some((muscle) => shares[muscle] !== undefined);
        });
        if (!isFor || setsOf(block) <= fewer) continue;
        const paths = slotPaths(block, [...sessionPath(0, sessionAt), "work", blockAt]);
        for (const [turn, slot] of slotsOf(block).entries()) {
          const name = look.catalogue.exercises.get(slot.first)?.name ?? slot.first;
          const from = slot.dose.sets.length;
          slots.push({ slot: slot.slot, name, from, to: from - fewer });
          changes.push({ op: "set", at: [...paths[turn]!, "dose"], value: doseWith(slot.dose, -fewer) });
        }
      }
    }
    return changes.length === 0 ? [] : [{ id: "fewer-sets", group: "sets", data: { slots }, changes }];
  });
}

/**
 * A first week that asks a muscle for more than somebody's recent weeks carry, whatever their form says of fitness. After
 * two weeks off and more, half to two thirds of the usual sets; without a break, no more than 20 % and three sets over
 * them. A muscle that none of two weeks and more trained begins with two sets that it drives, in somebody who is no novice.
 * Judged only where their recent weeks are given.
 *
 * The remedy takes sets away from the first week.
 */
export const comebackSets: Check<"person/comeback-sets", Data> = {
  id: "person/comeback-sets",
  severity: "warn",
  sources: ["practice", "iusca2021", "ours"],
  run(look) {
    const { person, on, programme } = look;
    const [phase] = programme.phases;
    const recent = on === undefined ? undefined : recentSets(person?.recent ?? [], on);
    if (recent === undefined || phase === undefined) return [];
    const rule = ruleFor(recent);
    const over = overIn(look, recent, rule);
    const fresh = newIn(look, recent);
    const about = { phase: phase.key, title: phase.title, daysOff: recent.daysOff, known: recent.weeks };
    const found = (side: Data["side"], muscles: readonly Over[], more: Facts) => ({
      at: phasePath(0),
      data: { ...about, side, ...more, muscles: muscles.map((each) => ({ ...each })) },
      cures: () =>
        fewerSets(
          look,
          muscles.map(({ muscle }) => muscle),
        ),
    });
    return [
      ...(over.length === 0 ? [] : [found(rule.side, over, { percent: Math.round(100 * rule.share) })]),
      ...(fresh.length === 0 ? [] : [found("new", fresh, { most: NEW_SETS })]),
    ];
  },
};

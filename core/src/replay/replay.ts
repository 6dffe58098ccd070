import { type ShareSeen, shareSeen } from "../equations/index.ts";
import { type HurtRecord, type Log, leastOf, type SlotSession, slotHistory } from "../measures/index.ts";
import type { Catalogue, ExerciseId, SlotKey } from "../model/index.ts";
import { type Load, massOf } from "../units.ts";
import type { Rule } from "./rule.ts";
import { type Move, sayNext } from "./say-next.ts";

/** What became of a session: every set that was read reached the bottom of its range and nothing hurt, or not. */
export type Outcome = "done" | "short" | "hurt" | "not entered";

/** One session of one slot: what the rule would have said before it, what was asked instead, and what became of that. */
export interface Occasion {
  readonly person: string;
  readonly slot: SlotKey;
  readonly exercise: ExerciseId;
  /** Epoch milliseconds. */
  readonly at: number;
  readonly load: { readonly before: Load; readonly asked: Load };
  readonly ruled: Move;
  readonly decided: Move;
  readonly outcome: Outcome;
  /** Until and with the first difference of this person and movement; what comes after it the rule would not have met. */
  readonly counts: boolean;
}

/** What was seen of one pair of answers. */
export interface Seen {
  readonly ruled: Move;
  readonly decided: Move;
  readonly occasions: number;
  /** Of the sessions that were entered, the share that was done. It is of what was decided, whatever the rule said. */
  readonly done?: ShareSeen;
}

/** What a rule says of a session that is still to come. */
export interface Open extends Pick<Occasion, "person" | "slot" | "exercise" | "ruled"> {
  /** As it was asked last. */
  readonly load: Load;
}

export interface Replayed {
  readonly people: number;
  readonly movements: number;
  /** Where both said the same: what was seen is evidence for the rule. */
  readonly agreed: readonly Seen[];
  /** First differences: what the rule would have led to was not seen. */
  readonly differed: readonly Seen[];
  /** Occasions after the first difference of their person and movement: no evidence either way. */
  readonly after: number;
  /** Sessions of which nothing can be said: another form, another range, or no load to compare. */
  readonly notCompared: number;
  readonly occasions: readonly Occasion[];
  /** What the rule says of the next session, where it is another load. */
  readonly open: readonly Open[];
}

/** One person's record. */
export interface ReplayPerson {
  readonly person: string;
  readonly log: Log;
  readonly hurts: readonly HurtRecord[];
  /** Epoch milliseconds: when the next session is asked about. */
  readonly now: number;
}

/** Pain from this on is no session that went well: what may go on by itself. Source: silbernagel2007. */
const FREE_PAIN = 2;

/**
 * A rule run over records, session by session, each time with what was recorded until then.
 *
 * The record shows what came of what was asked, and of nothing else. So the rule is judged where it would have said what
 * was asked; where it would have said something else, that is told and not judged; and after the first such place of a
 * person and movement nothing is evidence, since with the rule the record would have gone on otherwise.
 *
 * @source wilson1927, ours
 */
export function replay(rule: Rule, people: readonly ReplayPerson[], catalogue: Catalogue): Replayed {
  const found = people.map((one) => ofPerson(rule, one, catalogue));
  const occasions = found.flatMap((each) => each.occasions);
  const counted = occasions.filter(({ counts }) => counts);
  return {
    people: people.length,
    movements: new Set(occasions.map(({ person, slot, exercise }) => `${person} ${slot} ${exercise}`)).size,
    agreed: seenOf(counted.filter(({ ruled, decided }) => ruled === decided)),
    differed: seenOf(counted.filter(({ ruled, decided }) => ruled !== decided)),
    after: occasions.length - counted.length,
    notCompared: found.reduce((sum, each) => sum + each.notCompared, 0),
    occasions,
    open: found.flatMap((each) => each.open),
  };
}

function ofPerson(rule: Rule, { person, log, hurts, now }: ReplayPerson, catalogue: Catalogue) {
  const occasions: Occasion[] = [];
  const open: Open[] = [];
  let notCompared = 0;
  for (const slot of new Set(log.map(({ asked }) => asked.key))) {
    const history = slotHistory(log, slot)
      .filter(({ light, sets }) => !light && sets.length > 0)
      .toSorted((a, b) => a.n - b.n);
    const differed = new Set<ExerciseId>();
    for (const [before, session] of history.slice(1).entries()) {
      const last = history[before]!;
      const { exercise } = session.asked;
      const helps = catalogue.exercises.get(exercise)?.loadMeaning === "assist";
      const decided = movedFrom(last, session, helps);
      if (decided === undefined) {
        notCompared++;
        continue;
      }
      const ruled = sayNext(rule, history.slice(0, before + 1), session.at);
      const counts = !differed.has(exercise);
      if (ruled !== decided) differed.add(exercise);
      const load = { before: last.asked.load!, asked: session.asked.load! };
      const outcome = outcomeOf(session, hurts);
      occasions.push({ person, slot, exercise, at: session.at, load, ruled, decided, outcome, counts });
    }
    const last = history.at(-1);
    const load = last?.asked.load;
    const ruled = sayNext(rule, history, now);
    if (last !== undefined && load !== undefined && ruled !== "same")
      open.push({ person, slot, exercise: last.asked.exercise, load, ruled });
  }
  return { occasions, open, notCompared };
}

/** How the load that was asked moved; undefined where form or range changed, or there is no load. */
function movedFrom({ asked: was }: SlotSession, { asked: is }: SlotSession, helps: boolean): Move | undefined {
  if (was.exercise !== is.exercise || was.load === undefined || is.load === undefined) return undefined;
  const spans = [was, is].map(({ dose }) => dose.sets[0]?.amount);
  const [first, second] = spans;
  if (first?.kind !== "reps" || second?.kind !== "reps") return undefined;
  if (first.span.from !== second.span.from || first.span.to !== second.span.to) return undefined;
  const more = (massOf(is.load) - massOf(was.load)) * (helps ? -1 : 1);
  return more > 0 ? "up" : more < 0 ? "back" : "same";
}

function outcomeOf({ session, asked, sets }: SlotSession, hurts: readonly HurtRecord[]): Outcome {
  if (hurts.some((hurt) => hurt.session === session && hurt.slot === asked.key && hurt.howMuch > FREE_PAIN))
    return "hurt";
  const read = sets.flatMap((set) => {
    const reps = leastOf(set.reps);
    return reps === undefined || set.asked?.amount.kind !== "reps" ? [] : [reps - set.asked.amount.span.from];
  });
  if (read.length === 0) return "not entered";
  return read.every((over) => over >= 0) ? "done" : "short";
}

const MOVES: readonly Move[] = ["up", "same", "back"];

function seenOf(occasions: readonly Occasion[]): readonly Seen[] {
  return MOVES.flatMap((ruled) =>
    MOVES.flatMap((decided): Seen[] => {
      const some = occasions.filter((each) => each.ruled === ruled && each.decided === decided);
      if (some.length === 0) return [];
      const entered = some.filter(({ outcome }) => outcome !== "not entered");
      const done = shareSeen(entered.filter(({ outcome }) => outcome === "done").length, entered.length);
      return [{ ruled, decided, occasions: some.length, ...(done === undefined ? {} : { done }) }];
    }),
  );
}

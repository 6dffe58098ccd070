import { EQUIPMENT, type Reason, type SlotKey } from "../model/index.ts";
import { cautionData, limitData } from "../offer/index.ts";
import { type Built, build, type FitInput } from "./build.ts";
import { lettersOf, withoutCaution, withoutLimits } from "./changes.ts";
import { reason } from "./reasons.ts";
import { leastMust } from "./search.ts";
import type { BlockTask, FitTask } from "./task.ts";

/** A rule that may be in conflict with others: what it says, and the phase or its task without it. */
interface Rule {
  readonly says: Reason;
  readonly without: { readonly input: (input: FitInput) => FitInput } | { readonly task: (task: FitTask) => FitTask };
}

const MORE_THAN_ENOUGH = 99;

function ofPerson(input: FitInput): readonly Rule[] {
  const { person, place } = input;
  const all = Object.fromEntries(EQUIPMENT.map((what) => [what, MORE_THAN_ENOUGH]));
  const rule = (says: Reason, change: (input: FitInput) => FitInput): Rule => ({ says, without: { input: change } });
  return [
    rule(reason("fit/rule-kit", { place: place.name }), (from) => ({
      ...from,
      place: { ...from.place, equipment: all, outages: [] },
    })),
    rule(reason("fit/rule-earned"), (from) => ({ ...from, person: { ...from.person, status: "advanced", rungs: {} } })),
    ...person.cautions.map((caution) =>
      rule(reason("fit/rule-caution", { ...cautionData(caution), who: caution.who }), (from) =>
        withoutCaution(from, from.person.cautions.indexOf(caution)),
      ),
    ),
    ...lettersOf(input).map((letter) =>
      rule(reason("fit/rule-limit", limitData(letter.at(-1)!)), (from) => withoutLimits(from, letter)),
    ),
    ...person.cannot.map((tag) =>
      rule(reason("fit/rule-cannot", { tag }), (from) => ({
        ...from,
        person: { ...from.person, cannot: from.person.cannot.filter((each) => each !== tag) },
      })),
    ),
  ];
}

/** Leaves open what was asked to be filled: no must points for it. */
function mayStayOpen(task: FitTask, key: SlotKey): FitTask {
  const blocks = task.blocks.map((block): BlockTask => {
    const at = block.slots.indexOf(key);
    if (at < 0) return block;
    const ways = block.ways.map((way) => ({
      ...way,
      steps: way.steps.with(
        at,
        way.steps[at]!.map((option) => (option.exercise === undefined ? { ...option, must: 0 } : option)),
      ),
    }));
    return { ...block, ways };
  });
  return { ...task, blocks };
}

/** Forms of a session that count as different in each of its slots. */
function repeatable(task: FitTask, session: number): FitTask {
  const blocks = task.blocks.map((block, b): BlockTask => {
    if (block.session !== session) return block;
    const ways = block.ways.map((way) => ({
      ...way,
      steps: way.steps.map((step, s) =>
        step.map((option) =>
          option.exercise === undefined ? option : { ...option, exercise: `${option.exercise} ${b} ${s}` },
        ),
      ),
    }));
    return { ...block, ways };
  });
  return { ...task, blocks };
}

function ofTask(input: FitInput, { task, sessions }: Built): readonly Rule[] {
  const rule = (says: Reason, change: (task: FitTask) => FitTask): Rule => ({ says, without: { task: change } });
  const bands = task.rows.flatMap((row, index) =>
    row.level === "must"
      ? [
          rule(reason("fit/rule-band", { muscle: row.id, low: row.low, high: row.high }), (from) => ({
            ...from,
            rows: from.rows.with(index, { ...row, underPoints: 0, overPoints: 0 }),
          })),
        ]
      : [],
  );
  return [
    ...bands,
    ...sessions.flatMap(({ session, blocks }, index) => [
      rule(
        reason("fit/rule-minutes", { session: session.key, minutes: Math.min(session.minutes, input.person.minutes) }),
        (from) => ({ ...from, capacity: from.capacity.with(index, Number.MAX_SAFE_INTEGER) }),
      ),
      rule(reason("fit/rule-once", { session: session.key }), (from) => repeatable(from, index)),
      ...blocks.flatMap(({ slots }) =>
        slots.map(({ slot }) =>
          rule(reason("fit/rule-fill", { slot: slot.slot }), (from) => mayStayOpen(from, slot.slot)),
        ),
      ),
    ]),
    rule(reason("fit/rule-stations"), (from) => {
      const { stations: _, ...rest } = from;
      return { ...rest, blocks: from.blocks.map((block) => ({ ...block, atOnce: new Map() })) };
    }),
  ];
}

/** Only the session of a slot matters to it, unless weekly bands bind the sessions together. */
function around(input: FitInput, key: SlotKey): FitInput {
  if ((input.programme.weekly?.must ?? []).length > 0) return input;
  const holds = input.phase.sessions.filter(({ work }) =>
    work.some((block) =>
      ("pair" in block ? block.pair : "round" in block ? block.round : [block]).some(({ slot }) => slot === key),
    ),
  );
  return { ...input, phase: { ...input.phase, sessions: holds } };
}

/**
 * The rules that cannot all hold together, because of which a slot stays open: drop any one of them, and the rest can be
 * kept. Rules are: what the place has, what the person has earned, each caution, limit and thing they cannot do, the
 * minutes of a session, no form twice in it, stations, each slot to be filled, each weekly band that must hold.
 *
 * Found by a divide-and-conquer search for a minimal conflict (Junker 2004), in which every question is whether a plan
 * without must points exists under some of the rules. There may be other conflicts beside it.
 *
 * @returns undefined when the slot can be filled with every rule in force
 */
export function conflictOf(phase: FitInput, key: SlotKey): readonly Reason[] | undefined {
  const input = around(phase, key);
  const built = build(input);
  const isTarget = ({ says }: Rule) => says.code === "fit/rule-fill" && says.data["slot"] === key;
  const all = [...ofTask(input, built), ...ofPerson(input)];
  const target = all.filter(isTarget);
  const others = all.filter((rule) => !isTarget(rule));
  const known = new Map<string, FitTask>();
  /** Whether these rules, and no others, can be kept together. */
  const fits = (rules: readonly Rule[]) => {
    const dropped = all.filter((rule) => !rules.includes(rule));
    const name = dropped.flatMap((rule) => ("input" in rule.without ? [all.indexOf(rule)] : [])).join(" ");
    const changed = dropped.reduce((from, { without }) => ("input" in without ? without.input(from) : from), input);
    const task = known.get(name) ?? build(changed).task;
    known.set(name, task);
    return (
      leastMust(dropped.reduce((from, { without }) => ("task" in without ? without.task(from) : from), task)) === 0
    );
  };
  if (target.length === 0) return undefined;
  for (let rules: readonly Rule[] = others; !fits([...target, ...rules]); ) {
    const conflict = minimal(target, [], rules, fits);
    if (conflict.length === 0 || fits(conflict)) return [...target, ...conflict].map(({ says }) => says);
    // Rules that are in conflict without this slot tell nothing about it: what they want filled is given up.
    rules = rules.filter((rule) => !(conflict.includes(rule) && rule.says.code === "fit/rule-fill"));
  }
  return undefined;
}

/** The least of the rules that cannot hold with the kept ones; `added` are those of the kept that are new. */
function minimal(
  kept: readonly Rule[],
  added: readonly Rule[],
  rules: readonly Rule[],
  fits: (rules: readonly Rule[]) => boolean,
  first = true,
): readonly Rule[] {
  if ((first || added.length > 0) && !fits(kept)) return [];
  if (rules.length < 2) return rules;
  const half = rules.length >> 1;
  const [one, two] = [rules.slice(0, half), rules.slice(half)];
  const ofTwo = minimal([...kept, ...one], one, two, fits, false);
  const ofOne = minimal([...kept, ...ofTwo], ofTwo, one, fits, false);
  return [...ofOne, ...ofTwo];
}

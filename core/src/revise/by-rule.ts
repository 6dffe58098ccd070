import { canonicalJson, highestCounter, type Reason, type StandingRule, type StaveEvent } from "../model/index.ts";
import type { Waiting } from "../progress/index.ts";
import { ruleLeaves } from "../watch/index.ts";
import type { PlannedPerson } from "./situation.ts";
import { type View, viewOf } from "./view-of.ts";

/** The device by which rules speak. */
export const RULE_DEVICE = "stave-rule";

/**
 * The words of the rules in force on what waits: what one of them may take is accepted in its name. What a rule has
 * answered once it does not answer again, also where the coach has taken it back.
 *
 * @param at epoch milliseconds
 * @returns events, ready to be appended
 */
export function wordsByRule(
  person: PlannedPerson,
  rules: readonly StandingRule[],
  at: number,
): readonly StaveEvent<"accepted">[] {
  if (rules.length === 0) return [];
  const view = viewOf(person);
  const answered = new Set(
    person.events.flatMap(({ device, data }) =>
      device === RULE_DEVICE ? (data as { proposal?: string }).proposal : [],
    ),
  );
  let n = highestCounter(person.events);
  return view.waiting.flatMap((one): StaveEvent<"accepted">[] => {
    const { proposal } = one;
    if (answered.has(proposal.proposal)) return [];
    const rule = rules.find((each) => leftBy(view, one, [each]).length === 0);
    if (rule === undefined) return [];
    const { id, version, by } = rule;
    n++;
    return [
      {
        v: 1,
        id: `rule-${person.hash(canonicalJson({ proposal: proposal.proposal, id, version })).slice(0, 32)}`,
        person: person.person.id,
        device: RULE_DEVICE,
        n,
        at,
        kind: "accepted",
        data: { ...proposal, by: `rule ${id}, version ${version}, by ${by}` },
      },
    ];
  });
}

/** Why none of the rules takes a proposal: the reasons of the one that has fewest. Nothing without any rule. */
export function leftBy(view: View, one: Waiting, rules: readonly StandingRule[]): readonly Reason[] {
  const { person, record, log, days } = view;
  const { proposal, stop, slot, exercise, certainty } = one;
  const asked = { patch: proposal.patch, stop, slot, exercise, ...(certainty === undefined ? {} : { certainty }) };
  const [fewest = []] = rules
    .map((rule) => ruleLeaves(rule, asked, { ...person, record, log, days }))
    .sort((a, b) => a.length - b.length);
  return fewest;
}

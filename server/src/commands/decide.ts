import type { DecisionInput, Morning } from "@stave/core/api";
import { day } from "@stave/core/day";
import type { Problem } from "@stave/core/model";
import { en, namesFrom, sayReason } from "@stave/core/text";
import { LOCAL_PRACTICE } from "../local-practice.ts";
import { sha256 } from "../made-by.ts";
import { Changes, Practice } from "../practice/index.ts";
import { type Answer, failed } from "./answer.ts";
import { openRecords } from "./data.ts";
import { type Machine, todayAt } from "./machine.ts";

export interface DecideOptions {
  readonly data: string;
  readonly all?: true;
  readonly person?: string;
  readonly refuse?: true;
  readonly undo?: true;
}

/** Says the coach's word on many proposals at once, or takes words of today back. */
export async function decide(ids: readonly string[], options: DecideOptions, machine: Machine): Promise<Answer> {
  const command = "decide";
  const data = await openRecords(options.data, machine);
  if ("problem" in data) return failed(command, [data.problem]);
  try {
    const practice = new Practice(data.store, LOCAL_PRACTICE, new Changes());
    const now = machine.clock();
    const list = await practice.morning(day(todayAt(now)), now);
    const { inputs, problems } =
      options.undo === true ? undoing(ids, list, options, now) : answering(ids, list, options, now);
    if (problems.length > 0) return failed(command, problems);
    const answers = await practice.decideMany(inputs, now);
    const names = namesFrom(await practice.catalogue());
    const said = answers.map((answer, at) => ({ ...answer, kind: inputs[at]!.kind, person: inputs[at]!.person }));
    const titles = new Map(
      [
        ...list.people.flatMap(({ items }) => items.map(({ proposal, title }) => [proposal.proposal, title] as const)),
        ...list.decided.map(({ id, title }) => [id, title] as const),
      ].map(([id, title]) => [id, sayReason(title, names)]),
    );
    const about = (input: DecisionInput) =>
      "proposal" in input ? input.proposal : "decision" in input ? input.decision : "";
    const words = answers.map((answer, at) => {
      const input = inputs[at]!;
      const title = titles.get(about(input)) ?? about(input);
      return "why" in answer
        ? `not taken (${answer.why}): ${title}`
        : `${en.decided[input.kind]} ${title} [${answer.id}]`;
    });
    const none = inputs.length === 0 ? ["Nothing waits that stops nothing."] : [];
    return {
      command,
      result: { answers: said },
      findings: [],
      problems: [],
      words: `${[...words, ...none].join("\n")}\n`,
    };
  } finally {
    await data.store.close();
  }
}

interface Asked {
  readonly inputs: readonly DecisionInput[];
  readonly problems: readonly Problem[];
}

function problem(file: string, code: string, found: string, allowed: readonly string[]): Problem {
  return { code, file, at: [], line: 0, column: 0, found, allowed: allowed.slice(0, 12).join(", ") };
}

function answering(ids: readonly string[], { people }: Morning, options: DecideOptions, now: number): Asked {
  const waiting = people.flatMap(({ person, items }) => items.map((item) => ({ person: person.id, item })));
  const byId = new Map(waiting.map((one) => [one.item.proposal.proposal, one]));
  const unknown = ids.filter((id) => !byId.has(id));
  const mine = waiting.filter(({ person }) => options.person === undefined || person === options.person);
  const all = options.all === true ? mine.filter(({ item }) => !item.stop) : [];
  const chosen = new Set([...ids.flatMap((id) => byId.get(id) ?? []), ...all]);
  const kind = options.refuse === true ? "refused" : "accepted";
  const empty = ids.length === 0 && options.all !== true;
  return {
    inputs: [...chosen].map(({ person, item: { proposal } }) => ({
      id: `decision-${sha256(`${kind} ${proposal.proposal} ${now}`).slice(0, 32)}`,
      person,
      kind,
      proposal: proposal.proposal,
    })),
    problems: [
      ...(empty ? [problem(options.data, "decide/nothing-named", "", [...byId.keys()])] : []),
      ...unknown.map((id) => problem(options.data, "decide/unknown", id, [...byId.keys()])),
    ],
  };
}

function undoing(ids: readonly string[], { decided }: Morning, options: DecideOptions, now: number): Asked {
  const byId = new Map(decided.map((one) => [one.id, one]));
  const unknown = ids.filter((id) => !byId.has(id));
  return {
    inputs: ids.flatMap((id): DecisionInput[] => {
      const found = byId.get(id);
      if (found === undefined) return [];
      return [
        { id: `undone-${sha256(`${id} ${now}`).slice(0, 32)}`, person: found.person.id, kind: "undone", decision: id },
      ];
    }),
    problems: [
      ...(ids.length === 0 ? [problem(options.data, "decide/nothing-named", "", [...byId.keys()])] : []),
      ...unknown.map((id) => problem(options.data, "decide/unknown", id, [...byId.keys()])),
    ],
  };
}

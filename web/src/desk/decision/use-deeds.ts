import type { DecisionInput, DecisionOutput, MorningItem, PersonOutput } from "@stave/core/api";
import type { Patch } from "@stave/core/model";
import { useCallback, useReducer, useRef } from "react";
import { ask, type Fault, newId, sayFault, tell } from "../ask/index.ts";
import { useSay } from "../speaker.tsx";
import { words } from "../words.ts";
import { asProposedNow } from "./as-proposed-now.ts";
import { type Deeds, idFor, stepDeeds, type Undoable, type Unnamed } from "./deeds.ts";

/** A proposal of one person, as the pages hand it around. */
export interface Case {
  readonly person: { readonly id: string; readonly name: string };
  readonly item: MorningItem;
  /** What is proposed, in words. */
  readonly title: string;
}

/** An answer to a proposal. `title` says in words what is done instead. */
export type Verdict =
  | { readonly kind: "accepted" }
  | { readonly kind: "refused" }
  | { readonly kind: "changed"; readonly instead: Patch; readonly title: string };

function inputFor({ person, item }: Case, verdict: Verdict): Unnamed {
  const about = { person: person.id, proposal: item.proposal.proposal };
  return verdict.kind === "changed"
    ? { ...about, kind: "changed", instead: verdict.instead }
    : { ...about, kind: verdict.kind };
}

function isStale(fault: Fault): boolean {
  return fault.kind === "refused" && fault.status === 409;
}

/** The proposal that says the same now, if there is one. */
async function itemNow({ person, item }: Case): Promise<MorningItem | undefined> {
  const answer = await ask<PersonOutput>(`people/${encodeURIComponent(person.id)}`);
  return answer.ok ? asProposedNow(item, answer.value.waiting) : undefined;
}

/** The decisions of one page: sends them, takes them back, knows what became of each. */
export function useDeeds() {
  const [deeds, step] = useReducer(stepDeeds, new Map() as Deeds);
  const latest = useRef(deeds);
  latest.current = deeds;
  const groups = useRef<(readonly Undoable[])[]>([]);
  const say = useSay();

  const decide = useCallback(
    async (cases: readonly Case[], verdict: Verdict) => {
      const sent = cases.map((of) => {
        const proposal = of.item.proposal.proposal;
        const asked = inputFor(of, verdict);
        const id = idFor(latest.current.get(proposal), asked, newId());
        const title = verdict.kind === "changed" ? verdict.title : of.title;
        return { of, proposal, deed: { id, person: of.person, title, input: { id, ...asked } as DecisionInput } };
      });
      for (const { proposal, deed } of sent) step({ step: "send", proposal, deed });
      const stand: Undoable[] = [];
      for (const one of sent) {
        let { deed } = one;
        let answer = await tell<DecisionOutput>("decisions", deed.input);
        const item = answer.ok || !isStale(answer.fault) ? undefined : await itemNow(one.of);
        if (item !== undefined) {
          const id = newId();
          deed = { ...deed, id, input: { id, ...inputFor({ ...one.of, item }, verdict) } as DecisionInput };
          step({ step: "send", proposal: one.proposal, deed });
          answer = await tell<DecisionOutput>("decisions", deed.input);
        }
        if (answer.ok) stand.push(deed);
        step(answer.ok ? { step: "stands", id: deed.id } : { step: "failed", id: deed.id, fault: answer.fault });
        if (!answer.ok) say(words.faults.notSent(sayFault(answer.fault)));
      }
      if (stand.length > 0) groups.current.push(stand);
      const [first] = stand;
      if (first !== undefined && stand.length === sent.length) {
        const { done, said, saidMany } = words.decision;
        say(stand.length > 1 ? saidMany(stand.length) : said(done[verdict.kind], first.person.name, first.title));
      }
      return stand.length === sent.length;
    },
    [say],
  );

  const undo = useCallback(
    async (group: readonly Undoable[]) => {
      let undone = 0;
      for (const { id, person } of group) {
        step({ step: "undo", id });
        const answer = await tell<DecisionOutput>("decisions", {
          id: newId(),
          person: person.id,
          kind: "undone",
          decision: id,
        } satisfies DecisionInput);
        step(answer.ok ? { step: "undone", id } : { step: "not undone", id, fault: answer.fault });
        if (answer.ok) undone += 1;
        else say(words.faults.notSent(sayFault(answer.fault)));
      }
      const gone = new Set(group.map(({ id }) => id));
      groups.current = groups.current
        .map((each) => each.filter(({ id }) => !gone.has(id)))
        .filter((each) => each.length > 0);
      const [first] = group;
      if (first === undefined || undone < group.length) return;
      const { saidManyUndone, saidUndone } = words.decision;
      say(undone > 1 ? saidManyUndone(undone) : saidUndone(first.person.name, first.title));
    },
    [say],
  );

  /** Takes back what was decided last on this page, else the one given: what was decided last anywhere. */
  const undoLast = useCallback(
    (otherwise: Undoable | undefined) => {
      const group = groups.current.at(-1) ?? (otherwise === undefined ? [] : [otherwise]);
      if (group.length === 0) say(words.decision.nothingToUndo);
      else void undo(group);
    },
    [undo, say],
  );

  /** Changes a plan without a proposal. @returns why it could not be, or undefined when it stands */
  const pin = useCallback(
    async (person: Case["person"], pins: readonly { readonly patch: Patch; readonly title: string }[]) => {
      const stand: Undoable[] = [];
      for (const { patch, title } of pins) {
        const input = { id: newId(), person: person.id, kind: "pinned", patch } satisfies DecisionInput;
        const answer = await tell<DecisionOutput>("decisions", input);
        if (!answer.ok) {
          if (stand.length > 0) groups.current.push(stand);
          return answer.fault;
        }
        stand.push({ id: input.id, person, title });
        say(words.decision.said(words.decision.done.pinned, person.name, title));
      }
      groups.current.push(stand);
      return undefined;
    },
    [say],
  );

  return { deeds, decide, pin, undo, undoLast };
}

import type { DecisionInput } from "../api/index.ts";
import { canonicalJson, highestCounter, type Patch, type StaveEvent, slotsOf } from "../model/index.ts";
import type { PlannedPerson } from "./situation.ts";
import { type View, viewOf } from "./view-of.ts";

/** Who says it, by which device, when. */
export interface Speaker {
  /** The coach's name. */
  readonly by: string;
  readonly device: string;
  /** Epoch milliseconds. */
  readonly at: number;
}

export type Word =
  | { readonly ok: true; readonly event: StaveEvent }
  | { readonly ok: false; readonly why: "stale" | "unknown" | "taken" };

/**
 * The event that a coach's word becomes, ready to be appended. The same input asked again gives the event that is there
 * already.
 *
 * @returns why not, where the word answers nothing: `stale` when no such proposal waits, `unknown` when no such slot or
 * decision is there, `taken` when another event has the id
 */
export function decide(person: PlannedPerson, input: DecisionInput, { by, device, at }: Speaker): Word {
  const view = viewOf(person);
  const there = person.events.find(({ id }) => id === input.id);
  if (there !== undefined) return isSaid(there, input) ? { ok: true, event: there } : { ok: false, why: "taken" };
  const said = dataOf(view, input);
  if (typeof said === "string") return { ok: false, why: said };
  const n = highestCounter(person.events) + 1;
  const data = { ...said, by } as unknown as StaveEvent["data"];
  return { ok: true, event: { v: 1, id: input.id, person: person.person.id, device, n, at, kind: input.kind, data } };
}

function dataOf({ person, record, waiting }: View, input: DecisionInput): object | "stale" | "unknown" {
  if (input.kind === "undone") {
    const stands = record.decisions.some(({ id }) => id === input.decision);
    return stands ? { decision: input.decision } : "unknown";
  }
  if (input.kind === "pinned") return takes(person, input.patch) ? { patch: input.patch, cut: record.cut } : "unknown";
  const found = waiting.find(({ proposal }) => proposal.proposal === input.proposal)?.proposal;
  if (found === undefined) return "stale";
  if (input.kind !== "changed") return found;
  return takes(person, input.instead) ? { ...found, instead: input.instead } : "unknown";
}

/** What may be changed of a run. */
const OF_A_RUN: ReadonlySet<Patch["change"]> = new Set<Patch["change"]>(["run-walk", "pause", "resume"]);

/** Whether the programme has a slot, or a run, of which this can be said. */
function takes({ programme }: PlannedPerson, { slot: key, change }: Patch): boolean {
  const sessions = programme.phases.flatMap((phase) => phase.sessions);
  const runs = sessions.flatMap(({ conditioning = [] }) =>
    conditioning.flatMap((item) => ("runWalk" in item ? item.slot : [])),
  );
  if (runs.includes(key)) return OF_A_RUN.has(change);
  return change !== "run-walk" && sessions.some(({ work }) => work.flatMap(slotsOf).some(({ slot }) => slot === key));
}

/** Whether an event says what was asked: the same kind of word about the same thing. */
function isSaid(event: StaveEvent, input: DecisionInput): boolean {
  const said = event.data as { proposal?: string; patch?: Patch; instead?: Patch; decision?: string };
  if (event.kind !== input.kind) return false;
  switch (input.kind) {
    case "undone":
      return said.decision === input.decision;
    case "pinned":
      return canonicalJson(said.patch) === canonicalJson(input.patch);
    case "changed":
      return said.proposal === input.proposal && canonicalJson(said.instead) === canonicalJson(input.instead);
    default:
      return said.proposal === input.proposal;
  }
}

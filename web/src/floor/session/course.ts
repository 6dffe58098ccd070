import type { PlanSession, PlanSlot } from "@stave/core/model";

/** One set of one slot. */
export interface Place {
  readonly slot: string;
  /** 0 = first. */
  readonly set: number;
}

/** What fills the screen, one after the other. */
export type Step =
  | { readonly kind: "warm-up" }
  | ({ readonly kind: "set"; readonly of: PlanSlot; readonly restS?: number } & Place)
  | { readonly kind: "conditioning" };

/** Name of a place in drafts and in lists. */
export function placeKey({ slot, set }: Place): string {
  return `${slot}/${set}`;
}

/** Name of a step in drafts. */
export function stepKey(step: Step): string {
  return step.kind === "set" ? placeKey(step) : step.kind;
}

export function slotsOf(session: PlanSession): readonly PlanSlot[] {
  return session.blocks.flatMap(({ slots }) => slots);
}

/** @returns the sets of a block in the order of doing: all of one slot, or first sets first where slots alternate */
function setsOf(block: PlanSession["blocks"][number]): readonly Step[] {
  const step = (of: PlanSlot, set: number): Step => {
    const restS = of.dose.restS ?? block.restS;
    return { kind: "set", slot: of.key, set, of, ...(restS === undefined ? {} : { restS }) };
  };
  if (block.kind === "straight") return block.slots.flatMap((of) => of.dose.sets.map((_, set) => step(of, set)));
  const rounds = Math.max(0, ...block.slots.map(({ dose }) => dose.sets.length));
  return Array.from({ length: rounds }, (_, set) =>
    block.slots.filter(({ dose }) => set < dose.sets.length).map((of) => step(of, set)),
  ).flat();
}

/** The whole of a session in the order of doing. */
export function courseOf(session: PlanSession): readonly Step[] {
  return [
    ...(session.warmup.length > 0 ? [{ kind: "warm-up" } as const] : []),
    ...session.blocks.flatMap(setsOf),
    ...(session.conditioning.length > 0 ? [{ kind: "conditioning" } as const] : []),
  ];
}

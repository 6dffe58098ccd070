import type { Bundle, EventData, PlanSession, PlanSlot } from "@stave/core/model";

/** A swap of one slot, as its event says it. */
export type Swap = EventData["swapped"] & { readonly slot: string };

function swapped(slot: PlanSlot, to: string, bundle: Bundle): PlanSlot {
  if (to === slot.exercise) return slot;
  const form = bundle.offers.find(({ slot: key }) => key === slot.key)?.forms.find(({ exercise }) => exercise === to);
  const { load: _load, loads: _loads, find: _find, side: _side, ...rest } = slot;
  return {
    ...rest,
    exercise: to,
    ...(form?.dose === undefined ? {} : { dose: form.dose }),
    ...(form?.side === undefined ? {} : { side: form.side }),
    ...(form?.load === undefined ? {} : { load: form.load }),
  };
}

/**
 * The session after its swaps. Of several swaps of a slot the last one counts, with the load and the dose of the offer.
 *
 * @param swaps in their order
 */
export function asItStands(session: PlanSession, swaps: readonly Swap[], bundle: Bundle): PlanSession {
  const form = new Map(swaps.map(({ slot, to }) => [slot, to]));
  return {
    ...session,
    blocks: session.blocks.map((block) => ({
      ...block,
      slots: block.slots.map((slot) => swapped(slot, form.get(slot.key) ?? slot.exercise, bundle)),
    })),
  };
}

import { type Block, MUSCLES, type Muscle, slotsOf } from "../model/index.ts";
import { apart } from "./cures/apart.ts";
import type { Check, Cure, Facts, Found } from "./run/check.ts";
import type { Look } from "./run/look.ts";
import { sessionPath } from "./run/walk.ts";

type Data = Facts & { readonly slot: string; readonly muscles: readonly Muscle[]; readonly names: readonly string[] };

/** Muscles that two or more movements of a block drive. */
function driven({ catalogue }: Look, block: Block): readonly Muscle[] {
  const forms = slotsOf(block).map(({ first }) => catalogue.exercises.get(first)?.muscles ?? {});
  return MUSCLES.filter((muscle) => forms.filter((shares) => shares[muscle] === 1).length > 1);
}

/**
 * A pair or round in which two movements are for the same muscle, so that it rests while it works. It is a way to save
 * time at the price of load and repetitions, and often an oversight.
 *
 * The remedy does them one after the other.
 */
export const pairForOneMuscle: Check<"session/pair-for-one-muscle", Data> = {
  id: "session/pair-for-one-muscle",
  severity: "note",
  sources: ["practice"],
  run(look) {
    return look.programme.phases.flatMap((phase, phaseAt) =>
      phase.sessions.flatMap((session, sessionAt) =>
        session.work.flatMap((block, blockAt): readonly Found<Data>[] => {
          const muscles = "slot" in block ? [] : driven(look, block);
          if (muscles.length === 0) return [];
          const at = [...sessionPath(phaseAt, sessionAt), "work", blockAt];
          const slots = slotsOf(block);
          const names = slots.map(({ first }) => look.catalogue.exercises.get(first)?.name ?? first);
          const about = { phase: phase.key, session: session.key, slot: slots[0]!.slot };
          return [
            {
              at,
              data: { ...about, muscles, names },
              cures: (): readonly Cure[] => [{ id: "do-apart", data: { names }, changes: apart(block, at) }],
            },
          ];
        }),
      ),
    );
  },
};

import { type Block, type Equipment, type Exercise, STATIONS, slotsOf } from "../model/index.ts";
import { apart } from "./cures/apart.ts";
import type { Check, Cure, Facts, Found } from "./run/check.ts";
import type { Look } from "./run/look.ts";
import { sessionPath } from "./run/walk.ts";

type Data = Facts & { readonly slot: string; readonly station: string; readonly names: readonly string[] };

/** Stations without which an exercise cannot be done. */
function stationsOf({ needs }: Exercise): readonly Equipment[] {
  return needs.flatMap((group) => (group.length === 1 && STATIONS.includes(group[0]!) ? group : []));
}

/** Each station that more slots of a block need than there are of it. */
function crowded({ catalogue, place }: Look, block: Block): readonly (readonly [Equipment, readonly string[]])[] {
  const wanted = new Map<Equipment, string[]>();
  for (const { first } of slotsOf(block)) {
    const exercise = catalogue.exercises.get(first);
    if (exercise === undefined) continue;
    for (const station of stationsOf(exercise)) wanted.set(station, [...(wanted.get(station) ?? []), exercise.name]);
  }
  // Without a place one of each is taken; a place without any is another check's matter.
  return [...wanted].filter(([station, names]) => {
    const have = place?.equipment[station] ?? (place === undefined ? 1 : 0);
    return have > 0 && names.length > have;
  });
}

/**
 * A pair or round in which two movements need the same station, so that one must be left and found again after every
 * set. It warns where the place is known and has too few; otherwise it notes what one station would mean.
 *
 * The remedy does them one after the other.
 */
export const oneStationTwice: Check<"session/one-station-twice", Data> = {
  id: "session/one-station-twice",
  severity: "warn",
  sources: ["ours"],
  run(look) {
    return look.programme.phases.flatMap((phase, phaseAt) =>
      phase.sessions.flatMap((session, sessionAt) =>
        session.work.flatMap((block, blockAt): readonly Found<Data>[] => {
          if ("slot" in block) return [];
          const [worst] = crowded(look, block);
          if (worst === undefined) return [];
          const [station, names] = worst;
          const at = [...sessionPath(phaseAt, sessionAt), "work", blockAt];
          const have = look.place?.equipment[station];
          return [
            {
              at,
              ...(look.place === undefined ? { severity: "note" } : {}),
              data: {
                phase: phase.key,
                session: session.key,
                slot: slotsOf(block)[0]!.slot,
                station,
                names,
                have: have ?? null,
              },
              cures: (): readonly Cure[] => [{ id: "do-apart", data: { names }, changes: apart(block, at) }],
            },
          ];
        }),
      ),
    );
  },
};

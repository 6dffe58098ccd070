import { askedAmount } from "../measures/index.ts";
import { doseWith } from "./cures/block-sets.ts";
import type { Check, Cure, Facts, Found } from "./run/check.ts";
import type { AskedWeek, Look } from "./run/look.ts";
import { pathOf, sessionPath } from "./run/walk.ts";

type Data = Facts & { readonly phase: string; readonly session: string; readonly contacts: number };

/** Landings in one session with which people new to them begin: 30 to 60. Common practice, no source. */
const MOST_CONTACTS = 60;

function contactsIn({ sessions }: AskedWeek, sessionAt: number): number {
  let contacts = 0;
  for (const { slots } of sessions[sessionAt]!.blocks) {
    for (const { amount } of slots.flatMap(({ dose }) => dose.sets)) {
      if (amount.kind === "contacts") contacts += askedAmount(amount).count;
    }
  }
  return contacts;
}

/** One set fewer, then two, of every straight slot of landings whose dose stays the same. */
function fewerSets(look: Look, phaseAt: number, sessionAt: number): readonly Cure[] {
  const places = look.slots.filter(({ slot, block, ...place }) => {
    const here = place.phaseAt === phaseAt && place.sessionAt === sessionAt && "slot" in block;
    return here && slot.changes === undefined && slot.dose.sets.some(({ amount }) => amount.kind === "contacts");
  });
  return [1, 2, 3, 4].flatMap((fewer): readonly Cure[] => {
    const able = places.filter(({ slot }) => slot.dose.sets.length > fewer);
    if (able.length === 0) return [];
    const slots = able.map(({ slot }) => {
      const name = look.catalogue.exercises.get(slot.first)?.name ?? slot.first;
      return { slot: slot.slot, name, from: slot.dose.sets.length, to: slot.dose.sets.length - fewer };
    });
    const changes = able.map((place) => {
      return { op: "set", at: [...pathOf(place), "dose"], value: doseWith(place.slot.dose, -fewer) } as const;
    });
    return [{ id: "fewer-sets", group: "sets", data: { slots }, changes }];
  });
}

/**
 * Over sixty landings in one session of a programme for novices. Landings are counted as contacts.
 *
 * The remedy takes sets away.
 */
export const manyContacts: Check<"session/many-contacts", Data> = {
  id: "session/many-contacts",
  severity: "warn",
  sources: ["practice"],
  run(look) {
    if (!look.doses.some(({ dose }) => dose.sets.some(({ amount }) => amount.kind === "contacts"))) return [];
    if ((look.person?.status ?? look.programme.status) !== "novice") return [];
    return look.programme.phases.flatMap((phase, phaseAt) =>
      phase.sessions.flatMap((session, sessionAt): readonly Found<Data>[] => {
        const contacts = Math.max(...look.weeks[phaseAt]!.map((week) => contactsIn(week, sessionAt)));
        if (!(contacts > MOST_CONTACTS)) return [];
        const about = { phase: phase.key, session: session.key, title: session.title };
        return [
          {
            at: sessionPath(phaseAt, sessionAt),
            data: { ...about, contacts, most: MOST_CONTACTS },
            cures: () => fewerSets(look, phaseAt, sessionAt),
          },
        ];
      }),
    );
  },
};

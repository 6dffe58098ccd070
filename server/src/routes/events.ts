import { PAPER_DEVICE } from "@stave/core/record";
import { RULE_DEVICE } from "@stave/core/revise";
import { DESK_DEVICE } from "../practice/index.ts";
import { type Fault, Refusal } from "../safeguard/index.ts";
import type { Handlers, Serving } from "./handlers.ts";

/** Most events of one answer; whoever reads on gets the rest. */
const MOST_READ = 500;

/** By these the coach's own words are recorded. */
const RESERVED: ReadonlySet<string> = new Set([DESK_DEVICE, PAPER_DEVICE, RULE_DEVICE]);

export function events({ store, practice }: Serving): Pick<Handlers, "sendEvents" | "readEvents"> {
  return {
    async sendEvents({ caller, input }) {
      const wrong = (is: (event: (typeof input.events)[number]) => boolean, name: string, message: string): Fault[] =>
        input.events.flatMap((event, i) => (is(event) ? [{ at: ["body", "events", i, name], message }] : []));
      const others = wrong(({ person }) => person !== caller.person, "person", "Another person's");
      if (others.length > 0)
        throw new Refusal(422, "event/other-person", "A device sends events of its own person", { faults: others });
      const reserved = wrong(({ device }) => RESERVED.has(device), "device", "The coach's own device");
      if (reserved.length > 0)
        throw new Refusal(422, "event/reserved-device", "No device may go by that name", { faults: reserved });
      const acks = await practice(caller.practice).append(caller.person, input.events);
      return { acks: input.events.map(({ id }, i) => ({ id, ack: acks[i]! })) };
    },

    async readEvents({ caller, query }) {
      const after = Number(query.after ?? 0);
      const read = (await store.eventsOf(caller.practice, caller.person, after)).slice(0, MOST_READ);
      return { events: read.map(({ event }) => event), after: read.at(-1)?.position ?? after };
    },
  };
}

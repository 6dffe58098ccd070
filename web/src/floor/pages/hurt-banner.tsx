import type { Bundle } from "@stave/core/model";
import type { KeptEvent } from "../kept/index.ts";
import { Note } from "../parts/index.ts";
import { words } from "../words.ts";

/** Pain of this session: whom to call until it was received, then that it was. */
export function HurtBanner({
  bundle,
  events,
  session,
}: {
  bundle: Bundle;
  events: readonly KeptEvent[];
  session: string;
}) {
  const hurts = events.filter(({ event }) => event.kind === "hurt" && event.of?.session === session);
  if (hurts.length === 0) return null;
  const received = hurts.every(({ fate }) => fate === "sent" || fate === "theirs");
  return (
    <Note stop={!received} role="alert">
      {received ? words.hurt.sent : words.hurt.notSent(bundle.call)}
    </Note>
  );
}

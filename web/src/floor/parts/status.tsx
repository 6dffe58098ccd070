import type { Shown } from "../phone.ts";
import { words } from "../words.ts";

/** Where what was said is now: on its way to the disk, on this phone, with the coach. */
export function Status({ kept, saving }: Pick<Shown, "kept" | "saving">) {
  const { events } = kept;
  const waiting = events.filter(({ fate }) => fate === "unsent").length;
  const sent = events.some(({ fate }) => fate === "sent");
  const says =
    saving === "busy"
      ? words.status.saving
      : waiting > 0
        ? `${words.status.saved} · ${words.status.notSent(waiting)}`
        : sent
          ? words.status.sent
          : "";
  return <span role="status">{saving === "failed" ? "" : says}</span>;
}

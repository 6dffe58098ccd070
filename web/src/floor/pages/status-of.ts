import type { Shown } from "../phone.ts";
import { words } from "../words.ts";

/** Where what was said is now: on its way to the disk, on this phone, with the coach. */
export function statusOf({ kept: { events }, saving }: Pick<Shown, "kept" | "saving">): string {
  if (saving === "failed") return "";
  if (saving === "busy") return words.status.saving;
  const waiting = events.filter(({ fate }) => fate === "unsent").length;
  if (waiting > 0) return `${words.status.saved} · ${words.status.notSent(waiting)}`;
  return events.some(({ fate }) => fate === "sent") ? words.status.sent : "";
}

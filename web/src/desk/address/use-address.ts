import { useSyncExternalStore } from "react";
import { type Address, printAddress, readAddress } from "./address.ts";

const MOVED = "stave-moved";

function subscribe(moved: () => void): () => void {
  window.addEventListener("popstate", moved);
  window.addEventListener(MOVED, moved);
  return () => {
    window.removeEventListener("popstate", moved);
    window.removeEventListener(MOVED, moved);
  };
}

/** Where the coach is; the page is drawn again when that changes. */
export function useAddress(): Address {
  const text = useSyncExternalStore(subscribe, () => location.pathname + location.search);
  const cut = text.indexOf("?");
  return readAddress({ pathname: cut < 0 ? text : text.slice(0, cut), search: cut < 0 ? "" : text.slice(cut) });
}

/** @param how "replace" leaves no step to come back to, as while typing into a filter */
export function go(address: Address, how: "push" | "replace" = "push"): void {
  const text = printAddress(address);
  if (text !== location.pathname + location.search) {
    if (how === "push") history.pushState(null, "", text);
    else history.replaceState(null, "", text);
  }
  window.dispatchEvent(new Event(MOVED));
}

import type { AnchorHTMLAttributes, MouseEvent } from "react";
import { type Address, printAddress } from "./address.ts";
import { go } from "./use-address.ts";

type Props = { readonly to: Address } & Omit<AnchorHTMLAttributes<HTMLAnchorElement>, "href">;

/** A plain link that changes the page in place; with a modifier key the browser does what it always does. */
export function Link({ to, ...rest }: Props) {
  const follow = (event: MouseEvent) => {
    if (event.button !== 0 || event.metaKey || event.ctrlKey || event.shiftKey || event.altKey) return;
    event.preventDefault();
    go(to);
  };
  return <a {...rest} href={printAddress(to)} onClick={follow} />;
}

import { printDay } from "@stave/core/day";
import type { Screening } from "@stave/core/model";

/** A screening outcome as it is entered in the roster and printed as JSON. */
export function printedScreening({ on, until, agreed, ...said }: Screening) {
  return {
    ...said,
    on: printDay(on),
    until: printDay(until),
    ...(agreed === undefined ? {} : { agreed: { ...agreed, on: printDay(agreed.on) } }),
  };
}

import type { Weekday } from "../day.ts";
import type { Load, MassUnit } from "../units.ts";
import type { Equipment, OtherBar } from "./equipment.ts";

/** A weight stack. Its numbers are labels: they never compare with another machine. */
export interface Stack {
  readonly unit: MassUnit;
  /** Every pin, rising. */
  readonly pins: readonly number[];
}

export interface OpenHours {
  readonly day: Weekday;
  /** Minutes after midnight, wall time. */
  readonly from: number;
  readonly to: number;
}

/** Out of order, lent or locked away from a day to a day, both included. */
export interface Outage {
  readonly what: Equipment;
  readonly from: string;
  readonly to: string;
}

/** Days with other hours, both included: those given, or none. */
export interface Holiday {
  readonly from: string;
  readonly to: string;
  readonly open: readonly OpenHours[];
}

/** Somewhere a person trains, with what is really there. */
export interface Place {
  readonly id: string;
  readonly name: string;
  /** IANA time zone. */
  readonly zone: string;
  /** How many of each; a thing that is not here is not there. */
  readonly equipment: Readonly<Partial<Record<Equipment, number>>>;
  /** Loads of single implements, per piece. `pairs` says that there are two of each. */
  readonly dumbbells?: { readonly loads: readonly Load[]; readonly pairs: boolean };
  readonly kettlebells?: readonly Load[];
  readonly bars?: readonly Load[];
  /** What bars of another shape weigh empty, one of each kind. */
  readonly otherBars?: Readonly<Partial<Record<OtherBar, Load>>>;
  /** Plates, as pairs. */
  readonly plates?: readonly { readonly load: Load; readonly pairs: number }[];
  readonly collars?: Load;
  /** Bands by the owner's own labels, weakest first. */
  readonly bands?: readonly string[];
  readonly stacks?: Readonly<Partial<Record<Equipment, Stack>>>;
  /** Single weights for one hand or a bag, where nothing above fits: filled bags, backpacks, weighted balls. */
  readonly bags?: readonly Load[];
  readonly open?: readonly OpenHours[];
  readonly holidays?: readonly Holiday[];
  readonly outages?: readonly Outage[];
}

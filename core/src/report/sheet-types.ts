import type { LoadLine } from "./load-line.ts";

/** One movement in one week. */
export interface SheetCell {
  /** Only where it is not the dose of the first column. */
  readonly dose: string | null;
  readonly load: LoadLine | null;
  readonly boxes: number;
  /** Whether a box is parted for left and right. */
  readonly split: boolean;
}

export interface SheetRow {
  readonly name: string;
  readonly dose: string;
  readonly note: string | null;
  /** Where the row stands in a pair or round. */
  readonly turn: "alone" | "first" | "middle" | "last";
  /** Over the first row of a pair or round: that it is done in turn, and the rest. */
  readonly above: string | null;
  /** One for each week; none in a row that runs over all of them. */
  readonly cells: readonly SheetCell[];
}

export interface SheetWeek {
  readonly label: string;
  /** "light", or null. */
  readonly light: string | null;
  /** The day on which the session is planned; null leaves a blank. */
  readonly day: string | null;
}

export interface SheetPage {
  readonly title: string;
  /** Who, what and where; and how long, and screened when. Each piece may be of another script. */
  readonly left: readonly string[];
  readonly right: readonly string[];
  readonly weeks: readonly SheetWeek[];
  readonly rows: readonly SheetRow[];
  /** What nobody could fill. */
  readonly open: string | null;
  readonly foot: readonly (readonly [head: string, text: string])[];
  /** Where to type the sheet in: the plan and the session. */
  readonly mark: string;
}

/** A person's sheet as data; the layout only draws it. */
export interface Sheet {
  readonly lang: string;
  readonly paper: "a4" | "us-letter";
  readonly title: string;
  readonly words: { readonly movement: string; readonly date: string };
  readonly pages: readonly SheetPage[];
}

/** A picture and what it says, for those who do not see it. */
export interface Picture {
  readonly svg: string;
  readonly label: string;
}

/** One part of a report, in this order: lines, movements with their strokes, a picture, a table. */
export interface ReportPart {
  readonly heading: string;
  readonly lines: readonly string[];
  readonly strips: readonly (Picture & { readonly name: string; readonly words: string })[];
  readonly picture: Picture | null;
  readonly table: { readonly columns: readonly string[]; readonly rows: readonly (readonly string[])[] } | null;
}

export const REPORT_KINDS = ["person", "clinician", "coach"] as const;
export type ReportKind = (typeof REPORT_KINDS)[number];

/** A report in words, ready to be laid out. */
export interface Report {
  readonly kind: ReportKind;
  readonly lang: "en";
  readonly paper: "a4" | "us-letter";
  readonly title: string;
  readonly name: string;
  /** Beside the name: programme, days, who wrote it. */
  readonly about: readonly string[];
  readonly parts: readonly ReportPart[];
  readonly foot: readonly string[];
}

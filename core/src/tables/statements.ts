import type { Grade, Lane, Statement, StressTag } from "../model/index.ts";
import type { SourceId } from "../sources.ts";

/** Upper bounds on every set done under a statement. What is missing is not limited. */
export interface DoseLimits {
  /** Whole per cent of today's best single (machines: of the best setting); never more. */
  readonly percent?: number;
  /** Repetitions left; never fewer. */
  readonly reserve?: number;
  /** Seconds of a hold; never longer. */
  readonly holdS?: number;
  readonly noBreathHold: boolean;
  readonly noLoweringOnly: boolean;
}

/**
 * What one statement asks for.
 *
 * A ceiling of n: grade n + 1 is never offered, grade n is watched if n is 1 or more. Tags not named are free.
 * `recheckWeeks` is the usual time to the next question; without it only a clinician's own date counts, and until
 * one is entered the row stays. Row 2 may go to every 6 weeks after week 12.
 */
export interface StatementRow {
  readonly id: Statement;
  /** Row of the printed table; the three regions of surgery are one statement. */
  readonly row: string;
  readonly ceilings: Readonly<Partial<Record<StressTag, Grade>>>;
  readonly limits: DoseLimits;
  readonly withheld: readonly Lane[];
  /** Only entries that need no leg function. */
  readonly seatedOnly: boolean;
  /** No entry in which an arm carries or moves load. */
  readonly noArms: boolean;
  /** Entries done in a wheelchair may be offered. */
  readonly wheelchair: boolean;
  readonly recheckWeeks?: number;
}

function limits(
  percent: number | undefined,
  reserve: number,
  holdS: number | undefined,
  breath: "no breath-hold" | "breath free",
  lowering: "no lowering-only" | "lowering-only allowed",
): DoseLimits {
  return {
    ...(percent === undefined ? {} : { percent }),
    reserve,
    ...(holdS === undefined ? {} : { holdS }),
    noBreathHold: breath === "no breath-hold",
    noLoweringOnly: lowering === "no lowering-only",
  };
}

const NO_FILTER = { withheld: [], seatedOnly: false, noArms: false, wheelchair: false } as const;

/**
 * The 18 statements in 20 rows. Every number is our own judgement.
 *
 * "unsigned": a practising coach and a clinician must sign it, with name and date, before it reaches a person; until
 * then every page that uses it says so.
 */
export const STATEMENT_TABLE: {
  readonly source: SourceId;
  readonly status: "unsigned";
  readonly rows: readonly StatementRow[];
} = {
  source: "ours",
  status: "unsigned",
  rows: [
    {
      id: "pregnant",
      row: "1",
      ceilings: {
        supine: 1,
        pressor: 1,
        balance: 1,
        impact: 1,
        abd_press: 1,
        prone: 1,
        head_down: 1,
        head_quick: 1,
        sp_flex: 1,
      },
      limits: limits(70, 3, 30, "no breath-hold", "no lowering-only"),
      ...NO_FILTER,
      recheckWeeks: 4,
    },
    {
      id: "postnatal",
      row: "2",
      ceilings: { impact: 0, abd_press: 1, pressor: 1, sp_flex: 1, balance: 2, head_quick: 1 },
      limits: limits(60, 4, 20, "no breath-hold", "no lowering-only"),
      ...NO_FILTER,
      recheckWeeks: 2,
    },
    {
      id: "pressure",
      row: "3",
      ceilings: { pressor: 1, head_down: 1 },
      limits: limits(70, 2, 20, "no breath-hold", "lowering-only allowed"),
      ...NO_FILTER,
      recheckWeeks: 6,
    },
    {
      id: "bone",
      row: "4",
      ceilings: {
        sp_flex: 0,
        sp_rot: 1,
        sp_axial: 2,
        sp_hold: 2,
        impact: 1,
        balance: 2,
        head_quick: 1,
        sp_ext: 2,
        head_down: 1,
      },
      limits: limits(75, 2, 30, "no breath-hold", "no lowering-only"),
      ...NO_FILTER,
      recheckWeeks: 12,
    },
    {
      id: "back",
      row: "5",
      ceilings: { sp_hold: 1, sp_flex: 1, sp_axial: 1, sp_ext: 1, sp_rot: 1, abd_press: 2 },
      limits: limits(70, 3, 30, "no breath-hold", "no lowering-only"),
      ...NO_FILTER,
      recheckWeeks: 2,
    },
    {
      id: "shoulder",
      row: "6",
      ceilings: { sh_overhead: 1, sh_abd_er: 0, sh_ir_elev: 0, sh_ext: 0 },
      limits: limits(70, 3, 30, "breath free", "no lowering-only"),
      ...NO_FILTER,
      recheckWeeks: 3,
    },
    {
      id: "knee",
      row: "7",
      ceilings: { knee_deep: 1, knee_open: 0, impact: 1, kneel: 0, ankle_df: 1 },
      limits: limits(70, 3, 30, "breath free", "no lowering-only"),
      ...NO_FILTER,
      recheckWeeks: 3,
    },
    {
      id: "wrist",
      row: "8",
      ceilings: { wr_ext: 0, grip: 2 },
      limits: limits(75, 2, 60, "breath free", "lowering-only allowed"),
      ...NO_FILTER,
      recheckWeeks: 3,
    },
    {
      id: "vertigo",
      row: "9",
      ceilings: {
        head_quick: 0,
        head_down: 0,
        supine: 1,
        prone: 1,
        floor: 1,
        balance: 1,
        sp_axial: 1,
        impact: 1,
        sh_overhead: 1,
      },
      limits: limits(75, 2, 30, "no breath-hold", "lowering-only allowed"),
      ...NO_FILTER,
      recheckWeeks: 2,
    },
    {
      id: "eye",
      row: "10",
      ceilings: { head_down: 0, pressor: 1 },
      limits: limits(65, 3, 15, "no breath-hold", "lowering-only allowed"),
      ...NO_FILTER,
    },
    {
      id: "hernia",
      row: "11",
      ceilings: { abd_press: 1, pressor: 1, sp_flex: 1, impact: 1 },
      limits: limits(60, 3, 20, "no breath-hold", "lowering-only allowed"),
      ...NO_FILTER,
      recheckWeeks: 4,
    },
    {
      id: "surgery-arm",
      row: "12a",
      ceilings: {
        sh_overhead: 0,
        sh_abd_er: 0,
        sh_ir_elev: 0,
        sh_ext: 0,
        elbow: 0,
        wr_ext: 0,
        grip: 0,
        floor: 1,
        impact: 1,
        balance: 1,
        sp_axial: 1,
      },
      limits: limits(60, 4, 20, "no breath-hold", "lowering-only allowed"),
      ...NO_FILTER,
      withheld: ["push", "pull"],
      noArms: true,
    },
    {
      id: "surgery-leg",
      row: "12b",
      ceilings: {
        hip_deep: 0,
        hip_spread: 0,
        knee_deep: 0,
        knee_open: 0,
        kneel: 0,
        ankle_df: 0,
        impact: 0,
        balance: 0,
        floor: 1,
      },
      limits: limits(60, 4, 20, "no breath-hold", "lowering-only allowed"),
      ...NO_FILTER,
      withheld: ["squat", "hinge", "single leg"],
      seatedOnly: true,
    },
    {
      id: "surgery-trunk",
      row: "12c",
      ceilings: {
        sp_axial: 0,
        sp_hold: 0,
        sp_flex: 0,
        sp_ext: 0,
        sp_rot: 0,
        abd_press: 0,
        impact: 1,
        balance: 1,
        sh_ext: 1,
        sh_abd_er: 1,
        pressor: 1,
        floor: 1,
      },
      limits: limits(50, 4, 10, "no breath-hold", "lowering-only allowed"),
      ...NO_FILTER,
      withheld: ["trunk", "hinge"],
    },
    {
      id: "hip",
      row: "13",
      ceilings: { hip_deep: 1, hip_spread: 0, balance: 1, impact: 1 },
      limits: limits(70, 3, 30, "breath free", "no lowering-only"),
      ...NO_FILTER,
    },
    {
      id: "larger",
      row: "14",
      ceilings: { floor: 1, impact: 1, prone: 1, balance: 2 },
      limits: limits(undefined, 3, 30, "breath free", "no lowering-only"),
      ...NO_FILTER,
      recheckWeeks: 12,
    },
    {
      id: "flare",
      row: "15",
      ceilings: {
        sh_overhead: 1,
        sh_abd_er: 1,
        sh_ir_elev: 1,
        sh_ext: 1,
        elbow: 1,
        wr_ext: 1,
        grip: 1,
        sp_axial: 1,
        sp_hold: 1,
        sp_flex: 1,
        sp_ext: 1,
        sp_rot: 1,
        hip_deep: 1,
        hip_spread: 1,
        knee_deep: 1,
        knee_open: 1,
        kneel: 1,
        ankle_df: 1,
        impact: 1,
      },
      limits: limits(50, 4, 10, "no breath-hold", "no lowering-only"),
      ...NO_FILTER,
      recheckWeeks: 1,
    },
    {
      id: "diabetes",
      row: "16",
      ceilings: { pressor: 1, head_down: 0, impact: 0, balance: 1 },
      limits: limits(65, 3, 20, "no breath-hold", "lowering-only allowed"),
      ...NO_FILTER,
      recheckWeeks: 6,
    },
    {
      id: "seated",
      row: "17",
      ceilings: { sh_overhead: 2, sh_ext: 1, floor: 1 },
      limits: limits(75, 2, 30, "breath free", "no lowering-only"),
      withheld: ["squat", "hinge", "single leg"],
      seatedOnly: true,
      noArms: false,
      wheelchair: true,
      recheckWeeks: 12,
    },
    {
      // "Below 80 %" in whole per cent is at most 79. Holds keep the range of their own entry.
      id: "young",
      row: "18",
      ceilings: {},
      limits: limits(79, 2, undefined, "no breath-hold", "lowering-only allowed"),
      ...NO_FILTER,
      recheckWeeks: 12,
    },
  ],
};

const BY_ID: ReadonlyMap<Statement, StatementRow> = new Map(STATEMENT_TABLE.rows.map((row) => [row.id, row]));

/** @returns the row of a statement; every statement has one */
export function statementRow(id: Statement): StatementRow {
  return BY_ID.get(id)!;
}

import type { Person, Plan, Programme } from "@stave/core/model";
import { asText } from "./as-text.ts";
import { writeTable } from "./write-table.ts";

export interface RosterLine {
  readonly person: Person;
  readonly programme: Programme;
  readonly plan: Plan;
  readonly perWeek: number;
  /** Why there is no sheet; undefined when there is one. */
  readonly noSheet?: string;
}

const COLUMNS = [
  "person",
  "name",
  "programme",
  "sessions_a_week",
  "minutes_low",
  "minutes_high",
  "slots",
  "open_slots",
  "must_points",
  "want_points",
  "proven",
  "sheet",
  "why_no_sheet",
] as const;

/** The roster as a table for the coach: a row a person, for the firm phase of their plan. */
export function rosterTable(lines: readonly RosterLine[]): string {
  const rows = lines.map(({ person, programme, plan, perWeek, noSheet }) => {
    const phase = plan.phases.find(({ key }) => key === plan.firmTo.phase)!;
    const { sessions } = phase.weeks[0]!;
    const filled = sessions.flatMap((session) => session.blocks.flatMap((block) => block.slots)).length;
    const open = sessions.flatMap((session) => session.open).length;
    return [
      person.id,
      asText(person.name),
      asText(programme.title),
      perWeek,
      Math.min(...sessions.map(({ minutes }) => minutes.low)),
      Math.max(...sessions.map(({ minutes }) => minutes.high)),
      filled + open,
      open,
      phase.score.must,
      phase.score.want,
      phase.score.proven,
      noSheet === undefined,
      asText(noSheet ?? ""),
    ];
  });
  return writeTable(COLUMNS, rows);
}

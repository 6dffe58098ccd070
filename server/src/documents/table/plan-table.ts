import { type Day, printDay } from "@stave/core/day";
import {
  type Amount,
  type Catalogue,
  type Person,
  type Plan,
  type PlanSlot,
  type Programme,
  printDose,
} from "@stave/core/model";
import { stringify } from "csv-stringify/sync";
import { asText } from "./as-text.ts";

export interface PlanTableInput {
  readonly plan: Plan;
  readonly person: Person;
  readonly programme: Programme;
  readonly catalogue: Catalogue;
  /** Day of a session by its occurrence, phase/week/session, where it has one. */
  readonly dates?: ReadonlyMap<string, Day>;
}

const COLUMNS = [
  "person",
  "programme",
  "phase",
  "week",
  "light",
  "date",
  "session",
  "slot",
  "movement",
  "sets",
  "amount_from",
  "amount_to",
  "amount_unit",
  "each_side",
  "load",
  "load_unit",
  "load_meaning",
  "rest_s",
  "dose",
] as const;

const UNITS: Readonly<Record<Amount["kind"], string>> = {
  reps: "reps",
  most: "reps",
  hold: "s",
  metres: "m",
  time: "s",
  contacts: "contacts",
};

function amountOf(slot: PlanSlot): readonly [from: number | "", to: number | "", unit: string] {
  const amount = slot.dose.sets[0]?.amount;
  if (amount === undefined) return ["", "", ""];
  if (amount.kind === "most") return [amount.least ?? "", "", UNITS.most];
  return [amount.span.from, amount.span.to, UNITS[amount.kind]];
}

/**
 * A plan as a table, a row for each slot of each week: RFC 4180, UTF-8 without a mark, a point for decimals. Columns that
 * hold words cannot start a formula in a spreadsheet.
 */
export function planTable({ plan, person, programme, catalogue, dates }: PlanTableInput): string {
  const rows = plan.phases.flatMap((phase) =>
    phase.weeks.flatMap((week) =>
      week.sessions.flatMap((session) =>
        session.blocks.flatMap((block) =>
          block.slots.map((slot) => {
            const exercise = catalogue.exercises.get(slot.exercise);
            const day = dates?.get(`${phase.key}/${week.week}/${session.key}`);
            const load = slot.load ?? slot.find?.from;
            return [
              asText(person.name),
              asText(programme.title),
              asText(phase.title),
              week.week,
              week.light ? "yes" : "no",
              day === undefined ? "" : printDay(day),
              asText(session.title),
              slot.key,
              asText(exercise?.name ?? slot.exercise),
              slot.dose.sets.length,
              ...amountOf(slot),
              slot.dose.sets.some((set) => set.eachSide) ? "yes" : "no",
              load?.value ?? "",
              load?.unit ?? "",
              exercise?.loadMeaning ?? "",
              block.restS ?? slot.dose.restS ?? "",
              printDose(slot.dose),
            ];
          }),
        ),
      ),
    ),
  );
  return stringify([COLUMNS, ...rows], { record_delimiter: "windows" });
}

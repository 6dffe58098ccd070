import { type Day, printDay } from "@stave/core/day";
import {
  type Catalogue,
  type Dose,
  type Exercise,
  type Person,
  type Plan,
  type PlanPhase,
  type PlanSession,
  type PlanSlot,
  type Programme,
  printDose,
} from "@stave/core/model";
import { afterDose, loadLine, loadWords } from "@stave/core/report";
import { en } from "@stave/core/text";
import { asText } from "./as-text.ts";
import { type Value, writeTable } from "./write-table.ts";

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
  "name",
  "programme",
  "phase",
  "week",
  "date",
  "session",
  "order",
  "slot",
  "movement",
  "sets",
  "amount",
  "load",
  "unit",
  "rest_s",
  "note",
] as const;

/** What one line of a session says, before it is known where it stands. */
type Line = readonly [
  slot: string,
  movement: string,
  sets: Value,
  amount: string,
  load: Value,
  unit: string,
  restS: Value,
  note: readonly string[],
];

const { sheet } = en;

/** What one set asks for; every set where they differ. */
function amountOf({ sets, tempo }: Dose): string {
  const words = printDose({ sets, ...(tempo === undefined ? {} : { tempo }) });
  return words.startsWith(`${sets.length} × `) && !words.includes(" + ")
    ? words.slice(`${sets.length} × `.length)
    : words;
}

function workLines(session: PlanSession, person: Person, exerciseOf: (id: string) => Exercise): readonly Line[] {
  return session.blocks.flatMap(({ kind, restS, slots }) =>
    slots.map((slot: PlanSlot): Line => {
      const exercise = exerciseOf(slot.exercise);
      const note = [
        ...(kind === "straight" ? [] : [sheet.inTurn]),
        ...(slot.side === undefined ? [] : [sheet.oneSide(slot.side)]),
        loadLine(exercise, slot, person.units).text,
      ];
      const [load, unit] = slot.load === undefined ? ["", ""] : [slot.load.value, slot.load.unit];
      const rest = restS ?? slot.dose.restS ?? "";
      return [slot.key, exercise.name, slot.dose.sets.length, amountOf(slot.dose), load, unit, rest, note];
    }),
  );
}

function easyLines(session: PlanSession, person: Person, exerciseOf: (id: string) => Exercise) {
  const line = (
    item: {
      readonly exercise: string;
      readonly dose: Dose;
      readonly load?: PlanSlot["load"];
      readonly for?: string;
      readonly run?: { readonly slot: string };
    },
    note: string,
  ): Line => {
    const exercise = exerciseOf(item.exercise);
    const load = item.load === undefined ? [] : [loadWords(exercise, item.load, person.units)];
    return [
      item.for ?? item.run?.slot ?? "",
      exercise.name,
      item.dose.sets.length,
      amountOf(item.dose),
      item.load?.value ?? "",
      item.load?.unit ?? "",
      item.dose.restS ?? "",
      [note, ...load],
    ];
  };
  return {
    before: session.warmup.map((item) => line(item, sheet.warmUp)),
    after: session.conditioning.map((item) =>
      line(
        item,
        [
          ...(item.run === undefined ? [] : [`${afterDose(item)}.`]),
          sheet.efforts[item.effort],
          ...(item.pulse === undefined ? [] : [sheet.beats(item.pulse)]),
        ].join(" "),
      ),
    ),
  };
}

/**
 * A plan as a table, a row for each thing that is done, in the order in which it is done, week by week; open slots stand
 * at the end of their session without an order. Later phases are marked as a forecast. It says nothing of health.
 *
 * `load` is a number only where a load is known; what is to be found stands in the note. Columns that hold words cannot
 * start a formula in a spreadsheet.
 */
export function planTable({ plan, person, programme, catalogue, dates }: PlanTableInput): string {
  const exerciseOf = (id: string): Exercise => {
    const exercise = catalogue.exercises.get(id);
    if (exercise === undefined) throw new RangeError(`Cannot write a plan as the catalogue must know ${id}`);
    return exercise;
  };
  const rows: Value[][] = [];
  let before = 0;
  const write = (phase: PlanPhase, week: number, light: boolean, session: PlanSession) => {
    const day = dates?.get(`${phase.key}/${week}/${session.key}`);
    const head = [person.id, asText(person.name), asText(programme.title), asText(phase.title), before + week];
    const place = [...head, day === undefined ? "" : printDay(day), asText(session.title)];
    const marks = [...(light ? [sheet.light] : []), ...(phase.key === plan.firmTo.phase ? [] : [sheet.forecast])];
    const { before: warmUp, after } = easyLines(session, person, exerciseOf);
    const lines = [...warmUp, ...workLines(session, person, exerciseOf), ...after];
    for (const [index, [slot, movement, sets, amount, load, unit, restS, note]] of lines.entries()) {
      const said = sheet.and([...marks, ...note.filter((each) => each !== "")]);
      rows.push([...place, index + 1, slot, asText(movement), sets, amount, load, unit, restS, asText(said)]);
    }
    for (const { key } of session.open)
      rows.push([...place, "", key, "", "", "", "", "", "", sheet.and([...marks, sheet.leftOpen])]);
  };
  for (const phase of plan.phases) {
    for (const { week, light, sessions } of phase.weeks)
      for (const session of sessions) write(phase, week, light, session);
    before += phase.weeks.length;
  }
  return writeTable(COLUMNS, rows);
}

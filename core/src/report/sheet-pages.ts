import { printDay } from "../day.ts";
import {
  type Catalogue,
  nameOnSheet,
  type Person,
  type Place,
  type Plan,
  type PlanSession,
  type Programme,
  slotsOf,
} from "../model/index.ts";
import type { Messages } from "../text/index.ts";
import type { Column } from "./sheet-columns.ts";
import { blockRows, conditioningRows, type RowContext, warmUpRows } from "./sheet-rows.ts";
import type { SheetPage, SheetWeek } from "./sheet-types.ts";

/** Movements that a page holds beside warm-up and foot, in the smallest type. */
const MOST_SLOTS = 8;

export interface PageInput {
  readonly plan: Plan;
  readonly programme: Programme;
  readonly person: Person;
  readonly place: Place;
  readonly catalogue: Catalogue;
  /** Ids of those whose names are the same on a sheet. */
  readonly alike?: ReadonlySet<string>;
}

type Block = PlanSession["blocks"][number];

/** Blocks dealt out to pages; a pair or round is never torn apart. */
function portionsOf(blocks: readonly Block[]): readonly (readonly Block[])[] {
  const portions: Block[][] = [[]];
  let held = 0;
  for (const block of blocks) {
    if (held > 0 && held + block.slots.length > MOST_SLOTS) {
      portions.push([]);
      held = 0;
    }
    portions.at(-1)!.push(block);
    held += block.slots.length;
  }
  return portions;
}

/** The length of a usual week; a light one would make the range say nothing. */
function minutesOf(columns: readonly Column[]): { readonly low: number; readonly high: number } {
  const usual = columns.filter(({ light }) => !light);
  const minutes = (usual.length > 0 ? usual : columns).map(({ session }) => session.minutes);
  return { low: Math.min(...minutes.map(({ low }) => low)), high: Math.max(...minutes.map(({ high }) => high)) };
}

function openWords(session: PlanSession, programme: Programme, { sheet }: Messages): string | null {
  const slots = programme.phases.flatMap((phase) => phase.sessions.flatMap(({ work }) => work.flatMap(slotsOf)));
  const patterns = session.open.flatMap(({ key }) => slots.find(({ slot }) => slot === key)?.pattern ?? []);
  return patterns.length === 0 ? null : sheet.open(patterns);
}

function weekOf({ week, light, day }: Column, { sheet }: Messages): SheetWeek {
  return {
    label: sheet.week(week),
    light: light ? sheet.light : null,
    day: day === undefined ? null : sheet.shortDay(printDay(day)),
  };
}

/**
 * The pages of one session with its weeks side by side: one page, or more where the session has more movements than a
 * page holds. The foot stands on each of them.
 */
export function pagesOf(input: PageInput, columns: readonly Column[], words: Messages): readonly SheetPage[] {
  const { plan, person, place, programme, catalogue } = input;
  const { sheet } = words;
  const { session } = columns[0]!;
  const context: RowContext = { catalogue, units: person.units, words };
  const { low, high } = minutesOf(columns);
  const { screening } = person;
  const screened = screening === undefined ? [] : [sheet.screened(printDay(screening.on), printDay(screening.until))];
  const title = sheet.session(session.title);
  const portions = portionsOf(session.blocks);
  return portions.map((blocks, part): SheetPage => {
    const isLast = part === portions.length - 1;
    const rows = [
      ...(part === 0 ? warmUpRows(context, session) : []),
      ...blocks.flatMap((block) => blockRows(context, block, columns)),
      ...(isLast ? conditioningRows(context, columns) : []),
    ];
    const hasSides = rows.some(({ cells }) => cells.some(({ split }) => split));
    const foot = [sheet.stop, sheet.write, ...(hasSides ? [sheet.sides] : []), sheet.first];
    return {
      title: part === 0 ? title : sheet.continued(title),
      left: [
        nameOnSheet(person, input.alike),
        `${programme.title}, ${sheet.weeks(columns.map(({ week }) => week))}`,
        place.name,
      ],
      right: [sheet.minutes(low, high), ...screened],
      weeks: columns.map((column) => weekOf(column, words)),
      rows,
      open: isLast ? openWords(session, programme, words) : null,
      foot: foot.map(({ head, text }) => [head, text] as const),
      mark: `${plan.id} · ${session.key}`,
    };
  });
}

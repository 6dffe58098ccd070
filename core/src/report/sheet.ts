import type { Day } from "../day.ts";
import { nameOnSheet, type Reason } from "../model/index.ts";
import { mayPrint } from "../offer/index.ts";
import { en, type Messages } from "../text/index.ts";
import { columnsOf, type SheetDates, sideBySide } from "./sheet-columns.ts";
import { type PageInput, pagesOf } from "./sheet-pages.ts";
import type { Sheet } from "./sheet-types.ts";

export interface SheetInput extends PageInput {
  readonly paper: Sheet["paper"];
  /** Day of printing. */
  readonly on: Day;
  /** Days of the sessions; without them every week has every session and a blank for its date. */
  readonly dates?: SheetDates;
}

export type SheetAnswer =
  | { readonly ok: true; readonly sheet: Sheet }
  | { readonly ok: false; readonly reason: Reason };

/**
 * A person's sheet for the firm phase of their plan: a page per session, up to four weeks side by side, boxes for a
 * pencil.
 *
 * It holds no reason, statement, limit or grade: it lies about in a room. Without a dated screening outcome that stands
 * there is no sheet.
 *
 * @throws RangeError when the plan is somebody else's or holds an exercise that the catalogue does not know
 * @example
 * sheetFor({ plan, programme, person, place, catalogue, paper: "a4", on }) //=> { ok: true, sheet }
 */
export function sheetFor(input: SheetInput, words: Messages = en): SheetAnswer {
  const { plan, programme, person, on, paper, dates } = input;
  if (plan.person !== person.id) {
    throw new RangeError(
      `Cannot print a plan for ${person.id} as it must be their own: current value is ${plan.person}`,
    );
  }
  const print = mayPrint(person, on);
  if (!print.ok) return { ok: false, reason: print.reason };
  const phase = plan.phases.find(({ key }) => key === plan.firmTo.phase)!;
  const keys = phase.weeks[0]!.sessions.map(({ key }) => key);
  const pages = keys.flatMap((key) => {
    const columns = columnsOf(plan, phase, key, dates);
    return sideBySide(columns).flatMap((together) => pagesOf(input, together, words));
  });
  const { movement, date } = words.sheet;
  const title = words.sheet.documentTitle(nameOnSheet(person, input.alike), programme.title);
  return { ok: true, sheet: { lang: "en", paper, title, words: { movement, date }, pages } };
}

import { explain } from "./en/explain.ts";
import { findings, whys } from "./en/findings.ts";
import { nextWords } from "./en/next.ts";
import { listed, plural, printNumber, printSpan } from "./en/number.ts";
import { problems } from "./en/problems.ts";
import { assessReasons } from "./en/reasons-assess.ts";
import { calendarReasons } from "./en/reasons-calendar.ts";
import { constraints, fitReasons, planReasons } from "./en/reasons-fit.ts";
import { loadReasons } from "./en/reasons-loads.ts";
import { offerReasons } from "./en/reasons-offer.ts";
import { capacityReasons, progressReasons } from "./en/reasons-progress.ts";
import { recordReasons } from "./en/reasons-record.ts";
import { ruleReasons } from "./en/reasons-rule.ts";
import { screenReasons } from "./en/reasons-screen.ts";
import { watchReasons } from "./en/reasons-watch.ts";
import { cautions, figures, reckonings, sayReckoned, sayReckonings } from "./en/reckon.ts";
import { remedies } from "./en/remedies.ts";
import { sayReplay } from "./en/replay.ts";
import { report } from "./en/report.ts";
import { request } from "./en/request.ts";
import { sayReturn } from "./en/return-list.ts";
import { sheet } from "./en/sheet.ts";
import { sayWorld, simulationLimits } from "./en/simulate.ts";
import { printDate, printDuration, printHours, printLoad, printMinutes, WEEKDAY_NAMES } from "./en/units.ts";
import {
  amounts,
  befores,
  goals,
  lanes,
  muscles,
  patterns,
  readinesses,
  severities,
  statements,
  statuses,
  tags,
} from "./en/words.ts";

/** Everything that is said in English. Another language is an object of the same shape. */
export const en = {
  findings,
  whys,
  remedies,
  problems,
  reasons: {
    ...offerReasons,
    ...loadReasons,
    ...calendarReasons,
    ...fitReasons,
    ...planReasons,
    ...screenReasons,
    ...assessReasons,
    ...progressReasons,
    ...capacityReasons,
    ...recordReasons,
    ...watchReasons,
    ...ruleReasons,
  },
  words: {
    muscles,
    patterns,
    lanes,
    severities,
    statuses,
    goals,
    readinesses,
    befores,
    statements,
    tags,
    amounts,
    constraints,
    weekdays: WEEKDAY_NAMES,
  },
  print: {
    number: printNumber,
    span: printSpan,
    plural,
    listed,
    load: printLoad,
    minutes: printMinutes,
    duration: printDuration,
    hours: printHours,
    date: printDate,
  },
  sheet,
  report,
  request,
  reckon: { names: reckonings, figures, cautions, say: sayReckoned, list: sayReckonings },
  explain,
  next: nextWords,
  /** What became of a decision, before its title. */
  decided: { accepted: "taken:", changed: "changed:", refused: "refused:", pinned: "pinned:", undone: "taken back:" },
  assess: { returned: sayReturn },
  replay: sayReplay,
  simulate: { world: sayWorld, limits: simulationLimits },
  /** The frames that sentences are put into. */
  frames: {
    source: (cites: readonly string[]) => `${cites.length === 1 ? "Source" : "Sources"}: ${cites.join("; ")}.`,
    silenced: (reason: string) => `Silenced: ${reason}`,
    found: (value: string) => `Found: ${value}.`,
    allowed: (value: string) => `Allowed: ${value}.`,
    maybe: (value: string) => `Maybe: ${value}.`,
    place: (file: string, line: number, column: number) => `${file}, line ${line}, column ${column}`,
  },
} as const;

/** English widened to what any language has to give: the same names, other words. */
type Widened<T> = T extends string
  ? string
  : T extends (...args: infer Args) => string
    ? (...args: Args) => string
    : { readonly [Name in keyof T]: Widened<T[Name]> };
export type Messages = Widened<typeof en>;

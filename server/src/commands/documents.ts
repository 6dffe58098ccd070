import { z } from "zod";
import { assessDocument } from "./assess-document.ts";
import { beforeDocument } from "./before-document.ts";
import { calendarDocument } from "./calendar-document.ts";
import { checkDocument } from "./check-document.ts";
import { cohortDocument } from "./cohort-document.ts";
import { decideDocument } from "./decide-document.ts";
import { demoDocument } from "./demo-document.ts";
import { exercisesDocument } from "./exercises-document.ts";
import { exportDocument } from "./export-document.ts";
import { fitDocument } from "./fit-document.ts";
import { importDocument } from "./import-document.ts";
import { morningDocument } from "./morning-document.ts";
import { nextDocument } from "./next-document.ts";
import { reckonDocument } from "./reckon-document.ts";
import { recordDocument } from "./record-document.ts";
import { replayDocument } from "./replay-document.ts";
import { reportDocument } from "./report-document.ts";
import { scheduleDocument } from "./schedule-document.ts";
import { screenDocument } from "./screen-document.ts";
import { sheetDocument } from "./sheet-document.ts";
import { simulateDocument } from "./simulate-document.ts";
import { whyDocument } from "./why-document.ts";

/** The document of every command that prints one, by the command's name. */
export const DOCUMENTS: Readonly<Record<string, z.ZodType>> = {
  check: checkDocument,
  fit: fitDocument,
  cohort: cohortDocument,
  why: whyDocument,
  schedule: scheduleDocument,
  screen: screenDocument,
  before: beforeDocument,
  assess: assessDocument,
  sheet: sheetDocument,
  calendar: calendarDocument,
  exercises: exercisesDocument,
  reckon: reckonDocument,
  simulate: simulateDocument,
  replay: replayDocument,
  import: importDocument,
  export: exportDocument,
  record: recordDocument,
  morning: morningDocument,
  report: reportDocument,
  next: nextDocument,
  decide: decideDocument,
  demo: demoDocument,
};

/** @returns the document of a command as JSON Schema, draft 2020-12 */
export function documentJsonSchema(document: z.ZodType): object {
  return z.toJSONSchema(document, { target: "draft-2020-12" });
}

import type { AssessCode } from "../../assess/index.ts";
import { SOURCES, type SourceId } from "../../sources.ts";
import { type Data, said } from "../facts.ts";
import type { Say } from "../names.ts";

function source(data: Data): string {
  const id = said(data, "source");
  return id in SOURCES ? SOURCES[id as SourceId].cite : id;
}

/** What assessment says beside a result. */
export const assessReasons: Readonly<Record<AssessCode, Say>> = {
  "assess/arms-score-zero": (data) => `The arms were used: the protocol scores 0. Done: ${said(data, "note")}.`,
  "assess/other-conditions": (data) =>
    `Not compared: ${said(data, "condition")} was ${said(data, "before")}, now ${said(data, "now")}.`,
  "assess/middle-half": (data) =>
    `The middle half of this age: ${said(data, "from")}–${said(data, "to")} ${said(data, "unit")} (${source(data)}).`,
  "assess/below-average": (data) =>
    `Fewer than the middle half of this age, which begins at ${said(data, "from")} ${said(data, "unit")} (${source(data)}).`,
  "assess/class": (data) => `Class of this age: ${said(data, "class")} (${source(data)}).`,
  "assess/mean": (data) =>
    `Mean of this age: ${said(data, "mean")} ${said(data, "unit")}, a middle and no aim (${source(data)}).`,
  "assess/talk-to-doctor": (data) =>
    `Past the line of ${said(data, "edge")} ${said(data, "unit")}: worth a talk with the doctor; it is no diagnosis (${source(data)}).`,
  "assess/no-norm": (data) =>
    `Cannot judge against others: no printed row for this protocol at ${said(data, "age")} years.`,
  "assess/sex-unknown": () =>
    "Cannot judge against others: the norm is printed for men and women apart, and nothing was said.",
};

import { ASSESSMENT_TESTS, type AssessCode } from "../../assess/index.ts";
import { SOURCES, type SourceId } from "../../sources.ts";
import { type Data, said, wordsIn } from "../facts.ts";
import type { Say } from "../names.ts";
import { listed } from "./number.ts";

function source(data: Data): string {
  const id = said(data, "source");
  return id in SOURCES ? SOURCES[id as SourceId].cite : id;
}

function testName(data: Data): string {
  const id = said(data, "test");
  return ASSESSMENT_TESTS.find((test) => test.id === id)?.name ?? id;
}

/** What assessment says beside a result. */
export const assessReasons: Readonly<Record<AssessCode, Say>> = {
  "assess/arms-score-zero": (data) => `The arms were used: the protocol scores 0. Done: ${said(data, "note")}.`,
  "assess/half-way-counts": (data) =>
    `${said(data, "note")} full stands, and more than half-way up at the end counts as one more.`,
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
  "assess/rung": (data, names) => {
    const side = typeof data["side"] === "string" ? `, the weaker side (${data["side"]})` : "";
    return `${names.ladder(said(data, "ladder"))}: start on ${names.exercise(said(data, "exercise"))}; ${testName(data)} gave ${said(data, "value")} ${said(data, "unit")}${side}.`;
  },
  "assess/rung-below": (data, names) =>
    `Fewer than ${said(data, "least")} ${said(data, "unit")} of ${names.exercise(said(data, "exercise"))} are a try, so one form easier.`,
  "assess/rung-gate": (data, names) =>
    `${said(data, "amount")} ${said(data, "unit")} of ${names.exercise(said(data, "exercise"))} in one set open the next form.`,
  "assess/rung-plank": (data, names) =>
    `${names.exercise(said(data, "exercise"))} asks for a forearm plank of ${said(data, "least")} s; it was ${said(data, "seconds")} s.`,
  "assess/rung-conditions": (data) => `For the coach to see: ${listed(wordsIn(data, "conditions"))}.`,
  "assess/rung-edge": (data) =>
    `From ${said(data, "edge")} ${said(data, "unit")} on, where the middle half of this age begins, one form harder (${source(data)}).`,
  "assess/rung-no-norm": (data, names) =>
    data["sex"] === null
      ? `${names.ladder(said(data, "ladder"))}: cannot judge a start from ${testName(data)}, since its row is printed for men and women apart and nothing was said.`
      : `${names.ladder(said(data, "ladder"))}: cannot judge a start from ${testName(data)}: no printed row at ${said(data, "age")} years.`,
  "assess/sex-unknown": () =>
    "Cannot judge against others: the norm is printed for men and women apart, and nothing was said.",
};

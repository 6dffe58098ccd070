import { type Data, dataIn, numberIn, said, wordsIn } from "../facts.ts";
import { listed, printSpan } from "./number.ts";
import { lanes, muscles, statuses } from "./words.ts";

export function phaseTitle(data: Data): string {
  return `“${said(data, "title")}”`;
}

export function laneOf(data: Data): string {
  return lanes[said(data, "lane") as keyof typeof lanes] ?? said(data, "lane");
}

export function muscleOf(data: Data): string {
  return muscles[said(data, "muscle") as keyof typeof muscles] ?? said(data, "muscle");
}

export function statusOf(data: Data): string {
  return statuses[said(data, "status") as keyof typeof statuses] ?? said(data, "status");
}

export function spanIn(data: Data, name: string): string {
  const span = dataIn(data, name) ?? {};
  return printSpan(numberIn(span, "from"), numberIn(span, "to"));
}

export function weekOf(data: Data): string {
  const from = numberIn(data, "fromWeek");
  return Number.isFinite(from) ? ` from week ${from}` : "";
}

export function musclesIn(data: Data): string {
  return listed(wordsIn(data, "muscles").map((name) => muscles[name as keyof typeof muscles] ?? name));
}

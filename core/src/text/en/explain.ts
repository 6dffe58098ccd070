import { plural, printNumber } from "./number.ts";

/** Points with their sign. */
function signed(points: number): string {
  return `${points > 0 ? "+" : ""}${printNumber(points)}`;
}

/** What one plan has over another, the must points first: they come before all wants. */
function over(must: number, want: number): string {
  const musts =
    must === 0 ? [] : [`${plural(Math.abs(must), "must point", "must points")} ${must > 0 ? "fewer" : "more"}`];
  const wants = `${plural(Math.abs(want), "want point", "want points")} ${want >= 0 ? "more" : "fewer"}`;
  return must !== 0 && want === 0 ? musts[0]! : [...musts, wants].join(" and ");
}

/** Frames around the answers of the fit. */
export const explain = {
  chosen: (name: string) => `${name} is what the plan has.`,
  setAside: (name: string) => `${name} is set aside:`,
  pinned: (name: string, pinned: string) => `${pinned} is pinned here by the coach, so ${name} is not looked at.`,
  notThoughtOf: (name: string) =>
    `${name} is of another pattern, and not the first choice, so this slot never asks for it.`,
  doesNotFit: (name: string) => `With ${name} here, no plan keeps every session within its minutes.`,
  asGood: (name: string) => `${name} would be as good; the stated order of equal plans puts the other first.`,
  /** @param must points that the plan with it has more; `want` points that it has fewer */
  costs: (name: string, must: number, want: number) =>
    `With ${name} here, the best plan of the phase has ${over(-must, -want)}:`,
  unproven: () => "The search was stopped before it had proven this: the figures may be too high or too low.",
  points: (what: string, points: number) => `${signed(points)} ${what}`,
  conflict: () => "These cannot all be kept together; drop any one of them and the others can:",
  helps: () => "What one change would gain, every single one tried, the most first:",
  nothingHelps: () => "No single change makes this plan better.",
  gain: (change: string, must: number, want: number) => `${change}: ${over(must, want)}`,
} as const;

import { ASSESSMENT_TESTS, type ReturnList } from "../../assess/index.ts";
import { plural, printNumber } from "./number.ts";
import { capital } from "./words.ts";

const verdict = (passed: boolean) => (passed ? "over the line" : "not over the line");

/** Whether an injured side does as much as the other, line by line. */
export function sayReturn({ side, weeks, over, lines, torque, passed }: ReturnList): string {
  const other = side === "left" ? "right" : "left";
  const held =
    torque === undefined
      ? []
      : torque.perKg === undefined
        ? ["  Torque per kilogram: cannot judge, the body mass is missing."]
        : [
            `  Torque of the injured knee: ${printNumber(torque.perKg)} N m per kg of body mass, ${verdict(torque.passed)} of ${torque.least} (from memory).`,
          ];
  return [
    `${capital(side)} side against ${other}, ${plural(weeks, "week", "weeks")} after; more than ${over} % in every one (common practice)`,
    ...lines.map(({ test, percent, passed: each }) => `  ${nameOf(test)}: ${printNumber(percent)} %, ${verdict(each)}`),
    ...held,
    `  ${passed ? "Every line is passed." : "Not passed: every line counts, and no average is made of them."} Whether to return is the medical team's to say.`,
  ].join("\n");
}

function nameOf(id: string): string {
  return ASSESSMENT_TESTS.find((test) => test.id === id)?.name ?? id;
}

import type { Finding } from "../../model/index.ts";

const ABOUT = ["phase", "session", "slot", "item", "exercise", "muscle", "lane", "side", "fromWeek"] as const;

/**
 * What a finding is about, whatever its figures say now: equal for the same finding of a programme before and after a
 * change, even when the change moved its place in the file.
 */
export function identityOf(finding: Pick<Finding, "check" | "data">): string {
  return JSON.stringify([finding.check, ...ABOUT.map((name) => finding.data[name] ?? null)]);
}

import { execFile } from "node:child_process";
import { mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { afterAll, beforeAll, describe, expect, test } from "vitest";

/** The incidents of the made-up room's ten weeks, each where a coach looks: morning list, next doses, report. */
const folder = mkdtempSync(join(tmpdir(), "stave-incidents-"));

/** Runs the built program, on whatever day it is. */
async function stave(...args: readonly string[]): Promise<string> {
  const { stdout } = await promisify(execFile)(process.execPath, ["server/dist/stave.js", ...args]);
  return stdout;
}
/** What is said of one person: from their name to the next blank line. */
const blockOf = (text: string, name: string) => {
  const from = text.indexOf(`\n${name}`);
  expect(from).toBeGreaterThanOrEqual(0);
  const end = text.indexOf("\n\n", from + 1);
  return text.slice(from, end < 0 ? text.length : end);
};

let [morning, next, data] = ["", "", ""];
beforeAll(async () => {
  morning = await stave("morning", "--demo", folder);
  data = join(folder, readdirSync(folder)[0]!);
  next = await stave("next", "--data", data);
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const STORIES = [
  {
    incident: "Tobiah dizzy after set 3: everything waits until a doctor has been asked, and the note is there",
    id: "tobiah",
    name: "Tobiah Okonrell",
    morning: ["Stop Everything waits (dizzy).", "Incident: dizzy after the third set.", "Dr Okparavere's word"],
    next: ["Dizzy: everything waits until a doctor has been asked.", "Incident: dizzy after the third set."],
    report: ["Everything waits (dizzy).", "Incident: dizzy after the third set.", "| dizzy | 3 | not said"],
  },
  {
    incident: "Priyamvada's knee, 4 of 10 and 5 the next morning: to be eased",
    id: "priyamvada",
    name: "Priyamvada Lockhollow",
    morning: ["5 of 10, knee, on the morning after; 4 in the session", "Ease it"],
    next: ["5 of 10, knee, on the morning after; 4 in the session"],
    report: ["5 of 10, knee, on the morning after; 4 in the session", "| knee | 4 | 5"],
  },
  {
    incident: "Ilario's session told by two phones counts once, and says so",
    id: "ilario",
    name: "Ilario Penhallow-Sato",
    morning: ["told by 2 devices; each set counts once"],
    next: ["told by 2 devices; each set counts once"],
    report: ["told by 2 devices; each set counts once"],
  },
  {
    incident: "Kofi's 102.5 kg could not be made: 100 kg was done, and 105 kg is the next that can be",
    id: "kofi",
    name: "Kofi Amblenwe",
    morning: ["102.5 kg could not be loaded", "100 kg done; 105 kg is the next that can be"],
    next: ["102.5 kg could not be loaded"],
    report: ["102.5 kg could not be loaded", "100 kg"],
  },
  {
    incident: "Dagny's 30-second chair stand went from 9 to 13",
    id: "dagny",
    name: "Dagny Thistlemere",
    morning: ["30-second chair stand: 13 full stands", "when it was 9"],
    next: ["30-second chair stand: 13 full stands"],
    report: ["30-second chair stand: 13 full stands"],
  },
] as const;

describe.each(STORIES)("$incident", ({ id, name, ...seen }) => {
  test("in the morning list", () => {
    const block = blockOf(`\n${morning}`, name);
    for (const words of seen.morning) expect(block).toContain(words);
  });
  test("beside the next doses", () => {
    const block = blockOf(`\n${next}`, name);
    for (const words of seen.next) expect(block).toContain(words);
  });
  test("in the coach's report", async () => {
    const said = await stave("report", id, "--data", data, "--for", "coach");
    for (const words of seen.report) expect(said).toContain(words);
  }, 60_000);
});

import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { ROOM, stave } from "../testing/run-stave.ts";

const folder = mkdtempSync(join(tmpdir(), "stave-before-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const SCREENING = readFileSync(`${ROOM}/screening-tobiah.yaml`, "utf8");
const TODAY = readFileSync(`${ROOM}/before-tobiah.yaml`, "utf8");

function written(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}
/** Nothing was found in this screening. */
const well = SCREENING.replace(/ankle swelling: yes.*/, "ankle swelling: no");
const today = (change: (text: string) => string) => written("today.yaml", change(TODAY));
const fine = (text: string) =>
  text.replace(/new: .*/, "new: nothing").replace(/pressure: .*/, "pressure: { readings: [124/78, 122/76] }");

test("a coach's script goes on at go and at softer, and not at ask or at hold", async () => {
  const answers = written("answers.yaml", well);
  const asked = async (change: (text: string) => string) => {
    const { exit, out } = await stave("before", answers, today(change), "--json");
    const { ok, result } = JSON.parse(out);
    expect(ok).toBe(exit === 0);
    return [result.before, exit];
  };
  expect(await asked((text) => fine(text).replace(/pain: .*/, "pain: []"))).toEqual(["go", 0]);
  expect(await asked(fine)).toEqual(["soften", 0]);
  expect(await asked((text) => fine(text).replace("new: nothing", "new: { other: [a tablet] }"))).toEqual(["ask", 1]);
  expect(await asked((text) => text.replace(/new: .*/, "new: nothing"))).toEqual(["hold", 1]);
  expect((await stave("before", answers, written("none.yaml", "stave: 1\n"))).exit).toBe(2);
});

test("the help says so", async () => {
  expect((await stave("before", "--help")).out).toContain(
    "Exit status: 0 go, or go softer; 1 hold the session, or ask first; 2",
  );
});

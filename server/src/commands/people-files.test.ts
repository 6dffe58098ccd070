import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { documentOf } from "../testing/document-of.ts";
import { PEOPLE, ROOM, PROGRAMME as STEPS } from "../testing/run-stave.ts";

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "stave-people-files-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test("assess and fit: where to start, and the roster's own rung wins", async () => {
  const { rungs } = (await documentOf("assess", `${ROOM}/tests-dagny.yaml`)).result;
  expect(rungs.map(({ ladder }: { ladder: string }) => ladder)).toEqual(["squat", "push-up", "front-trunk", "calf"]);
  const people = join(folder, "untested.yaml");
  const roster = readFileSync(`${ROOM}/people.yaml`, "utf8");
  const dagny = roster.indexOf("- id: dagny");
  const without = roster.slice(0, dagny) + roster.slice(dagny).replace("      squat: sit-to-stand-45\n", "");
  expect(without).not.toBe(roster);
  writeFileSync(people, without);
  const fitted = async (file: string, ...more: string[]) => {
    const args = ["--people", file, ...PEOPLE.slice(2, 4), "--from", "2027-03-15", "--person", "dagny", ...more];
    const { plans } = (await documentOf("fit", STEPS, ...args)).result;
    return JSON.stringify(plans[0].phases).includes('"exercise":"touch-and-go-squat"');
  };
  const tests = ["--tests", `${ROOM}/tests-dagny.yaml`];
  expect(await fitted(people, ...tests)).toBe(true);
  expect(await fitted(people)).toBe(false);
  expect(await fitted(`${ROOM}/people.yaml`, ...tests)).toBe(false);
});

test("screen and before: a page for a clinician, and none without consent", async () => {
  const file = `${ROOM}/screening-tobiah.yaml`;
  const out = join(folder, "requests");
  const screened = await documentOf("screen", file, "--request", out, "--paper", "letter");
  expect(screened.result.request.file.path).toBe(join(out, "tobiah", "request.pdf"));
  expect(existsSync(screened.result.request.file.path)).toBe(true);
  const silent = join(folder, "silent.yaml");
  writeFileSync(silent, readFileSync(file, "utf8").replace(/^ .*share with my clinician.*\n/m, ""));
  const { request } = (await documentOf("screen", silent, "--request", out)).result;
  expect(request).toEqual({ withheld: { code: "request/no-consent", data: { state: "never asked" } } });
});

test("before: held, by a printed rule and by the practice's own", async () => {
  const files = [`${ROOM}/screening-tobiah.yaml`, `${ROOM}/before-tobiah.yaml`];
  const printed = (await documentOf("before", ...files)).result;
  expect(printed).toMatchObject({ before: "hold", person: "tobiah", on: "2027-01-20", screenedAgain: false });
  const pressure = ({ checks }: { checks: readonly { kind: string }[] }) =>
    checks.find(({ kind }) => kind === "pressure");
  expect(pressure(printed)).toMatchObject({ rule: { id: "lifting 2024", source: "liftingPressure2024" } });
  const own = (await documentOf("before", ...files, "--rules", `${ROOM}/before-rules.yaml`)).result;
  expect(pressure(own)).toMatchObject({ rule: { dated: "2026-11-02", by: "Dr Ode Winterhalter, for the room" } });
});

test("a coach's own exercises: told, checked, fitted", async () => {
  const own = ["--exercises", `${ROOM}/own-exercises.yaml`];
  const { result } = await documentOf("exercises", "capstan-touch-squat", ...own);
  expect(result).toMatchObject([{ id: "capstan-touch-squat", pattern: "squat" }]);
  const programme = join(folder, "capstan.yaml");
  const text = readFileSync(STEPS, "utf8").replace("first: goblet-squat", "first: capstan-touch-squat");
  writeFileSync(programme, text);
  const unknown = (document: { findings: readonly { check: string }[] }) =>
    document.findings.filter(({ check }) => check === "slot/unknown-exercise").length;
  expect(unknown(await documentOf("check", programme))).toBe(1);
  expect(unknown(await documentOf("check", programme, ...own))).toBe(0);
  const people = join(folder, "capstan-people.yaml");
  const roster = readFileSync(`${ROOM}/people.yaml`, "utf8");
  writeFileSync(people, roster.replace("squat: sit-to-stand-45", "squat: capstan-touch-squat"));
  const args = ["--people", people, ...PEOPLE.slice(2), "--person", "tobiah", ...own];
  const { plans } = (await documentOf("fit", programme, ...args)).result;
  expect(JSON.stringify(plans)).toContain('"exercise":"capstan-touch-squat"');
  const out = join(folder, "capstan");
  const { withheld, files } = (await documentOf("sheet", programme, ...args, "--out", out)).result;
  expect([withheld, files.length]).toEqual([[], 1]);
});

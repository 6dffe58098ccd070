import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { EXAMPLES } from "./examples.ts";
import { PEOPLE, PROGRAMME, ROOM, stave } from "./testing/run-stave.ts";

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "stave-program-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function write(name: string, content: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

describe("what commands answer", () => {
  test("check: silent programmes end with 0, findings that stop with 1", async () => {
    expect(await stave("check", PROGRAMME, `${ROOM}/slipway-strength.yaml`)).toMatchObject({ exit: 0 });
    const bad = await stave("check", `${ROOM}/bad-twin.yaml`, "--json");
    expect(bad.exit).toBe(1);
    const { findings } = JSON.parse(bad.out);
    for (const finding of findings) expect(finding.line).toBeGreaterThan(0);
    expect(new Set(findings.map(({ check }: { check: string }) => check)).size).toBe(8);
  });

  test("check --apply carries one remedy out, touches no other line, and the finding is gone", async () => {
    const path = join(folder, "bad-twin.yaml");
    cpSync(`${ROOM}/bad-twin.yaml`, path);
    const before = readFileSync(path, "utf8").split("\n");
    const first = JSON.parse((await stave("check", path, "--json")).out).findings.find(
      ({ remedies }: { remedies: unknown[] }) => remedies.length > 0,
    );
    await stave("check", path, "--apply", "1");
    const after = readFileSync(path, "utf8").split("\n");
    const changed = after.filter((line) => !before.includes(line));
    expect(changed.length).toBeGreaterThan(0);
    expect(changed.length).toBeLessThan(12);
    const left = JSON.parse((await stave("check", path, "--json")).out).findings;
    const same = (finding: { check: string; data: unknown }) =>
      finding.check === first.check && JSON.stringify(finding.data) === JSON.stringify(first.data);
    expect(left.some(same)).toBe(false);
    expect(await stave("check", path, "--apply", "99")).toMatchObject({ exit: 2 });
  });

  test("fit writes plans with their hashes; the same input gives the same bytes", async () => {
    const out = join(folder, "fit");
    const { exit, out: text } = await stave("fit", PROGRAMME, ...PEOPLE, "--person", "dagny", "--json", "--out", out);
    expect(exit).toBe(0);
    const { result } = JSON.parse(text);
    expect(result.files.map(({ path }: { path: string }) => path)).toEqual([
      join(out, "dagny/plan.json"),
      join(out, "dagny/plan.csv"),
    ]);
    const first = readFileSync(join(out, "dagny/plan.json"), "utf8");
    await stave("fit", PROGRAMME, ...PEOPLE, "--person", "dagny", "--out", out);
    expect(readFileSync(join(out, "dagny/plan.json"), "utf8")).toBe(first);
    expect(readdirSync(out)).toEqual(["dagny"]);
  });

  test("fit says loads as a sheet does: two weights as two, a pin as a setting, a load to be found with where to begin", async () => {
    const { out } = await stave("fit", PROGRAMME, ...PEOPLE, "--person", "tobiah");
    expect(out).toMatch(/Seated cable row: .*; 35 kg \(setting\)/);
    expect(out).toMatch(/Seated dumbbell press to eye height: .*; find: begin with 2 × 1 kg/);
    expect(out).toMatch(/Plank, hands on bench: 2 × 15–20 s, rest 45 s\n/);
  });

  test("why says why, and why not, with the loss in points", async () => {
    const told = await stave(
      "why",
      PROGRAMME,
      "ground-squat-a",
      ...PEOPLE,
      "--person",
      "esteban",
      "--not",
      "back-squat",
    );
    expect(told.exit).toBe(0);
    expect(told.out).toMatch(/back squat/i);
    const aside = await stave(
      "why",
      PROGRAMME,
      "ground-squat-a",
      ...PEOPLE,
      "--person",
      "tobiah",
      "--not",
      "barbell-deadlift",
    );
    expect(aside.out).toMatch(/another pattern|set aside/);
    const slip = await stave("why", PROGRAMME, "ground-sqat-a", ...PEOPLE, "--person", "tobiah");
    expect(slip).toMatchObject({ exit: 2, err: expect.stringMatching(/ground-squat-a/) });
  });

  test("schedule gives every session of four weeks a day inside the person's windows", async () => {
    const { out, exit } = await stave("schedule", PROGRAMME, ...PEOPLE, "--person", "dagny", "--json");
    expect(exit).toBe(0);
    const [dagny] = JSON.parse(out).result;
    expect(dagny.sessions.length + dagny.dropped.length).toBe(8);
    for (const { day } of dagny.sessions) expect([1, 4]).toContain(new Date(`${day}T12:00:00Z`).getUTCDay());
  });

  test("schedule says where a session is when it is not the usual place", async () => {
    const { out } = await stave("schedule", PROGRAMME, ...PEOPLE, "--person", "wren");
    expect(out).toMatch(/Friday 15 January 2027 17:00 {2}All of it once, The Ropewalk Room\n/);
    expect(out).toMatch(/Monday 11 January 2027 12:00 {2}Sit, push, pull\n/);
  });

  test("sheet prints for who may have one and says why not for the rest", async () => {
    const out = join(folder, "sheets");
    const { exit, out: words } = await stave("sheet", PROGRAMME, ...PEOPLE, "--person", "hesper", "--out", out);
    expect(exit).toBe(0);
    expect(words).toMatch(/no sheet for .*: 0 screening outcomes/);
    expect(existsSync(join(out, "hesper"))).toBe(false);
    expect(await stave("sheet", PROGRAMME, ...PEOPLE, "--out", out, "--paper", "a3")).toMatchObject({ exit: 2 });
  });

  test("calendar takes the earlier file on: the second run changes nothing", async () => {
    const out = join(folder, "calendars");
    await stave("calendar", PROGRAMME, ...PEOPLE, "--person", "dagny", "--out", out);
    const first = readFileSync(join(out, "dagny/sessions.ics"), "utf8");
    expect(first.match(/BEGIN:VEVENT/g)).toHaveLength(8);
    await stave("calendar", PROGRAMME, ...PEOPLE, "--person", "dagny", "--out", out);
    expect(readFileSync(join(out, "dagny/sessions.ics"), "utf8")).toBe(first);
    expect(first).not.toMatch(/osteo|bone|fracture|screen|caution/i);
  });

  test("exercises lists, tells one whole, and helps with a slip", async () => {
    expect((await stave("exercises", "goblet-squat")).out).toMatch(/Goblet squat \(goblet-squat\), squat/);
    expect((await stave("exercises", "--pattern", "carry")).out.trim().split("\n").length).toBeGreaterThan(3);
    expect(await stave("exercises", "gobelt-squat")).toMatchObject({
      exit: 2,
      err: expect.stringMatching(/goblet-squat/),
    });
    expect(await stave("exercises", "--pattern", "sqat")).toMatchObject({
      exit: 2,
      err: expect.stringMatching(/squat/),
    });
  });

  test("every example that help shows does what it shows", async () => {
    const room = /--(out|data) (\S+)/g;
    for (const [command, lines] of Object.entries(EXAMPLES)) {
      const { exit, out } = await stave(command, "--help");
      expect(exit).toBe(0);
      for (const line of lines) {
        expect(out).toContain(`npx ${line}`);
        // The first two do not end; the records need a later day than that of this machine.
        if (["demo", "serve", "record"].includes(command)) continue;
        const words = [...line.replace(room, `--$1 ${join(folder, "$2")}`).matchAll(/"([^"]*)"|(\S+)/g)];
        const args = words.map(([, quoted, plain]) => quoted ?? plain!).slice(1);
        const ran = await stave(...args);
        expect([line, ran.exit, ran.err.replace(/^(fitted|planned|tried) .*$/gm, "").trim()]).toEqual([
          line,
          // A finding that stops, and a session that is held, end with 1.
          /bad-twin|^stave before/.test(line) ? 1 : 0,
          "",
        ]);
        expect(ran.out.length).toBeGreaterThan(20);
      }
    }
  }, 240_000);

  test("help says what each command is for and shows the cautions", async () => {
    const { exit, out } = await stave("--help");
    expect(exit).toBe(0);
    for (const name of ["check", "fit", "why", "schedule", "sheet", "calendar", "exercises", "demo"])
      expect(out).toContain(name);
    expect(out).toMatch(/does not diagnose/);
  });
});
describe("screen", () => {
  const FILE = `${ROOM}/screening-tobiah.yaml`;
  test("words say the outcome, what caused it, what is locked and until when", async () => {
    const { exit, out } = await stave("screen", FILE);
    expect(exit).toBe(0);
    expect(out).toContain("tobiah: ask a doctor first.");
    expect(out).toContain("Signs that ask for a doctor: ankle swelling.");
    expect(out).toContain("Locked until a doctor agrees: all training.");
  });
  test("one JSON document; a sign less differs", async () => {
    const { result } = JSON.parse((await stave("screen", FILE, "--json")).out) as { result: Record<string, unknown> };
    expect(result).toMatchObject({
      person: "tobiah",
      readiness: "ask a doctor before starting",
      screening: { outcome: "ask a doctor first", on: "2026-12-07", until: "2027-12-07" },
      ruleSet: { id: "riebe2015", diabetes: "strict" },
    });
    const well = write("well.yaml", readFileSync(FILE, "utf8").replace("swelling: yes", "swelling: no"));
    expect((await stave("screen", well)).out).toContain("tobiah: start light to moderate.");
  });
  test("bad answers end with status 2 and their line", async () => {
    const bad = write("answers.yaml", readFileSync(FILE, "utf8").replace("heart: no", "hart: no"));
    const { exit, out, err } = await stave("screen", bad);
    expect([exit, out]).toEqual([2, ""]);
    expect(err).toContain("answers.yaml, line 10");
    expect((await stave("screen", bad, "--diabetes", "none")).exit).toBe(2);
  });
});

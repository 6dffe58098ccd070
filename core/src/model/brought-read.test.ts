import { expect, test } from "vitest";
import { readBrought, readProgramme } from "./index.ts";

const plan = (slots: string) =>
  `stave: 1\nid: brought\ntitle: Brought\nversion: 1\ngoal: size\nstatus: intermediate\nunits: kg\nphases:\n  - key: all\n    title: All\n    weeks: 6\n    sessions:\n      - key: a\n        title: A\n        minutes: 60\n        work:\n${slots}`;
const bench = "          - { slot: bench, pattern: horizontal push, first: barbell-bench-press }\n";
const pair =
  "          - pair:\n              - slot: row\n                pattern: horizontal pull\n                first: one-arm-row\n              - { slot: curl, pattern: upper isolation, first: dumbbell-curl, dose: 3 × 10 }\n";

test("slots without a dose are told apart, in pairs too, and all places stay those of the text", () => {
  const read = readBrought(plan(bench + pair), "b.yaml");
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const { unsaid, positions, programme } = read.value;
  const at = ["phases", 0, "sessions", 0, "work"];
  expect(unsaid).toEqual([
    [...at, 0],
    [...at, 1, "pair", 0],
  ]);
  expect(unsaid.map((path) => positions.at(path).line)).toEqual([17, 19]);
  expect(programme.phases[0]?.sessions[0]?.work).toHaveLength(2);
});

test("a plan with all its doses is read as ever; any other fault is still one, and every one is told", () => {
  const whole = plan(bench.replace(" }", ", dose: 3 × 8 }"));
  expect(readBrought(whole, "b.yaml")).toMatchObject({ ok: true, value: { unsaid: [] } });
  const wrong = plan(bench).replace("goal: size", "goal: sise");
  expect(readBrought(wrong, "b.yaml")).toEqual(readProgramme(wrong, "b.yaml"));
  const warm = plan(bench).replace("        work:", "        warmup: [{ do: cycle-upright }]\n        work:");
  expect(readBrought(warm, "b.yaml").ok).toBe(false);
});

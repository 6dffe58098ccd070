import { describe, expect, test } from "vitest";
import type { ExerciseId, Muscle } from "../model/index.ts";
import { CATALOGUE } from "./catalogue.ts";

/**
 * The worked examples of our counting rule as its table prints them, copied from it and not from the entries: ours.
 * Each with the entries that are that movement, what counts 1 and what counts a half. Printed movements without an entry
 * are left out.
 */
const PRINTED: readonly (readonly [ids: readonly ExerciseId[], direct: string, helping: string])[] = [
  [["barbell-bench-press"], "CHE", "DFR TRI"],
  [["incline-press-30"], "CHE", "DFR TRI"],
  [["floor-push-up"], "CHE", "DFR TRI"],
  [["barbell-overhead-press"], "DFR", "DSI TRI UTR"],
  [["dumbbell-press-seated"], "DFR", "DSI TRI"],
  [["incline-press-45"], "DFR", "CHE TRI"],
  [["narrow-push-up"], "TRI", "CHE DFR"],
  [["dip", "assisted-dip", "dip-loaded"], "CHE TRI", "DFR"],
  [["chest-supported-row"], "MID", "DRE LAT BIC"],
  [["reverse-fly"], "DRE", "MID"],
  [["cable-fly", "fly-machine", "floor-fly"], "CHE", "DFR"],
  [["shrug"], "UTR", "GRP"],
  [["band-external-rotation", "side-lying-external-rotation"], "CUF", ""],
  [["adductor-side-plank-short", "adductor-side-plank-long"], "ADD", "OBL"],
  [["lateral-raise", "cable-lateral-raise"], "DSI", ""],
  [["press-down"], "TRI", ""],
  [["pull-up"], "LAT", "BIC MID GRP"],
  [["chin-up"], "LAT BIC", "MID GRP"],
  [["lat-pull-down"], "LAT", "BIC MID"],
  [["inverted-row-45"], "LAT MID", "BIC DRE"],
  [["one-arm-row"], "LAT MID", "BIC DRE"],
  [["bent-over-row"], "LAT MID", "BIC DRE LOW"],
  [["face-pull"], "DRE", "MID CUF"],
  [["dumbbell-curl"], "BIC", ""],
  [["back-squat"], "QUA GLU", "ADD LOW"],
  [["goblet-squat"], "QUA GLU", "ADD"],
  [["leg-press-mid", "leg-press-deep", "one-leg-press"], "QUA", "GLU ADD"],
  [["split-squat-free", "split-squat-dumbbell"], "QUA GLU", "ADD HAB"],
  [["step-up-low", "step-up-20", "step-up-30"], "GLU QUA", "HAB"],
  [["leg-extension"], "QUA", ""],
  [["barbell-deadlift"], "GLU LOW", "HAM QUA UTR GRP"],
  [["dumbbell-rdl", "barbell-rdl"], "HAM GLU", "LOW ADD GRP"],
  [["hip-thrust"], "GLU", "HAM"],
  [["kettlebell-swing"], "", "GLU HAM"],
  [["leg-curl"], "HAM", ""],
  [["back-extension"], "GLU HAM", "LOW"],
  [["hip-abduction-band", "cable-hip-abduction", "hip-abduction-machine"], "HAB", ""],
  [["calf-raise-wall", "calf-machine-raise"], "CAL", ""],
  [["forearm-plank"], "ABS", "OBL"],
  [["side-plank"], "OBL", "HAB"],
  [["suitcase-carry"], "OBL GRP", "UTR HAB"],
  [["wall-sit-high"], "QUA", ""],
];

const NAMES: Readonly<Record<string, Muscle>> = {
  CHE: "chest",
  DFR: "front shoulder",
  DSI: "side shoulder",
  DRE: "rear shoulder",
  CUF: "rotator cuff",
  LAT: "lats",
  MID: "mid back",
  UTR: "upper traps",
  BIC: "biceps",
  TRI: "triceps",
  GRP: "forearm",
  ABS: "front trunk",
  OBL: "side trunk",
  LOW: "low back",
  GLU: "buttocks",
  HAB: "side hip",
  ADD: "inner thigh",
  QUA: "front thigh",
  HAM: "back thigh",
  CAL: "calf",
};

describe("worked examples of counting a set", () => {
  const rows = PRINTED.flatMap(([ids, direct, helping]) => ids.map((id) => [id, direct, helping] as const));

  test.each(rows)("%s: direct %s, helping %s", (id, direct, helping) => {
    const shares = (codes: string, value: number) =>
      codes
        .split(" ")
        .filter(Boolean)
        .map((code) => [NAMES[code]!, value] as const);
    const wanted = Object.fromEntries([...shares(direct, 1), ...shares(helping, 0.5)]);
    expect(CATALOGUE.exercises.get(id)?.muscles).toEqual(wanted);
  });

  test("a week of eight movements adds up as printed", () => {
    const week: readonly (readonly [ExerciseId, sets: number])[] = [
      ["barbell-bench-press", 3],
      ["one-arm-row", 3],
      ["back-squat", 3],
      ["barbell-rdl", 3],
      ["barbell-overhead-press", 2],
      ["pull-up", 3],
      ["dumbbell-curl", 2],
      ["side-plank", 2],
    ];
    const printed =
      "CHE 3; DFR 3.5; DSI 1; DRE 1.5; LAT 6; MID 4.5; UTR 1; BIC 5; TRI 2.5; GRP 3; OBL 2; LOW 3; GLU 6; HAB 1; ADD 3; QUA 3; HAM 3";
    const wanted = printed.split("; ").map((pair) => pair.split(" "));
    const total = (muscle: Muscle) =>
      week.reduce((sum, [id, sets]) => sum + sets * (CATALOGUE.exercises.get(id)?.muscles[muscle] ?? 0), 0);
    expect(
      Object.entries(NAMES)
        .flatMap(([code, muscle]) => (total(muscle) > 0 ? [[code, `${total(muscle)}`]] : []))
        .sort(),
    ).toEqual(wanted.sort());
  });
});

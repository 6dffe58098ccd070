import { expect, test } from "vitest";
import { day } from "../day.ts";
import type { Equipment } from "../model/index.ts";
import { madeUpExercise, madeUpPlace } from "../testing/index.ts";
import { missingKit } from "./kit.ts";

const ON = day("2027-03-01");
const needing = (...needs: Equipment[][]) => madeUpExercise({ id: "form", needs });
const room = madeUpPlace({
  equipment: { dumbbell: 2, bench: 1, "leg press": 1, barbell: 0 },
  outages: [{ what: "leg press", from: "2027-03-01", to: "2027-03-07" }],
});

test("all groups are needed, any one of each", () => {
  expect(missingKit(needing(["kettlebell", "dumbbell"], ["bench"]), room, ON, false)).toEqual([]);
  expect(missingKit(needing(["dumbbell"], ["rack"], ["cable", "band"]), room, ON, false)).toEqual([
    { code: "offer/equipment", data: { groups: [["rack"], ["cable", "band"]] } },
  ]);
  expect(missingKit(needing(), room, ON, false)).toEqual([]);
});

test("none of a thing is not there", () => {
  expect(missingKit(needing(["barbell"]), room, ON, false).length).toBe(1);
});

test("out of order from its first day to its last, named with its dates", () => {
  const press = needing(["leg press"]);
  const out = [
    {
      code: "offer/out-of-order",
      data: { groups: [["leg press"]], out: [{ what: "leg press", from: "2027-03-01", to: "2027-03-07" }] },
    },
  ];
  expect(missingKit(press, room, day("2027-02-28"), false)).toEqual([]);
  expect(missingKit(press, room, ON, false)).toEqual(out);
  expect(missingKit(press, room, day("2027-03-07"), false)).toEqual(out);
  expect(missingKit(press, room, day("2027-03-08"), false)).toEqual([]);
});

test("another thing of the group stands in for the broken one", () => {
  expect(missingKit(needing(["leg press", "dumbbell"]), room, ON, false)).toEqual([]);
});

test("an outage whose dates cannot be read counts", () => {
  const place = madeUpPlace({ equipment: { cable: 1 }, outages: [{ what: "cable", from: "soon", to: "later" }] });
  expect(missingKit(needing(["cable"]), place, ON, false).length).toBe(1);
});

test("whoever comes in a wheelchair brings it", () => {
  expect(missingKit(needing(["wheelchair"]), room, ON, true)).toEqual([]);
  expect(missingKit(needing(["wheelchair"]), room, ON, false).length).toBe(1);
});

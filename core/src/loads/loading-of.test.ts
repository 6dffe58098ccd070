import { expect, test } from "vitest";
import { kg, type Load, massOf } from "../units.ts";
import { barTotals, loadingOf } from "./loading-of.ts";

const kgOf = (value: number): Load => ({ value, unit: "kg" });
const room = {
  bars: [kgOf(15), kgOf(20)],
  plates: [20, 15, 10, 5, 2.5, 1.25].map((value) => ({ load: kgOf(value), pairs: value === 1.25 ? 1 : 2 })),
};

test("takes the bar that needs fewer plates, then the heavier bar", () => {
  expect(loadingOf(kgOf(20), room)).toEqual({ bar: kgOf(20), side: [] });
  expect(loadingOf(kgOf(15), room)).toEqual({ bar: kgOf(15), side: [] });
  expect(loadingOf(kgOf(62.5), room)).toEqual({ bar: kgOf(20), side: [kgOf(20), kgOf(1.25)] });
  expect(loadingOf(kgOf(25), room)).toEqual({ bar: kgOf(20), side: [kgOf(2.5)] });
  expect(loadingOf(kgOf(45), room)).toEqual({ bar: kgOf(15), side: [kgOf(15)] });
});

test("what cannot be loaded has no loading: below the bar, between steps, or with no bar", () => {
  expect(loadingOf(kgOf(14), room)).toBeUndefined();
  expect(loadingOf(kgOf(61), room)).toBeUndefined();
  expect(loadingOf(kgOf(20), { plates: room.plates })).toBeUndefined();
});

test("with the small pair in use 102.5 kg is out of reach and its neighbours are 100 and 105 kg", () => {
  const without = { bars: [kgOf(20)], plates: room.plates.filter((plate) => plate.load.value !== 1.25) };
  expect(loadingOf(kgOf(102.5), { ...room, bars: [kgOf(20)] })?.side.map((plate) => plate.value)).toEqual([
    20, 20, 1.25,
  ]);
  expect(loadingOf(kgOf(102.5), without)).toBeUndefined();
  const totals = [...barTotals(without).keys()];
  expect([totals.findLast((mass) => mass <= kg(102.5)), totals.find((mass) => mass >= kg(102.5))]).toEqual([
    kg(100),
    kg(105),
  ]);
});

test("totals rise, over all bars", () => {
  const totals = [...barTotals(room).values()].map((loading) => massOf(loading.total));
  expect(totals).toEqual([...totals].sort((a, b) => a - b));
  expect(totals.slice(0, 4)).toEqual([kg(15), kg(17.5), kg(20), kg(22.5)]);
});

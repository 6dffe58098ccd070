import { expect, test } from "vitest";
import { RECKONINGS, reckon } from "../../reckon/index.ts";
import { figures, reckonings, sayReckoned, sayReckonings } from "./reckon.ts";

const said = (name: string, ...answers: readonly string[]) => {
  const reckoned = reckon(name, answers);
  if (!reckoned.ok) throw new Error(JSON.stringify(reckoned.problems));
  return sayReckoned(reckoned.value);
};

test("every reckoning has its words, and no other", () => {
  expect(Object.keys(reckonings).sort()).toEqual(RECKONINGS.map(({ name }) => name).sort());
});

test("every kind of figure that comes out has its words", () => {
  const lines = [
    ["one-rep-max", "load=100 kg", "reps=12"],
    ["reps-at-percent", "percent=70"],
    ["reserve", "rating=9.5"],
    ["active-week", "age=40"],
    ["walking", "speed=5 km/h", "mass=80 kg"],
    ["walking", "speed=5 km/h", "mass=80 kg", "time=30 min"],
    ["protein", "mass=80 kg"],
    ["loss-rate", "before=90 kg", "after=88 kg", "weeks=2"],
    ["waist", "sex=man", "waist=90 cm", "hip=100 cm"],
  ] as const;
  for (const [name, ...answers] of lines) {
    expect(said(name, ...answers)).not.toMatch(/undefined|NaN/);
    const reckoned = reckon(name, answers);
    for (const { what } of reckoned.ok ? reckoned.value.figures : []) expect(Object.keys(figures)).toContain(what);
  }
});

test("a figure carries its interval, its unit and its source; memory is called memory", () => {
  expect(said("one-rep-max", "load=100 kg", "reps=5")).toContain(
    "One-repetition maximum: 116.6 kg, 112.5 to 119 kg (mayhew1995)",
  );
  expect(said("one-rep-max", "load=100 kg", "reps=12")).toContain(
    "no single figure above 10 repetitions: 128.2 to 144.4 kg",
  );
  expect(said("reps-at-percent", "percent=60")).toContain("15 repetitions or more (nscaEssentialsTable)");
  expect(said("bar-speed", "speed=0.5 m/s")).toContain("77.7 % (gonzalezBadillo2010; from memory)");
  expect(said("highest-pulse", "age=50")).toContain("173 beats/min, 163 to 183 beats/min (tanaka2001)");
});

test("on whom and how far off stands under the figures, and cautions where somebody could take them for advice", () => {
  const text = said("tape", "sex=man", "age=30", "height=178 cm", "neck=38 cm", "waist=90 cm");
  expect(text).toMatch(/men of a navy; standard error of estimate 3\.52 % fat/);
  expect(text).toContain("no diagnosis");
  expect(said("highest-pulse", "age=50")).toMatch(/18\u202f712 people; 18–80 years; standard deviation 10 beats\/min/);
});

test("the list says of each what it asks for", () => {
  const list = sayReckonings(RECKONINGS);
  expect(list).toContain("one-rep-max load=… reps=…\n");
  expect(list).toContain('five-rep-max lift="bench press"|"leg press" load=…');
  expect(list).toContain("[left=…]");
});

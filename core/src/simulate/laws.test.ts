import { describe, expect, test } from "vitest";
import type { SlotSession } from "../measures/index.ts";
import { OURS } from "./estimator.ts";
import { foretell, type Occasion } from "./forecasts.ts";
import { WORLDS } from "./world.ts";

/** Middle forecasts are compared in whole millionths of a kilogram. */
const middle = (occasion: Occasion, history: readonly SlotSession[] = occasion.history) =>
  OURS.forecast({ ...occasion, history })?.middle ?? Number.NaN;

/** Of every world two people, each after about ten, twenty and thirty sessions. */
const OCCASIONS: readonly (readonly [string, Occasion])[] = WORLDS.flatMap((world) =>
  [0, 1].flatMap((index) => {
    const seen: (readonly [string, Occasion])[] = [];
    const silent = { forecast: () => undefined, chance: () => undefined, change: () => undefined };
    foretell(world, 77, index, 26, silent, (occasion) => {
      if (occasion.history.length % 10 === 0)
        seen.push([`${world.id}, ${index}`, { ...occasion, history: [...occasion.history] }]);
      return undefined;
    });
    return seen;
  }),
);

/** The record with one set of the last session changed. */
function withLastSet(
  { history }: Occasion,
  change: (set: SlotSession["sets"][number]) => SlotSession["sets"][number],
): readonly SlotSession[] {
  const last = history.at(-1)!;
  return [...history.slice(0, -1), { ...last, sets: last.sets.map((set, at) => (at === 0 ? change(set) : set)) }];
}
const inPounds = ({ sets, asked, ...rest }: SlotSession): SlotSession => ({
  ...rest,
  asked,
  sets: sets.map(({ lifted, ...set }) => ({
    ...set,
    // 1 lb = 0.45359237 kg; to the thousandth, as pounds are kept.
    lifted: { value: Math.round((lifted!.value / 0.45359237) * 1000) / 1000, unit: "lb" },
  })),
});

describe("over the records of every world", () => {
  test("there are records enough", () => expect(OCCASIONS.length).toBeGreaterThan(60));
  test("a repetition more with the same load never lowers what is foretold", () => {
    for (const [who, occasion] of OCCASIONS) {
      const before = middle(occasion);
      if (Number.isNaN(before)) continue;
      for (const more of [1, 2]) {
        const reps = withLastSet(occasion, (set) => ({
          ...set,
          reps: { both: (set.reps as { both: number }).both + more },
        }));
        expect(middle(occasion, reps), who).toBeGreaterThanOrEqual(before * (1 - 1e-9));
      }
    }
  });
  test("the order in which sessions arrive changes nothing", () => {
    for (const [who, occasion] of OCCASIONS) {
      const turned = [...occasion.history].reverse();
      expect(middle(occasion, turned), who).toBe(middle(occasion));
    }
  });
  test("pounds say what kilograms say", () => {
    for (const [who, occasion] of OCCASIONS) {
      const [kilograms, pounds] = [middle(occasion), middle(occasion, occasion.history.map(inPounds))];
      if (Number.isNaN(kilograms)) expect(pounds, who).toBeNaN();
      else expect(Math.abs(pounds / kilograms - 1), who).toBeLessThan(1e-4);
    }
  });
  test("a load of the last session typed ten times too high moves it by less than 10 %, once seven said their reserve", () => {
    for (const [who, occasion] of OCCASIONS) {
      const before = middle(occasion);
      const said = occasion.history.filter(({ sets }) => sets.some(({ reserve }) => reserve !== undefined));
      if (Number.isNaN(before) || said.length < 7) continue;
      const last = occasion.history.at(-1)!;
      const slipped = [
        ...occasion.history.slice(0, -1),
        {
          ...last,
          sets: last.sets.map((set) => ({ ...set, lifted: { value: set.lifted!.value * 10, unit: "kg" } as const })),
        },
      ];
      expect(Math.abs(Math.log(middle(occasion, slipped) / before)), who).toBeLessThan(0.1);
    }
  });
});

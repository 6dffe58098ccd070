import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { StaveEvent } from "./event.ts";
import { compareEvents } from "./event-order.ts";
import { highestCounter, mergeEvents } from "./merge-events.ts";
import { standingEvents } from "./standing-events.ts";

function event(id: string, n: number, more: Partial<StaveEvent> = {}): StaveEvent {
  return {
    v: 1,
    id,
    person: "ana",
    device: "phone",
    n,
    at: 0,
    kind: "hurt",
    data: { where: "knee", howMuch: n },
    ...more,
  };
}
const stands = (...events: StaveEvent[]) => standingEvents(events).map((one) => one.event.id);

describe("order", () => {
  test("goes by counter, then device, then id, and never by the device's clock", () => {
    const early = event("b", 1, { at: 9 });
    const late = event("a", 2, { at: 1 });
    expect(compareEvents(early, late)).toBeLessThan(0);
    expect(compareEvents(event("b", 1, { device: "a" }), event("a", 1, { device: "b" }))).toBeLessThan(0);
    expect(compareEvents(event("a", 1), event("b", 1))).toBeLessThan(0);
  });

  test("is the same in every locale: capitals before small letters", () => {
    expect(compareEvents(event("Z", 1), event("a", 1))).toBeLessThan(0);
  });
});

describe("merging devices", () => {
  test("two phones on one counter after a restored backup: ids keep the events apart", () => {
    const before = [event("a", 1), event("b", 2)];
    const lost = [...before, event("c", 3)];
    const restored = [...before, event("d", 3), event("e", 4)];
    expect(mergeEvents(lost, restored).map(({ id }) => id)).toEqual(["a", "b", "c", "d", "e"]);
    expect(mergeEvents(restored, lost)).toEqual(mergeEvents(lost, restored));
    expect(highestCounter(mergeEvents(lost, restored))).toBe(4);
    expect(highestCounter([])).toBe(0);
  });

  test("one id with two contents: the same one is kept whichever comes first", () => {
    const [one, other] = [event("a", 1, { at: 1 }), event("a", 1, { at: 2 })];
    expect(mergeEvents([one], [other])).toEqual(mergeEvents([other], [one]));
    expect(mergeEvents([one], [other])).toHaveLength(1);
  });
});

describe("corrections", () => {
  test("a correction of a correction stands", () => {
    expect(stands(event("a", 1), event("b", 2, { replaces: "a" }), event("c", 3, { replaces: "b" }))).toEqual(["c"]);
  });

  test("of rival corrections the highest wins", () => {
    const rivals = [event("b", 2, { replaces: "a" }), event("c", 2, { replaces: "a", device: "watch" })];
    expect(stands(event("a", 1), ...rivals)).toEqual(["c"]);
  });

  test("a correction of the losing rival still counts, if it is the last word", () => {
    const rivals = [event("b", 2, { replaces: "a" }), event("c", 3, { replaces: "a" })];
    expect(stands(event("a", 1), ...rivals, event("d", 4, { replaces: "b" }))).toEqual(["d"]);
  });

  test("struck out, and brought back by a later correction", () => {
    const struck = event("b", 2, { kind: "struck", replaces: "a", data: {} });
    expect(stands(event("a", 1), struck)).toEqual([]);
    expect(stands(event("a", 1), struck, event("c", 3, { replaces: "b" }))).toEqual(["c"]);
  });

  test("stands in the place of an event that has not come yet, and of that event once it has", () => {
    const correction = event("b", 2, { replaces: "a" });
    expect(stands(correction)).toEqual(["b"]);
    expect(stands(correction, event("a", 1))).toEqual(["b"]);
  });

  test("a correction by a phone whose counter went back still replaces", () => {
    expect(stands(event("a", 7), event("b", 3, { replaces: "a" }))).toEqual(["b"]);
  });

  test("rings, which only a hostile device makes, end and let one stand", () => {
    expect(stands(event("a", 1, { replaces: "b" }), event("b", 2, { replaces: "a" }))).toEqual(["b"]);
    expect(stands(event("a", 1, { replaces: "a" }))).toEqual(["a"]);
  });

  test("keeps the place in time of what was said first", () => {
    const events = [event("a", 1), event("x", 2), event("b", 9, { replaces: "a" })];
    expect(stands(...events)).toEqual(["b", "x"]);
    expect(standingEvents(events)[0]!.first.id).toBe("a");
  });
});

const ids = fc.constantFrom(..."abcdefghij");
const histories = fc.uniqueArray(
  fc.record({
    id: ids,
    n: fc.nat(6),
    device: fc.constantFrom("phone", "watch"),
    replaces: fc.option(ids, { nil: undefined }),
    kind: fc.constantFrom("hurt", "struck"),
  }),
  { selector: ({ id }) => id, maxLength: 10 },
);

/** Said apart from the code: the group is what corrections connect; its last word is the highest that none replaces. */
function plainly(events: readonly StaveEvent[]): readonly string[] {
  const connected = (a: StaveEvent, b: StaveEvent, seen: ReadonlySet<string> = new Set()): boolean =>
    a.id === b.id ||
    events.some(
      (via) =>
        !seen.has(via.id) &&
        (via.replaces === a.id ||
          a.replaces === via.id ||
          (via.replaces !== undefined && via.replaces === a.replaces)) &&
        connected(via, b, new Set([...seen, a.id])),
    );
  const best = events.filter((each) => {
    const group = events.filter((other) => connected(each, other)).sort(compareEvents);
    const free = group.filter(({ id }) => !group.some(({ replaces }) => replaces === id));
    return (free.length > 0 ? free : group).at(-1) === each;
  });
  return best
    .filter(({ kind }) => kind !== "struck")
    .map(({ id }) => id)
    .sort();
}

test("in any order, in any cutting, with any repeats: what stands is the same, and what a plain reading says", () => {
  fc.assert(
    fc.property(histories, fc.infiniteStream(fc.nat(1000)), fc.nat(10), (raw, keys, cut) => {
      const events = raw.map(({ replaces, ...each }) =>
        event(each.id, each.n, { ...each, ...(replaces === undefined ? {} : { replaces }) }),
      );
      const shuffled = events
        .map((each) => ({ each, key: keys.next().value }))
        .sort((a, b) => a.key - b.key)
        .map(({ each }) => each);
      const merged = mergeEvents(shuffled.slice(cut), shuffled, shuffled.slice(0, cut));
      expect(merged).toEqual(mergeEvents(events));
      expect(standingEvents(merged)).toEqual(standingEvents(shuffled));
      expect(
        standingEvents(events)
          .map((one) => one.event.id)
          .sort(),
      ).toEqual(plainly(events));
    }),
    { numRuns: 300 },
  );
});

test("ten thousand corrections of one another are no work to speak of", () => {
  const events = Array.from({ length: 10_000 }, (_, i) => event(`e${i}`, i, i === 0 ? {} : { replaces: `e${i - 1}` }));
  expect(stands(...events.toReversed())).toEqual(["e9999"]);
});

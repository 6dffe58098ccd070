import type { Morning, MorningItem } from "@stave/core/api";
import * as fc from "fast-check";
import { expect, test } from "vitest";
import { arrange, sameRows } from "./arrange.ts";

type Rows = Readonly<Record<string, readonly string[]>>;

const item = (proposal: string): MorningItem => ({
  proposal: { proposal, patch: { slot: proposal, change: "resume" }, evidence: [], cut: {}, engine: "" },
  slot: proposal,
  exercise: { id: "goblet-squat", name: "Goblet squat" },
  title: { code: "", data: {} },
  stop: false,
  past: [],
  next: [],
  others: [],
  left: [],
});
const list = (rows: Rows): Morning["people"] =>
  Object.entries(rows).map(([id, items]) => ({
    person: { id, name: id },
    items: items.map(item),
    notes: [],
    figures: [],
    names: [],
  }));
const rowsOf = (people: Morning["people"]): Rows =>
  Object.fromEntries(people.map(({ person, items }) => [person.id, items.map(({ proposal }) => proposal.proposal)]));
const arranged = (shown: Rows, fresh: Rows, ...kept: readonly string[]) =>
  rowsOf(arrange(list(shown), list(fresh), new Set(kept)));

test("what was decided here stays where it stood", () => {
  expect(arranged({ a: ["1", "2", "3"], b: ["4"] }, { a: ["1", "3"], b: ["4"] }, "2")).toEqual({
    a: ["1", "2", "3"],
    b: ["4"],
  });
});

test("so does a person whose last decision it was, and one who stood first", () => {
  expect(Object.keys(arranged({ a: ["1"], b: ["2"], c: ["3"] }, { a: ["1"], c: ["3"] }, "2"))).toEqual(["a", "b", "c"]);
  expect(Object.keys(arranged({ a: ["1"], b: ["2"] }, { b: ["2"] }, "1"))).toEqual(["a", "b"]);
});

test("what others decided goes, what is new comes where the server put it", () => {
  expect(arranged({ a: ["1", "2"] }, { n: ["9"], a: ["2"] })).toEqual({ n: ["9"], a: ["2"] });
});

const rows: fc.Arbitrary<Rows> = fc
  .uniqueArray(fc.constantFrom("a", "b", "c", "d"))
  .chain((ids) =>
    fc
      .tuple(...ids.map((id) => fc.uniqueArray(fc.integer({ min: 0, max: 5 }).map((n) => `${id}${n}`))))
      .map((items) => Object.fromEntries(ids.map((id, at) => [id, items[at]!]))),
  );

test("nothing decided here is lost, nothing is there twice, and the server's own order stays", () => {
  fc.assert(
    fc.property(rows, rows, fc.infiniteStream(fc.boolean()), (shown, fresh, picks) => {
      const kept = Object.values(shown)
        .flat()
        .filter(() => picks.next().value);
      const after = arranged(shown, fresh, ...kept);
      const flat = Object.values(after).flat();
      expect(new Set(flat).size).toBe(flat.length);
      for (const each of kept) expect(flat).toContain(each);
      for (const [id, items] of Object.entries(fresh)) {
        expect(after[id]!.filter((each) => items.includes(each))).toEqual(items);
      }
      expect(Object.keys(after).filter((id) => id in fresh)).toEqual(Object.keys(fresh));
    }),
  );
});

test("rows are the same only in the same order", () => {
  expect(sameRows(list({ a: ["1", "2"] }), list({ a: ["1", "2"] }))).toBe(true);
  expect(sameRows(list({ a: ["1", "2"] }), list({ a: ["2", "1"] }))).toBe(false);
  expect(sameRows(list({ a: [] }), list({}))).toBe(false);
});

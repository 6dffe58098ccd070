import "fake-indexeddb/auto";
import type { Bundle, StaveEvent } from "@stave/core/model";
import { beforeEach, describe, expect, test } from "vitest";
import { isSaid } from "../session/index.ts";
import {
  comingDevice,
  type Kept,
  keepBundle,
  keepFates,
  keepLinked,
  keepTheirs,
  leaveForgotten,
  openKept,
  readAll,
  record,
  type Said,
  touchDraft,
  unsentEvents,
} from "./index.ts";

const SESSION = "base/1/a";
const NOW = 1_800_000_000_000;
let kept: Kept;
let name = 0;

const done = (set: number): Said => ({
  kind: "set-done",
  of: { plan: "p", session: SESSION, slot: "squat", set },
  data: { exercise: "squat", reps: 8, load: "as asked", reserve: "not said" },
});
const bundle = (n: number, sessions: readonly string[] = [SESSION]) =>
  ({
    v: 1,
    n,
    plan: `plan-${n}`,
    person: { id: "ana" },
    sessions: sessions.map((id) => ({ id })),
  }) as unknown as Bundle;

beforeEach(async () => {
  kept = await openKept(`kept-${name++}`);
  await keepLinked(kept, { ...(await comingDevice(kept, "link", NOW)), person: "ana" });
});

describe("a link", () => {
  test("is asked again with the same token after a lost answer, and another link with another", async () => {
    const [one, again, other] = [
      await comingDevice(kept, "a", NOW),
      await comingDevice(kept, "a", NOW + 1),
      await comingDevice(kept, "b", NOW),
    ];
    expect(again).toEqual(one);
    expect(other.token).not.toBe(one.token);
  });
  test("of the same person keeps what is here; of another one takes the place of all", async () => {
    await record(kept, SESSION, { said: [done(0)] }, NOW);
    await keepLinked(kept, { ...(await comingDevice(kept, "new", NOW)), person: "ana" });
    expect((await readAll(kept)).events).toHaveLength(1);
    await keepLinked(kept, { ...(await comingDevice(kept, "newer", NOW)), person: "ben" });
    const all = await readAll(kept);
    expect(all.events).toEqual([]);
    expect(all.device?.person).toBe("ben");
  });
});

describe("what happened", () => {
  test("two tabs at once give every event a counter of its own, with no gap", async () => {
    const other = await openKept(kept.name);
    const both = [kept, other];
    await Promise.all(
      Array.from({ length: 40 }, (_, set) => record(both[set % 2]!, SESSION, { said: [done(set)] }, NOW)),
    );
    const counters = (await unsentEvents(kept)).map(({ n }) => n);
    expect(counters).toEqual(Array.from({ length: 40 }, (_, at) => at + 1));
    other.close();
  });
  test("a set that two tabs say done at once is written once", async () => {
    const other = await openKept(kept.name);
    const change = {
      said: [done(0)],
      already: (events: readonly StaveEvent[]) => isSaid(events, { slot: "squat", set: 0 }),
    };
    await Promise.all([kept, other, kept].map((tab) => record(tab, SESSION, change, NOW)));
    expect(await unsentEvents(kept)).toHaveLength(1);
    other.close();
  });
  test("is written with its draft or not at all", async () => {
    const fails = record(
      kept,
      SESSION,
      {
        said: [done(0)],
        draft: () => {
          throw new Error("no draft");
        },
      },
      NOW,
    );
    await expect(fails).rejects.toThrow("no draft");
    expect((await readAll(kept)).events).toEqual([]);
    await record(kept, SESSION, { said: [done(0)] }, NOW);
    expect((await unsentEvents(kept)).map(({ n }) => n)).toEqual([1]);
  });
  test("keeps what the thumb did in two tabs", async () => {
    const other = await openKept(kept.name);
    const touch = (tab: Kept, key: string) =>
      touchDraft(tab, SESSION, (draft) => ({ ...draft, entries: { ...draft.entries, [key]: { both: 9 } } }));
    await Promise.all([touch(kept, "squat/0"), touch(other, "row/0"), touch(kept, "row/1")]);
    expect(Object.keys((await readAll(kept)).drafts.get(SESSION)!.entries).sort()).toEqual([
      "row/0",
      "row/1",
      "squat/0",
    ]);
    other.close();
  });
  test("a clock an hour behind changes no order", async () => {
    await record(kept, SESSION, { said: [done(0)] }, NOW);
    await record(kept, SESSION, { said: [done(1)] }, NOW - 3_600_000);
    expect((await unsentEvents(kept)).map(({ of }) => of?.set)).toEqual([0, 1]);
  });
});

describe("a bundle", () => {
  test("between sessions is in use at once, in a session it waits for the end", async () => {
    await keepBundle(kept, { etag: "1", bundle: bundle(5) });
    expect((await readAll(kept)).bundle?.etag).toBe("1");
    await record(kept, SESSION, { said: [done(0)], open: SESSION }, NOW);
    expect((await unsentEvents(kept))[0]!.n).toBe(6);
    await keepBundle(kept, { etag: "2", bundle: bundle(9) });
    const during = await readAll(kept);
    expect([during.bundle?.etag, during.next?.etag]).toEqual(["1", "2"]);
    await record(kept, SESSION, { said: [done(1)], open: "none" }, NOW);
    const after = await readAll(kept);
    expect([after.bundle?.etag, after.next, after.open]).toEqual(["2", undefined, undefined]);
    expect((await unsentEvents(kept))[1]!.n).toBe(10);
  });
  test("is not held back for ever by a session that was forgotten", async () => {
    await keepBundle(kept, { etag: "1", bundle: bundle(5) });
    await record(kept, SESSION, { said: [done(0)], open: SESSION }, NOW);
    await keepBundle(kept, { etag: "2", bundle: bundle(9) });
    await leaveForgotten(kept, NOW + 5 * 3_600_000);
    expect((await readAll(kept)).open).toBe(SESSION);
    await leaveForgotten(kept, NOW - 3_600_000);
    expect((await readAll(kept)).open).toBe(SESSION);
    await leaveForgotten(kept, NOW + 7 * 3_600_000);
    const after = await readAll(kept);
    expect([after.open, after.bundle?.etag, after.next]).toEqual([undefined, "2", undefined]);
  });
  test("lets go of sent records that no session needs, and of nothing that is not sent", async () => {
    await record(kept, "old", { said: [done(0), done(1), done(2)] }, NOW);
    const [sent, conflict] = await unsentEvents(kept);
    await keepFates(kept, new Map([[sent!.id, "sent"] as const, [conflict!.id, "conflict"] as const]));
    await keepBundle(kept, { etag: "1", bundle: bundle(5) });
    expect((await readAll(kept)).events.map(({ fate }) => fate).sort()).toEqual(["conflict", "unsent"]);
  });
});

test("what another phone said is kept once, and this one counts on from above it", async () => {
  await record(kept, SESSION, { said: [done(0)] }, NOW);
  const [own] = await unsentEvents(kept);
  const theirs = { ...own!, id: "theirs-0001", device: "other", n: 40 };
  await keepTheirs(kept, [own!, theirs], 7);
  await keepTheirs(kept, [theirs], 8);
  await record(kept, SESSION, { said: [done(1)] }, NOW);
  const all = await readAll(kept);
  expect(all.events.map(({ fate }) => fate).sort()).toEqual(["theirs", "unsent", "unsent"]);
  expect((await unsentEvents(kept)).map(({ n }) => n)).toEqual([1, 41]);
  expect(all.after).toBe(8);
});

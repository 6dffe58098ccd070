import type { Plan } from "@stave/core/model";
import fc from "fast-check";
import { afterEach, describe, expect, test } from "vitest";
import { sha256 } from "./sha256.ts";
import type { Store } from "./store.ts";
import { sampleEvent, sampleEvents } from "./testing/sample-events.ts";
import { tokenContract } from "./token-contract.ts";

/** Opens a store in one and the same empty place; every call is a connection of its own. */
export type OpenPlace = () => Promise<Store>;

const P = "ropewalk";
const PLAN: Plan = {
  id: "plan-1",
  person: "ana",
  programme: "hash",
  made: { engine: "1", catalogue: "c", state: "s", decisions: "d" },
  firmTo: { phase: "base" },
  notes: [],
  phases: [],
};

/** What every store must do, whatever it keeps its rows in. */
export function storeContract(name: string, newPlace: () => Promise<OpenPlace>): void {
  const opened: Store[] = [];
  const tracked = (open: OpenPlace) => async () => {
    const store = await open();
    opened.push(store);
    return store;
  };
  const fresh = async () => await tracked(await newPlace())();
  afterEach(async () => {
    await Promise.all(opened.splice(0).map((store) => store.close()));
  });
  const idsOf = async (store: Store, person = "ana", practice = P) =>
    (await store.eventsOf(practice, person)).map(({ event }) => event.id);

  describe(`events on ${name}`, () => {
    test("are stored, then known, and read as they were given", async () => {
      const store = await fresh();
      const events = sampleEvents(0, 3);
      expect(await store.appendEvents(P, "ana", events)).toEqual(["stored", "stored", "stored"]);
      expect(await store.appendEvents(P, "ana", events)).toEqual(["known", "known", "known"]);
      const read = await store.eventsOf(P, "ana");
      expect(read.map(({ event }) => event)).toEqual(events);
    });

    test("with the same members in another order have the same bytes", async () => {
      const store = await fresh();
      const event = sampleEvent(1);
      await store.appendEvents(P, "ana", [event]);
      const turned = Object.fromEntries(Object.entries(event).reverse()) as typeof event;
      expect(await store.appendEvents(P, "ana", [turned])).toEqual(["known"]);
    });

    test("with an id that stands with other bytes are a conflict, and the first stays", async () => {
      const store = await fresh();
      const other = sampleEvent(1, "ana", { at: 5 });
      await store.appendEvents(P, "ana", [sampleEvent(1)]);
      expect(await store.appendEvents(P, "ana", [sampleEvent(0), other, sampleEvent(2)])).toEqual([
        "stored",
        "conflict",
        "stored",
      ]);
      expect((await store.eventsOf(P, "ana")).map(({ event }) => event)).toEqual([
        sampleEvent(1),
        sampleEvent(0),
        sampleEvent(2),
      ]);
    });

    test("with one id twice in a batch: the first counts", async () => {
      const store = await fresh();
      const batch = [sampleEvent(1), sampleEvent(1), sampleEvent(1, "ana", { at: 5 })];
      expect(await store.appendEvents(P, "ana", batch)).toEqual(["stored", "known", "conflict"]);
      expect((await store.eventsOf(P, "ana")).map(({ event }) => event)).toEqual([sampleEvent(1)]);
    });

    test("in batches of any order and overlap are stored once each", async () => {
      const place = tracked(await newPlace());
      const store = await place();
      let run = 0;
      const batches = fc.array(fc.array(fc.nat(24), { maxLength: 12 }), { minLength: 1, maxLength: 8 });
      await fc.assert(
        fc.asyncProperty(batches, async (lists) => {
          const person = `person-${run++}`;
          const seen = new Set<number>();
          for (const list of lists) {
            const acks = await store.appendEvents(
              P,
              person,
              list.map((n) => sampleEvent(n, person)),
            );
            const wanted = list.map((n, i) => (seen.has(n) || list.indexOf(n) < i ? "known" : "stored"));
            expect(acks).toEqual(wanted);
            for (const n of list) seen.add(n);
          }
          const inOrder = [...seen].map((n) => sampleEvent(n, person).id);
          expect(await idsOf(store, person)).toEqual(inOrder);
        }),
        { numRuns: 25 },
      );
    });

    test("of the same batches sent at once over two connections are stored once each", async () => {
      const place = tracked(await newPlace());
      const [one, two] = [await place(), await place()];
      const forth = sampleEvents(0, 60);
      const back = forth.toReversed();
      const cut = (all: typeof forth) => [0, 20, 40].map((from) => all.slice(from, from + 20));
      const acks = await Promise.all([
        ...cut(forth).map((batch) => one.appendEvents(P, "ana", batch)),
        ...cut(back).map((batch) => two.appendEvents(P, "ana", batch)),
      ]);
      const count = (ack: string) => acks.flat().filter((each) => each === ack).length;
      expect([count("stored"), count("known"), count("conflict")]).toEqual([60, 60, 0]);
      expect((await idsOf(one)).toSorted()).toEqual(forth.map(({ id }) => id));
      const positions = (await two.eventsOf(P, "ana")).map(({ position }) => position);
      expect(new Set(positions).size).toBe(60);
    });

    test("can be read on from any position while others write, and none is missed", async () => {
      const place = tracked(await newPlace());
      const [one, two, reader] = [await place(), await place(), await place()];
      const seen: string[] = [];
      let after = 0;
      let writing = true;
      const read = async () => {
        const news = await reader.eventsOf(P, "ana", after);
        for (const { position, event } of news) {
          expect(position).toBeGreaterThan(after);
          after = position;
          seen.push(event.id);
        }
      };
      const reading = (async () => {
        while (writing) {
          await read();
          await new Promise((resolve) => setTimeout(resolve, 1));
        }
      })();
      await Promise.all(
        Array.from({ length: 40 }, (_, i) =>
          (i % 2 === 0 ? one : two).appendEvents(P, "ana", sampleEvents(i * 5, i * 5 + 5)),
        ),
      );
      writing = false;
      await reading;
      await read();
      expect(seen.toSorted()).toEqual(sampleEvents(0, 200).map(({ id }) => id));
    });

    test("come by the thousand, in the order in which they were received", async () => {
      const store = await fresh();
      const events = sampleEvents(0, 1000).toReversed();
      const acks = await store.appendEvents(P, "ana", events);
      expect(acks.filter((ack) => ack === "stored").length).toBe(1000);
      expect(await idsOf(store)).toEqual(events.map(({ id }) => id));
      expect(new Set(await store.appendEvents(P, "ana", events))).toEqual(new Set(["known"]));
    });

    test("keep every script, every whole number that JavaScript has, and kinds that nobody knows", async () => {
      const store = await fresh();
      const event = sampleEvent(7, "Żaneta 🏋️ ‏עדי", {
        id: "İ/ß/𝒳",
        n: Number.MAX_SAFE_INTEGER,
        at: -8_640_000_000_000_000,
        kind: "not-known-yet",
        data: { "каша 粥": ["\u0001\u2028'\"\\%_", 0.1, 1e300, -0.5, null, true, { "": [] }] },
      });
      await store.appendEvents(P, event.person, [event]);
      expect((await store.eventsOf(P, event.person)).map((row) => row.event)).toEqual([event]);
      expect(await store.appendEvents(P, event.person, [event])).toEqual(["known"]);
    });

    test("are told apart by the case of a letter", async () => {
      const store = await fresh();
      const pair = [sampleEvent(0, "ana", { id: "a" }), sampleEvent(0, "ana", { id: "A" })];
      expect(await store.appendEvents(P, "ana", pair)).toEqual(["stored", "stored"]);
    });

    test.each([
      ["NUL in a value", sampleEvent(1, "ana", { kind: "x", data: { note: "a\0b" } })],
      ["NUL in the id", sampleEvent(1, "ana", { id: "a\0b" })],
      ["half of a surrogate pair", sampleEvent(1, "ana", { kind: "x", data: { note: "\ud83d" } })],
      ["a number that is none", sampleEvent(1, "ana", { n: Number.NaN })],
      ["an empty id", sampleEvent(1, "ana", { id: "" })],
      ["an id too long for a key", sampleEvent(1, "ana", { id: "x".repeat(201) })],
      ["another person's event", sampleEvent(1, "ben")],
    ])("%s is refused, and with it the whole batch", async (_, event) => {
      const store = await fresh();
      await expect(store.appendEvents(P, "ana", [sampleEvent(0), event])).rejects.toThrow(RangeError);
      expect(await idsOf(store)).toEqual([]);
    });

    test("none in a batch is nothing done", async () => {
      expect(await (await fresh()).appendEvents(P, "ana", [])).toEqual([]);
    });
  });

  describe(`documents on ${name}`, () => {
    test("are written, written over and listed by the bytes of their ids", async () => {
      const store = await fresh();
      for (const id of ["ö", "b", "Z", "a"]) await store.putDocument(P, "person", id, `of ${id}`);
      await store.putDocument(P, "person", "b", "of b, later");
      await store.putDocument(P, "place", "b", "a place");
      const people = await store.listDocuments(P, "person");
      expect(people.map(({ id, text }) => [id, text])).toEqual([
        ["Z", "of Z"],
        ["a", "of a"],
        ["b", "of b, later"],
        ["ö", "of ö"],
      ]);
      expect(await store.getDocument(P, "place", "b")).toEqual({ id: "b", text: "a place", hash: sha256("a place") });
      expect(await store.getDocument(P, "programme", "b")).toBeUndefined();
    });

    test("a programme stands under the hash of its text and nothing else", async () => {
      const store = await fresh();
      const text = "stave: 1\ntitle: Übung 🏋️\n";
      await store.putDocument(P, "programme", sha256(text), text);
      await store.putDocument(P, "programme", sha256(text), text);
      expect(await store.listDocuments(P, "programme")).toEqual([{ id: sha256(text), text, hash: sha256(text) }]);
      await expect(store.putDocument(P, "programme", sha256(text), "other")).rejects.toThrow(RangeError);
      await expect(store.putDocument(P, "programme", "name", text)).rejects.toThrow(RangeError);
    });

    test("NUL in a text is refused", async () => {
      await expect((await fresh()).putDocument(P, "place", "a", "x\0")).rejects.toThrow(RangeError);
    });
  });

  describe(`standing rules on ${name}`, () => {
    const rule = { id: "small-steps", version: 1, by: "Imke", at: 1, leastSessions: 6, mostPercent: 10 } as const;
    const first = { ...rule, takes: ["load"], leastChance: 0.9 } as const;

    test("every version stays, and never changes", async () => {
      const store = await fresh();
      expect(await store.putRule(P, first)).toBe("stored");
      expect(await store.putRule(P, first)).toBe("stored");
      expect(await store.putRule(P, { ...first, leastChance: 0.5 })).toBe("conflict");
      const second = { ...first, version: 2, takes: [] };
      expect(await store.putRule(P, second)).toBe("stored");
      expect(await store.listRules(P)).toEqual([first, second]);
      expect(await store.listRules("another")).toEqual([]);
    });
  });

  describe(`plan revisions on ${name}`, () => {
    const later: Plan = { ...PLAN, notes: [{ code: "later", data: { kg: 12.5 } }] };

    test("the latest is the one put last; putting an earlier one again goes back to it", async () => {
      const store = await fresh();
      expect(await store.latestRevision(P, "ana")).toBeUndefined();
      expect(await store.putRevision(P, "ana", { id: "r2", plan: PLAN })).toBe("stored");
      expect(await store.putRevision(P, "ana", { id: "r1", plan: later })).toBe("stored");
      expect(await store.latestRevision(P, "ana")).toEqual({ id: "r1", plan: later });
      expect(await store.putRevision(P, "ana", { id: "r2", plan: PLAN })).toBe("stored");
      expect(await store.latestRevision(P, "ana")).toEqual({ id: "r2", plan: PLAN });
      expect(await store.revision(P, "ana", "r1")).toEqual({ id: "r1", plan: later });
      expect(await store.revision(P, "ben", "r1")).toBeUndefined();
    });

    test("never change: other bytes for an id are a conflict and alter nothing", async () => {
      const store = await fresh();
      await store.putRevision(P, "ana", { id: "r1", plan: PLAN });
      await store.putRevision(P, "ana", { id: "r2", plan: later });
      expect(await store.putRevision(P, "ana", { id: "r1", plan: later })).toBe("conflict");
      expect(await store.revision(P, "ana", "r1")).toEqual({ id: "r1", plan: PLAN });
      expect(await store.latestRevision(P, "ana")).toEqual({ id: "r2", plan: later });
    });

    test("and events of a person can be written at once", async () => {
      const place = tracked(await newPlace());
      const [one, two] = [await place(), await place()];
      const jobs = Array.from({ length: 20 }, (_, i) => [
        one.appendEvents(P, "ana", [sampleEvent(i)]),
        two.putRevision(P, "ana", { id: `r${i}`, plan: PLAN }),
      ]);
      expect((await Promise.all(jobs.flat())).flat()).toEqual(Array(40).fill("stored"));
      expect((await one.eventsOf(P, "ana")).length).toBe(20);
    });
  });

  tokenContract(name, fresh, async () => tracked(await newPlace()));

  describe(`practices on ${name}`, () => {
    test("one never sees or disturbs another's, under the same names", async () => {
      const store = await fresh();
      const text = "stave: 1";
      const mine = sampleEvent(1);
      const theirs = sampleEvent(1, "ana", { at: 5 });
      expect(await store.appendEvents("one", "ana", [mine])).toEqual(["stored"]);
      expect(await store.appendEvents("two", "ana", [theirs])).toEqual(["stored"]);
      await store.putDocument("one", "person", "ana", "mine");
      await store.putDocument("one", "programme", sha256(text), text);
      await store.putRevision("one", "ana", { id: "r1", plan: PLAN });
      await store.putLink("one", { token: "t", person: "ana", expires: 10 });

      expect((await store.eventsOf("one", "ana")).map(({ event }) => event)).toEqual([mine]);
      expect((await store.eventsOf("two", "ana")).map(({ event }) => event)).toEqual([theirs]);
      expect(await store.getDocument("two", "person", "ana")).toBeUndefined();
      expect(await store.listDocuments("two", "programme")).toEqual([]);
      expect(await store.latestRevision("two", "ana")).toBeUndefined();
      expect(await store.revision("two", "ana", "r1")).toBeUndefined();
      expect(await store.takeLink("t", "device", 1)).toEqual({ practice: "one", person: "ana" });
      expect(await store.deviceByToken("device")).toEqual({ practice: "one", person: "ana" });
      await store.putDocument("two", "person", "ana", "theirs");
      expect((await store.getDocument("one", "person", "ana"))?.text).toBe("mine");
    });

    test("people of a practice are kept apart too", async () => {
      const store = await fresh();
      await store.appendEvents(P, "ana", [sampleEvent(1)]);
      expect(await store.appendEvents(P, "ben", [sampleEvent(1, "ben")])).toEqual(["stored"]);
      expect((await store.eventsOf(P, "ben")).map(({ event }) => event.person)).toEqual(["ben"]);
    });
  });

  describe(`opening on ${name}`, () => {
    test("all is there after closing and opening again", async () => {
      const open = await newPlace();
      const first = await open();
      await first.appendEvents(P, "ana", sampleEvents(0, 5));
      await first.putRevision(P, "ana", { id: "r1", plan: PLAN });
      await first.close();
      const second = await tracked(open)();
      expect(await second.appendEvents(P, "ana", sampleEvents(3, 7))).toEqual(["known", "known", "stored", "stored"]);
      expect(await idsOf(second)).toEqual(sampleEvents(0, 7).map(({ id }) => id));
      expect((await second.latestRevision(P, "ana"))?.id).toBe("r1");
    });
  });
}

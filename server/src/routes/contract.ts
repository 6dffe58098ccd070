import { API_ROOT } from "@stave/core/api";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { newToken } from "../safeguard/index.ts";
import type { Store } from "../store/index.ts";
import { sampleEvent } from "../store/testing/sample-events.ts";
import { listen } from "./testing/listen.ts";
import { send } from "./testing/send.ts";
import { fill, NOON, type Served, served } from "./testing/served.ts";

const EVENTS = `${API_ROOT}/events`;
const EXCHANGE = `${API_ROOT}/links/exchange`;
const STREAM = `${API_ROOT}/stream`;
const DAY = 86_400_000;

/** What the routes of records, links and streams do, whatever the store keeps its rows in. */
export function routesContract(name: string, openStore: () => Promise<Store>): void {
  let it: Served;
  beforeAll(async () => {
    const store = await openStore();
    await fill(store, ["dagny", "tobiah"]);
    await fill(store, ["dagny"], "another");
    it = await served(store);
  }, 60_000);
  afterAll(() => it.stop());

  describe(`links over ${name}`, () => {
    const linkFor = async (person: string) => {
      const { status, json } = await it.ask(`${API_ROOT}/people/${person}/links`, {
        method: "POST",
        headers: await it.owner(),
      });
      expect(status).toBe(200);
      expect(json.path).toMatch(/^\/go\/#[\w-]{43}$/);
      expect(json.expires).toBe(it.time.now + 7 * DAY);
      return json.path.slice(5) as string;
    };

    test("the coach makes one, the first phone opens it, again after a lost answer, and no other ever", async () => {
      const link = await linkFor("dagny");
      const [mine, other] = [newToken(), newToken()];
      const first = await it.ask(EXCHANGE, { body: { link, token: mine } });
      expect([first.status, first.json]).toEqual([200, { person: "dagny" }]);
      expect((await it.ask(EXCHANGE, { body: { link, token: mine } })).json).toEqual({ person: "dagny" });
      const second = await it.ask(EXCHANGE, { body: { link, token: other } });
      expect([second.status, second.json.code]).toEqual([403, "link/not-open"]);
      const unopened = await it.ask(EVENTS, { headers: { authorization: `Bearer ${other}` } });
      expect([unopened.status, unopened.json.code]).toEqual([401, "sign-in/missing"]);
      expect((await it.ask(EVENTS, { headers: { authorization: `Bearer ${mine}` } })).status).toBe(200);
    });

    test("after seven days it opens nothing", async () => {
      const link = await linkFor("dagny");
      it.time.now = NOON + 7 * DAY;
      const late = await it.ask(EXCHANGE, { body: { link, token: newToken() } });
      it.time.now = NOON;
      expect([late.status, late.json.code]).toEqual([403, "link/not-open"]);
    });

    test("a link's own token is no device's token, and an invented one opens nothing", async () => {
      const link = await linkFor("dagny");
      await it.ask(EXCHANGE, { body: { link, token: newToken() } });
      for (const token of [link, newToken()])
        expect((await it.ask(EVENTS, { headers: { authorization: `Bearer ${token}` } })).status).toBe(401);
      expect((await it.ask(EXCHANGE, { body: { link: newToken(), token: newToken() } })).status).toBe(403);
    });

    test("there is none for somebody who is not there, and none without the coach's session", async () => {
      const owner = await it.owner();
      const nobody = await it.ask(`${API_ROOT}/people/nobody/links`, { method: "POST", headers: owner });
      expect([nobody.status, nobody.json.code]).toEqual([404, "person/unknown"]);
      for (const headers of [{}, await it.phone("dagny"), { ...owner, cookie: "" }, { cookie: owner["cookie"]! }]) {
        const refused = await it.ask(`${API_ROOT}/people/dagny/links`, { method: "POST", headers });
        expect([401, 403]).toContain(refused.status);
      }
    });
  });

  describe(`events over ${name}`, () => {
    test("a batch is acknowledged one by one, again the same, and other bytes are a conflict", async () => {
      const phone = await it.phone("dagny");
      const events = [1, 2, 3].map((n) => sampleEvent(n, "dagny"));
      const acks = async (sent: readonly unknown[]) => {
        const { status, json } = await it.ask(EVENTS, { headers: phone, body: { events: sent } });
        expect(status).toBe(200);
        return json.acks;
      };
      const all = (ack: string) => events.map(({ id }) => ({ id, ack }));
      expect(await acks(events)).toEqual(all("stored"));
      expect(await acks(events.toReversed())).toEqual(all("known").toReversed());
      const altered = sampleEvent(2, "dagny", { at: 7 });
      expect(await acks([sampleEvent(4, "dagny"), altered])).toEqual([
        { id: sampleEvent(4).id, ack: "stored" },
        { id: altered.id, ack: "conflict" },
      ]);
      const { json } = await it.ask(EVENTS, { headers: phone });
      expect(json.events).toEqual([...events, sampleEvent(4, "dagny")]);
    });

    test("another phone of the same person reads on from where it was, and another person sees none of it", async () => {
      const [one, two] = [await it.phone("tobiah"), await it.phone("tobiah")];
      const sent = Array.from({ length: 60 }, (_, i) => sampleEvent(100 + i, "tobiah"));
      await it.ask(EVENTS, { headers: one, body: { events: sent.slice(0, 30) } });
      const first = (await it.ask(EVENTS, { headers: two })).json;
      expect(first.events).toEqual(sent.slice(0, 30));
      await it.ask(EVENTS, { headers: one, body: { events: sent.slice(30) } });
      const rest = (await it.ask(`${EVENTS}?after=${first.after}`, { headers: two })).json;
      expect(rest.events).toEqual(sent.slice(30));
      const end = (await it.ask(`${EVENTS}?after=${rest.after}`, { headers: two })).json;
      expect(end).toEqual({ events: [], after: rest.after });
      const others = (await it.ask(EVENTS, { headers: await it.phone("dagny") })).json.events;
      expect(others.filter(({ person }: { person: string }) => person !== "dagny")).toEqual([]);
    });

    test("more than one answer holds are read in turn", async () => {
      const phone = await it.phone("dagny");
      for (let from = 1000; from < 1700; from += 100) {
        const events = Array.from({ length: 100 }, (_, i) => sampleEvent(from + i, "dagny"));
        expect((await it.ask(EVENTS, { headers: phone, body: { events } })).status).toBe(200);
      }
      const ids: string[] = [];
      for (let after = -1, next = 0; next !== after; ) {
        after = next;
        const { json } = await it.ask(`${EVENTS}?after=${after}`, { headers: phone });
        ids.push(...json.events.map(({ id }: { id: string }) => id));
        next = json.after;
      }
      const wanted = Array.from({ length: 700 }, (_, i) => sampleEvent(1000 + i).id);
      expect(ids.filter((id) => wanted.includes(id))).toEqual(wanted);
      expect(new Set(ids).size).toBe(ids.length);
    });

    test("of one other person among them the whole batch is refused, with its place; nothing is stored", async () => {
      const phone = await it.phone("dagny");
      const batch = [sampleEvent(500, "dagny"), sampleEvent(501, "tobiah")];
      const { status, json } = await it.ask(EVENTS, { headers: phone, body: { events: batch } });
      expect([status, json.code]).toEqual([422, "event/other-person"]);
      expect(json.faults).toEqual([{ at: ["body", "events", 1, "person"], message: expect.any(String) }]);
      const stored = (await it.ask(EVENTS, { headers: phone })).json.events;
      expect(stored.map(({ id }: { id: string }) => id)).not.toContain(batch[0]!.id);
      expect((await it.ask(EVENTS, { headers: phone, body: { events: batch.slice(0, 1) } })).status).toBe(200);
    });

    test("practice and person come from the token: those of a body are refused or without effect", async () => {
      const phone = await it.phone("dagny");
      for (const more of [{ practice: "another" }, { person: "tobiah" }, { device: "x" }]) {
        const body = { events: [sampleEvent(600, "dagny")], ...more };
        expect((await it.ask(EVENTS, { headers: phone, body })).status).toBe(400);
      }
      const before = await it.store.eventsOf("another", "dagny");
      await it.ask(EVENTS, { headers: phone, body: { events: [sampleEvent(600, "dagny")] } });
      expect(await it.store.eventsOf("another", "dagny")).toEqual(before);
    });

    test("a phone takes no decisions and does not speak as the coach's desk", async () => {
      const phone = await it.phone("dagny");
      const pin = { patch: { slot: "squat", change: "resume" }, by: "Imke Farrowdale" };
      const decision = sampleEvent(700, "dagny", { kind: "pinned", data: pin });
      const first = await it.ask(EVENTS, { headers: phone, body: { events: [decision] } });
      expect([first.status, first.json.faults[0].at]).toEqual([400, ["body", "events", 0, "kind"]]);
      const asDesk = sampleEvent(701, "dagny", { device: "stave-desk" });
      const second = await it.ask(EVENTS, { headers: phone, body: { events: [asDesk] } });
      expect([second.status, second.json.code]).toEqual([422, "event/reserved-device"]);
    });

    test("the same events at once on many connections are stored once each", async () => {
      const phones = await Promise.all([1, 2, 3].map(() => it.phone("tobiah")));
      const events = Array.from({ length: 40 }, (_, i) => sampleEvent(3000 + i, "tobiah"));
      const answers = await Promise.all(
        Array.from({ length: 12 }, (_, i) => it.ask(EVENTS, { headers: phones[i % 3]!, body: { events } })),
      );
      const acks = answers.flatMap(({ json }) => json.acks.map(({ ack }: { ack: string }) => ack));
      expect(acks.filter((ack) => ack === "stored").length).toBe(40);
      expect(acks.filter((ack) => ack === "known").length).toBe(11 * 40);
    });
  });

  describe(`the stream over ${name}`, () => {
    test("tells the coach of everybody and a person of themselves alone, once for what is new", async () => {
      const [dagny, tobiah] = [await it.phone("dagny"), await it.phone("tobiah")];
      const coach = await listen(it.port, STREAM, await it.owner());
      const hers = await listen(it.port, STREAM, dagny);
      const post = (phone: Record<string, string>, n: number, person: string) =>
        it.ask(EVENTS, { headers: phone, body: { events: [sampleEvent(n, person)] } });
      await post(dagny, 4000, "dagny");
      await post(dagny, 4000, "dagny");
      await post(tobiah, 4001, "tobiah");
      await post(dagny, 4002, "dagny");
      const told = (person: string) => ({ event: "changed", data: { person } });
      await coach.until(3);
      await hers.until(2);
      expect(coach.events).toEqual([told("dagny"), told("tobiah"), told("dagny")]);
      expect(hers.events).toEqual([told("dagny"), told("dagny")]);
      expect(coach.headers["content-type"]).toBe("text/event-stream");
      expect(coach.headers["cache-control"]).toBe("no-store");
      expect(coach.headers["x-content-type-options"]).toBe("nosniff");
      coach.end();
      hers.end();
    });

    test("is for nobody without a token, and of one caller only so many are open", async () => {
      expect((await it.ask(STREAM)).status).toBe(401);
      const phone = await it.phone("tobiah");
      const open = await Promise.all(Array.from({ length: 12 }, () => listen(it.port, STREAM, phone)));
      const refused = await it.ask(STREAM, { headers: phone });
      expect([refused.status, refused.json.code]).toEqual([429, "request/too-many"]);
      for (const one of open) one.end();
      const again = async (): Promise<number> => {
        const { status } = await send(it.port, STREAM, { method: "HEAD", headers: phone });
        return status;
      };
      expect(await again()).toBe(404);
    });
  });
}

import { API_ROOT, type DecisionInput, type Morning, type PersonOutput } from "@stave/core/api";
import { occurrencesOf, slotsIn } from "@stave/core/measures";
import type { Bundle, Plan } from "@stave/core/model";
import { recordedSession } from "@stave/core/testing";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { LOCAL_PRACTICE } from "../local-practice.ts";
import type { Store } from "../store/index.ts";
import { listen } from "./testing/listen.ts";
import { fill, type Served, served } from "./testing/served.ts";

const at = (place: string) => `${API_ROOT}/${place}`;
const SLOT = "ground-squat-a";
const DAY = 86_400_000;

/** From a set to the next bundle, whatever the store keeps its rows in. One person's story, told in order. */
export function loopContract(name: string, openStore: () => Promise<Store>): void {
  describe(`the loop over ${name}`, () => {
    let it: Served;
    let owner: Record<string, string>;
    let phone: Record<string, string>;
    beforeAll(async () => {
      const store = await openStore();
      await fill(store, ["esteban", "kofi"]);
      it = await served(store);
      [owner, phone] = [await it.owner(), await it.phone("esteban")];
    }, 60_000);
    afterAll(() => it.stop());

    const morning = async (): Promise<Morning> => (await it.ask(at("morning"), { headers: owner })).json;
    const page = async (): Promise<PersonOutput> => (await it.ask(at("people/esteban"), { headers: owner })).json;
    const bundle = async (etag?: string) =>
      await it.ask(at("bundle"), { headers: { ...phone, ...(etag === undefined ? {} : { "if-none-match": etag }) } });
    const waiting = async () => (await page()).waiting.filter(({ slot }) => slot === SLOT);
    const decide = async (input: DecisionInput) => await it.ask(at("decisions"), { headers: owner, body: input });
    /** Does a session as asked, but for two repetitions more in the last set of the squat. */
    const train = async (plan: Plan, session: string, before: number) => {
      const squat = occurrencesOf(plan)
        .filter(({ id }) => id === session)
        .flatMap((one) => slotsIn(one.session))
        .find(({ key }) => key === SLOT)!;
      const { amount } = squat.dose.sets.at(-1)!;
      const said = squat.dose.sets.map((_, i) =>
        i === squat.dose.sets.length - 1 && amount.kind === "reps" ? { reps: amount.span.to + 2 } : {},
      );
      const events = recordedSession(plan, session, before, it.time.now, { [SLOT]: said }).map((event) => ({
        ...event,
        person: "esteban",
        device: "phone-of-his",
      }));
      const { status, json } = await it.ask(at("events"), { headers: phone, body: { events } });
      expect(status).toBe(200);
      expect(new Set(json.acks.map(({ ack }: { ack: string }) => ack))).toEqual(new Set(["stored"]));
      return before + events.length;
    };

    test("a standing rule is set by versions, and only the next one", async () => {
      const set = async (version: number, takes: readonly string[]) =>
        (
          await it.ask(at("rules"), {
            headers: owner,
            body: { id: "small-steps", version, takes, leastChance: 0.99, leastSessions: 50, mostPercent: 5 },
          })
        ).status;
      expect(await set(2, ["load"])).toBe(409);
      expect(await set(1, ["load"])).toBe(200);
      expect(await set(1, ["reps"])).toBe(409);
      const { rules } = (await it.ask(at("rules"), { headers: owner })).json;
      expect(rules).toMatchObject([{ id: "small-steps", version: 1, by: "Imke Farrowdale", takes: ["load"] }]);
      expect(await set(2, [])).toBe(200);
      expect((await it.ask(at("rules"), { headers: owner })).json.rules).toMatchObject([{ version: 2, takes: [] }]);
      expect(await set(3, ["pause"])).toBe(400);
      expect((await it.ask(at("rules"), { headers: phone })).status).toBe(401);
    });

    let first: Bundle;
    let tag: string;
    let told: Morning["people"][number]["items"][number];

    test("the phone has the plan that stands, and again only when something changed", async () => {
      const got = await bundle();
      first = got.json;
      tag = got.headers.etag!;
      expect(first.person).toEqual({ id: "esteban", name: "Esteban Quarrelby", units: "kg" });
      expect(first.call).toBe("Imke Farrowdale, 01632 960 123");
      expect(first.plan).toBe((await it.store.latestRevision(LOCAL_PRACTICE, "esteban"))!.id);
      expect(first.sessions.length).toBeGreaterThan(0);
      expect(tag).toMatch(/^"[0-9a-f]{64}"$/);
      for (const same of [tag, `W/${tag}`, `"x", ${tag}`, "*"]) {
        const again = await bundle(same);
        expect([again.status, again.text, again.headers.etag]).toEqual([304, "", tag]);
      }
      expect((await bundle('"x"')).status).toBe(200);
    });

    test("two sessions over the goal: the coach is told, the plan stays", async () => {
      const coach = await listen(it.port, at("stream"), owner);
      const { plan } = (await it.store.latestRevision(LOCAL_PRACTICE, "esteban"))!;
      const n = await train(plan, "ground/1/a", 0);
      expect(await waiting()).toEqual([]);
      it.time.now += 2 * DAY;
      await train(plan, "ground/2/a", n);
      await coach.until(2);
      coach.end();
      expect(coach.events).toEqual(Array(2).fill({ event: "changed", data: { person: "esteban" } }));
      const list = await morning();
      const items = list.people.find(({ person }) => person.id === "esteban")!.items;
      told = items.find(({ slot }) => slot === SLOT)!;
      expect(told.proposal.evidence.length).toBeGreaterThan(0);
      expect(told.past.length).toBe(2);
      expect(await waiting()).toEqual([told]);
      expect((await bundle()).json.plan).toBe(first.plan);
      const { people } = (await it.ask(at("people"), { headers: owner })).json;
      expect(people.map(({ id }: { id: string }) => id)).toEqual(["esteban", "kofi"]);
      expect(people[0].waiting).toBe((await page()).waiting.length);
    });

    test("the coach's yes is the next revision, once however often it is said; the phone hears and fetches it", async () => {
      const stream = await listen(it.port, at("stream"), phone);
      const yes: DecisionInput = {
        id: "decision-yes-1",
        person: "esteban",
        kind: "accepted",
        proposal: told.proposal.proposal,
      };
      const answers = await Promise.all(Array.from({ length: 5 }, () => decide(yes)));
      const [answer] = answers;
      expect(answer!.status).toBe(200);
      for (const other of answers) expect(other.json).toEqual(answer!.json);
      expect(answer!.json.plan).not.toBe(first.plan);
      expect((await decide(yes)).json).toEqual(answer!.json);
      const kept = (await it.store.eventsOf(LOCAL_PRACTICE, "esteban")).filter(
        ({ event }) => event.kind === "accepted",
      );
      expect(kept.length).toBe(1);
      const { event } = kept[0]!;
      expect(event).toMatchObject({
        id: yes.id,
        device: "stave-desk",
        at: it.time.now,
        data: { by: "Imke Farrowdale" },
      });
      const before = (await it.store.eventsOf(LOCAL_PRACTICE, "esteban")).filter((one) => one.event.id !== yes.id);
      for (const other of before) expect(event.n).toBeGreaterThan(other.event.n);
      await stream.until(1);
      stream.end();
      const next = await bundle(tag);
      expect([next.status, next.json.plan, next.json.n]).toEqual([200, answer!.json.plan, event.n]);
      expect(next.headers.etag).not.toBe(tag);
      expect(await waiting()).toEqual([]);
      expect((await morning()).decided.map(({ id, kind }) => [id, kind])).toEqual([[yes.id, "accepted"]]);
    });

    test("another server over the same store has the same", async () => {
      const other = await served(it.store);
      other.time.now = it.time.now;
      const theirs = await other.ask(at("bundle"), { headers: phone });
      expect(theirs.headers.etag).toBe((await bundle()).headers.etag);
      const list = (await other.ask(at("morning"), { headers: await other.owner() })).json;
      expect(list).toEqual(await morning());
      await other.leave();
    });

    test("what no longer waits, was never there, or has the id of something else is refused and changes nothing", async () => {
      const before = await it.store.eventsOf(LOCAL_PRACTICE, "esteban");
      const { proposal } = told.proposal;
      const refusals: [status: number, code: string, input: DecisionInput][] = [
        [409, "decision/stale", { id: "decision-2", person: "esteban", kind: "refused", proposal }],
        [409, "decision/id-taken", { id: "decision-yes-1", person: "esteban", kind: "refused", proposal }],
        [404, "decision/unknown", { id: "decision-3", person: "esteban", kind: "undone", decision: "decision-0" }],
        [
          404,
          "decision/unknown",
          { id: "decision-4", person: "esteban", kind: "pinned", patch: { slot: "no-such-slot", change: "resume" } },
        ],
        [404, "person/unknown", { id: "decision-5", person: "nobody", kind: "accepted", proposal }],
      ];
      for (const [status, code, input] of refusals) {
        const got = await decide(input);
        expect([got.status, got.json.code]).toEqual([status, code]);
      }
      for (const way of [phone, {}, { ...owner, origin: "http://stave.example" }, { cookie: owner["cookie"]! }]) {
        const body = { id: "decision-6", person: "esteban", kind: "undone", decision: "decision-yes-1" };
        const got = await it.ask(at("decisions"), { headers: way, body });
        expect([401, 403]).toContain(got.status);
      }
      expect(await it.store.eventsOf(LOCAL_PRACTICE, "esteban")).toEqual(before);
      const many = (decisions: readonly DecisionInput[], headers = owner) =>
        it.ask(at("decisions/many"), { headers, body: { decisions } });
      const all = await many(refusals.map(([, , input]) => input));
      expect(all.json.answers).toEqual([
        { id: "decision-2", why: "stale" },
        { id: "decision-yes-1", why: "taken" },
        { id: "decision-3", why: "unknown" },
        { id: "decision-4", why: "unknown" },
        { id: "decision-5", why: "no such person" },
      ]);
      expect((await many([])).status).toBe(400);
      expect([401, 403]).toContain((await many([refusals[0]![2]], {})).status);
      expect(await it.store.eventsOf(LOCAL_PRACTICE, "esteban")).toEqual(before);
    });

    test("undone, the revision before stands again, under its own id, and the proposal waits again", async () => {
      const undo = await decide({ id: "decision-undo", person: "esteban", kind: "undone", decision: "decision-yes-1" });
      expect(undo.json).toEqual({ id: "decision-undo", plan: first.plan });
      expect((await bundle()).json.plan).toBe(first.plan);
      expect((await waiting()).map(({ proposal }) => proposal.proposal)).toEqual([told.proposal.proposal]);
      expect((await page()).decided.map(({ id }) => id)).toEqual(["decision-undo", "decision-yes-1"]);
      expect((await morning()).decided).toEqual([]);
    });

    test("a pin by hand: paused for one person, it leaves the other's plan alone", async () => {
      const others = (await it.store.latestRevision(LOCAL_PRACTICE, "kofi"))!.id;
      const pin = await decide({
        id: "decision-pause",
        person: "esteban",
        kind: "pinned",
        patch: { slot: SLOT, change: "pause" },
      });
      expect(pin.status).toBe(200);
      const { json } = await bundle();
      expect(json.paused.map(({ slot }: { slot: string }) => slot)).toContain(SLOT);
      expect(JSON.stringify(json.sessions)).not.toContain(`"key":"${SLOT}","exercise"`);
      expect((await it.store.latestRevision(LOCAL_PRACTICE, "kofi"))!.id).toBe(others);
    });

    test("nobody of that id has no page", async () => {
      const got = await it.ask(at("people/nobody"), { headers: owner });
      expect([got.status, got.json.code]).toEqual([404, "person/unknown"]);
      expect(it.faults).toEqual([]);
    });
  });
}

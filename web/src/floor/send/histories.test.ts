import "fake-indexeddb/auto";
import { foldRecord, type SetRecord } from "@stave/core/measures";
import type { Bundle, EventData, StaveEvent } from "@stave/core/model";
import fc from "fast-check";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type Kept, keepLinked, keepTheirs, makeId, openKept, readAll, record, type Said } from "../kept/index.ts";
import { entryOf, isSaid, viewOf } from "../session/index.ts";
import { Gym, NOON, PERSON } from "../testing/gym.ts";
import type { Weather } from "../testing/way.ts";
import { fetchTheirs } from "./fetch-news.ts";
import { emptyOutbox } from "./outbox.ts";

const HISTORIES = 100;
const SLOTS = ["squat", "row"];
const SETS = 3;

let gym: Gym;
let token: string;
let bundle: Bundle;
const { fetch } = globalThis;
beforeAll(async () => {
  gym = await Gym.open();
  token = await gym.token();
  bundle = await gym.bundle(token);
  // A page asks the server it came from; here there is no page.
  globalThis.fetch = (path, init) => fetch(new URL(String(path), gym.way.origin), init);
});
afterAll(async () => {
  globalThis.fetch = fetch;
  await gym.end();
});

/** What one set comes to, by whoever works it out. */
type Outcome = "left out" | { readonly exercise: string; readonly numbers: readonly unknown[] };
type Outcomes = Readonly<Record<string, Outcome>>;

interface Act {
  readonly phone: number;
  readonly what: "say" | "correct" | "take back" | "leave out" | "hurt" | "clock" | Weather;
  readonly slot: string;
  readonly set: number;
  readonly reps: number | "as asked";
}

const act: fc.Arbitrary<Act> = fc.record({
  phone: fc.nat(1),
  what: fc.oneof(
    { weight: 4, arbitrary: fc.constant("say" as const) },
    { weight: 2, arbitrary: fc.constantFrom("correct" as const, "take back" as const) },
    { weight: 1, arbitrary: fc.constantFrom("leave out" as const, "hurt" as const, "clock" as const) },
    { weight: 2, arbitrary: fc.constantFrom<Weather>("open", "answers lost", "closed") },
  ),
  slot: fc.constantFrom(...SLOTS),
  set: fc.nat(SETS - 1),
  reps: fc.oneof(fc.nat(20), fc.constant("as asked" as const)),
});

/** A phone without its page: what it keeps, and its clock. */
class Pocket {
  readonly #kept: Kept;
  readonly #session: string;
  readonly #bundle: Bundle;
  #now = NOON;

  private constructor(kept: Kept, session: string) {
    this.#kept = kept;
    this.#session = session;
    this.#bundle = { ...bundle, sessions: [{ ...bundle.sessions[0]!, id: session }] };
  }

  static async open(session: string, phone: number, after: number): Promise<Pocket> {
    const kept = await openKept(`${session} ${phone}`);
    await keepLinked(kept, { id: makeId(NOON), token, person: PERSON });
    await keepTheirs(kept, [], after);
    return new Pocket(kept, session);
  }

  async view() {
    const { events } = await readAll(this.#kept);
    const own = events.filter(({ session }) => session === this.#session).map(({ event }) => event);
    return viewOf(this.#bundle.sessions[0]!, this.#bundle, own);
  }

  async does({ what, slot, set, reps }: Act): Promise<void> {
    this.#now += 60_000;
    const of = { plan: this.#bundle.plan, session: this.#session, slot, set };
    const said = (await this.view()).sets.get(`${slot}/${set}`);
    const replaces = said === undefined ? {} : { replaces: said.event.id };
    const data = { exercise: slot, reps, load: "as asked", reserve: "not said" } as const;
    const say = (one: Said, already?: (events: readonly StaveEvent[]) => boolean) =>
      record(this.#kept, this.#session, { said: [one], ...(already && { already }) }, this.#now);
    switch (what) {
      case "say":
        return say({ kind: "set-done", of, data }, (events) => isSaid(events, of));
      case "leave out":
        return say({ kind: "set-left-out", of, data: {} }, (events) => isSaid(events, of));
      case "hurt":
        return say({ kind: "hurt", of, data: { where: "knee", howMuch: 3 } });
      case "correct":
        return said && say({ kind: "set-done", of, data, ...replaces });
      case "take back":
        return said && say({ kind: "struck", of, data: {}, ...replaces });
      case "clock":
        this.#now -= 3_600_000;
        return;
      default:
        return this.sync(what);
    }
  }

  async sync(weather: Weather): Promise<void> {
    gym.way.weather = weather;
    // Time passes on the server too; it takes only so much from one phone in a minute.
    gym.now += 60_000;
    const sent = await emptyOutbox(this.#kept, token, async () => {});
    if (sent === "done") await fetchTheirs(this.#kept, token, (await readAll(this.#kept)).after);
  }

  /** @returns what the phone shows */
  async outcomes(): Promise<Outcomes> {
    const { sets } = await this.view();
    return Object.fromEntries(
      [...sets].map(([place, { done }]) => {
        if (done === undefined) return [place, "left out" as const];
        const { both, left, right, load, reserve } = entryOf(done);
        return [place, { exercise: done.exercise, numbers: [both, left, right, load, reserve] }];
      }),
    );
  }

  close(): void {
    this.#kept.close();
  }
}

/** @returns what the server makes of its events */
function byServer(events: readonly StaveEvent[]): Outcomes {
  const flat = ({ reps = {}, load, reserve }: SetRecord) => {
    const { both, left, right } = reps as { both?: number; left?: number; right?: number };
    return [both, left, right, load, reserve];
  };
  return Object.fromEntries(
    foldRecord(events).sessions.flatMap(({ slots }) =>
      slots.flatMap(({ slot, sets, leftOut }) => [
        ...sets.map((one) => [`${slot}/${one.set}`, { exercise: one.exercise, numbers: flat(one) }] as const),
        ...leftOut.map((set) => [`${slot}/${set}`, "left out"] as const),
      ]),
    ),
  );
}

/** The same worked out the slow and obvious way, apart from the program: the contract, docs/decisions/0005. */
function plainly(events: readonly StaveEvent[]): Outcomes {
  const inOrder = [...events].sort((a, b) =>
    a.n !== b.n ? a.n - b.n : a.device !== b.device ? (a.device < b.device ? -1 : 1) : a.id < b.id ? -1 : 1,
  );
  const root = (event: StaveEvent): string => {
    const before = inOrder.find(({ id }) => id === event.replaces);
    return before === undefined ? (event.replaces ?? event.id) : root(before);
  };
  const outcomes: Record<string, Outcome> = {};
  const last = inOrder.filter(
    (event) =>
      !inOrder.some(({ replaces }) => replaces === event.id) &&
      !inOrder.some(
        (other) =>
          root(other) === root(event) &&
          !inOrder.some(({ replaces }) => replaces === other.id) &&
          inOrder.indexOf(other) > inOrder.indexOf(event),
      ),
  );
  for (const { kind, of, data } of last) {
    const place = `${of?.slot}/${of?.set}`;
    if (kind === "set-left-out") outcomes[place] = "left out";
    if (kind === "set-done") {
      const { exercise, reps } = data as unknown as EventData["set-done"];
      const both = typeof reps === "number" ? reps : undefined;
      outcomes[place] = { exercise, numbers: [both, undefined, undefined, undefined, undefined] };
    }
  }
  return outcomes;
}

test(`${HISTORIES} random histories: two phones, the server and a plain re-fold agree`, async () => {
  let told = 0;
  await fc.assert(
    fc.asyncProperty(fc.array(act, { minLength: 5, maxLength: 25 }), async (acts) => {
      const session = `history/${makeId(NOON)}`;
      const after = await gym.position();
      const phones = [await Pocket.open(session, 0, after), await Pocket.open(session, 1, after)];
      for (const one of acts) await phones[one.phone]!.does(one);
      for (const phone of [...phones, ...phones]) await phone.sync("open");

      const stored = (await gym.stored()).filter(({ of }) => of?.session === session);
      expect(new Set(stored.map(({ id }) => id)).size).toBe(stored.length);
      const plain = plainly(stored);
      expect(byServer(stored)).toEqual(plain);
      for (const phone of phones) expect(await phone.outcomes()).toEqual(plain);
      told += Object.keys(plain).length;
      for (const phone of phones) phone.close();
    }),
    { numRuns: HISTORIES },
  );
  expect(told).toBeGreaterThan(HISTORIES);
}, 300_000);

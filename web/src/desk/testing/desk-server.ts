import { cpSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { API_ROOT, type PersonOutput } from "@stave/core/api";
import type { PlanSlot, StaveEvent } from "@stave/core/model";
import { LOCAL_PRACTICE } from "../../../../server/src/local-practice.ts";
import { serveApi } from "../../../../server/src/routes/index.ts";
import { fill } from "../../../../server/src/routes/testing/served.ts";
import { openStore, type Store } from "../../../../server/src/store/index.ts";

/** Monday of the third week of a programme that began on 11 January 2027, early in the morning. */
const NOW = Date.UTC(2027, 0, 25, 6);
const DAY_MS = 86_400_000;

type Running = Awaited<ReturnType<typeof serveApi>>;

/** The real server on a store of its own, with some of the demo's people. It can be stopped and started again. */
export class DeskServer {
  readonly #folder: string;
  readonly #store: Store;
  #running: Running | undefined;
  #n = 0;
  port = 0;

  private constructor(store: Store, folder: string) {
    this.#store = store;
    this.#folder = folder;
  }

  /** @param folder with a store that was prepared; without it the store is empty */
  static async start(folder?: string): Promise<DeskServer> {
    const own = mkdtempSync(join(tmpdir(), "stave-desk-"));
    if (folder !== undefined) cpSync(folder, own, { recursive: true });
    const server = new DeskServer(await openStore(join(own, "stave.db")), own);
    await server.up();
    return server;
  }

  /**
   * A folder with a store in which some of the demo's people have trained. Their plans take a while to be made, so they
   * are made once and each test starts from a copy.
   */
  static async prepare(people: readonly string[], record: (server: DeskServer) => Promise<void>): Promise<string> {
    const server = await DeskServer.start();
    await fill(server.#store, people);
    await record(server);
    await server.get("morning");
    await server.down();
    await server.#store.close();
    return server.#folder;
  }

  get origin(): string {
    return `http://127.0.0.1:${this.port}`;
  }

  /** Answers again, at the same address as before. */
  async up(): Promise<void> {
    this.#running = await serveApi({
      store: this.#store,
      practice: LOCAL_PRACTICE,
      host: "127.0.0.1",
      port: this.port,
      pages: "server/dist/pages",
      clock: () => NOW,
      today: () => new Date(NOW).toISOString().slice(0, 10),
      onFault: (line) => console.error(line),
    });
    this.port = this.#running.port;
  }

  /** Answers nobody. */
  async down(): Promise<void> {
    await this.#running?.stop();
    this.#running = undefined;
  }

  /** Asks as the coach's own page does. */
  async get<T>(place: string): Promise<T> {
    return (await this.#asOwner(place, {})) as T;
  }

  async post<T>(place: string, body: object): Promise<T> {
    const headers = { "content-type": "application/json" };
    return (await this.#asOwner(place, { method: "POST", headers, body: JSON.stringify(body) })) as T;
  }

  async #asOwner(place: string, how: RequestInit): Promise<unknown> {
    const page = await fetch(`${this.origin}/`, { headers: { accept: "text/html" } });
    const cookie = page.headers.get("set-cookie")!.split(";")[0]!;
    const headers = { ...how.headers, cookie, origin: this.origin };
    const answer = await fetch(`${this.origin}${API_ROOT}/${place}`, { ...how, headers });
    if (!answer.ok) throw new Error(`${place}: ${answer.status} ${await answer.text()}`);
    return await answer.json();
  }

  /**
   * Records every session of the first weeks: each set with so many repetitions over the top of its range, with the
   * load that was asked.
   */
  async train(person: string, weeks: number, over: number): Promise<void> {
    const { plan } = await this.get<PersonOutput>(`people/${person}`);
    const phase = plan.phases[0]!;
    const events = phase.weeks.slice(0, weeks).flatMap(({ week, sessions }, weekAt) =>
      sessions.flatMap((session, sessionAt) => {
        const at = Date.UTC(2027, 0, 11, 17) + (7 * weekAt + 2 * sessionAt) * DAY_MS;
        const of = { plan: plan.id, session: `${phase.key}/${week}/${session.key}` };
        const slots = session.blocks.flatMap((block) => block.slots);
        return slots.flatMap((slot) =>
          slot.dose.sets.map((_, set) =>
            this.#event(person, at, "set-done", { ...of, slot: slot.key, set }, setOf(slot, set, over)),
          ),
        );
      }),
    );
    await this.#store.appendEvents(LOCAL_PRACTICE, person, events);
  }

  /** Records pain in the knee at the first set of the first squat, on the day before today. */
  async hurtInSquat(person: string, howMuch: number): Promise<void> {
    const { plan } = await this.get<PersonOutput>(`people/${person}`);
    const phase = plan.phases[0]!;
    const { week, sessions } = phase.weeks[1]!;
    const [session] = sessions;
    const slot = session!.blocks[0]!.slots[0]!.key;
    const of = { plan: plan.id, session: `${phase.key}/${week}/${session!.key}`, slot, set: 0 };
    const event = this.#event(person, NOW - DAY_MS, "hurt", of, { where: "knee", howMuch });
    await this.#store.appendEvents(LOCAL_PRACTICE, person, [event]);
  }

  #event(person: string, at: number, kind: string, of: NonNullable<StaveEvent["of"]>, data: object): StaveEvent {
    const n = ++this.#n;
    return { v: 1, id: `desk-test-${n}`, person, device: "test-phone", n, at, kind, of, data } as StaveEvent;
  }

  async end(): Promise<void> {
    await this.down();
    await this.#store.close();
    rmSync(this.#folder, { recursive: true, force: true });
  }
}

function setOf({ exercise, dose, load, find }: PlanSlot, set: number, over: number): object {
  const { amount } = dose.sets[set]!;
  const lifted = load ?? find?.from ?? "none";
  const common = { exercise, load: lifted, reserve: dose.sets[set]!.reserve?.from ?? 2 };
  if (amount.kind === "reps") return { ...common, reps: amount.span.to + over };
  return amount.kind === "hold" ? { ...common, holdS: amount.span.to } : common;
}

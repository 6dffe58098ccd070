import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { API_ROOT, type DecisionInput, type PersonOutput } from "@stave/core/api";
import { day } from "@stave/core/day";
import { type Bundle, readPlaces, readProgramme, readRoster, type StaveEvent } from "@stave/core/model";
import { sha256 } from "../../../../server/src/made-by.ts";
import { fillPractice } from "../../../../server/src/practice/index.ts";
import { newLink, type Running, serveApi } from "../../../../server/src/routes/index.ts";
import { openStore, type Store } from "../../../../server/src/store/index.ts";
import { makeToken } from "../kept/index.ts";
import { Way } from "./way.ts";

const HERE = new URL(".", import.meta.url);
const PLACES = "examples/ropewalk/places.yaml";
const PRACTICE = "local";
export const PERSON = "ana";

/** Noon of a day with a session: Monday of the third week. */
export const NOON = Date.UTC(2027, 0, 25, 12);
const START = "2027-01-11";

/** A practice with one person, its server on a real port and its store on the disk, and the way to it. */
export class Gym {
  readonly way = new Way(() => this.#running!.port);
  /** What the server's clock shows. */
  now = NOON;
  readonly faults: string[] = [];
  /** Folder of the built pages. */
  pages = "server/dist/pages";
  readonly #folder = mkdtempSync(join(tmpdir(), "stave-floor-"));
  #store: Store | undefined;
  #running: Running | undefined;

  static async open(): Promise<Gym> {
    const gym = new Gym();
    await gym.openServer();
    await gym.#fill();
    return gym;
  }

  async #fill(): Promise<void> {
    const [people, programme] = ["ana.yaml", "long-session.yaml"].map((name) =>
      readFileSync(new URL(name, HERE), "utf8"),
    ) as [string, string];
    const placesText = readFileSync(PLACES, "utf8");
    const places = readPlaces(placesText, PLACES);
    const roster = readRoster(people, "ana.yaml", places.ok ? places.value.value : []);
    const read = readProgramme(programme, "long-session.yaml");
    if (!(places.ok && roster.ok && read.ok)) throw new Error("the files of the tests can be read");
    await fillPractice(this.#store!, PRACTICE, {
      programmes: new Map([[sha256(programme), programme]]),
      places: placesText,
      people,
      training: roster.value.value.map((person) => ({ person, programme: sha256(programme) })),
      on: day(START),
      keepStarts: false,
      coach: "Imke Farrowdale",
      call: "Imke Farrowdale on 01632 960 123",
    });
  }

  /** Opens the server and the way to it, on the port they had before. */
  async openServer(): Promise<void> {
    this.#store = await openStore(join(this.#folder, "stave.db"));
    this.#running = await serveApi({
      store: this.#store,
      practice: PRACTICE,
      host: "127.0.0.1",
      port: 0,
      pages: this.pages,
      clock: () => this.now,
      today: () => new Date(this.now).toISOString().slice(0, 10),
      onFault: (line) => this.faults.push(line),
    });
    await this.way.start();
  }

  /** From now on nothing answers at that port. */
  async closeServer(): Promise<void> {
    await this.way.stop();
    await this.#running!.stop();
    await this.#store!.close();
  }

  /** @returns path of a new link for the phone */
  async link(): Promise<string> {
    return (await newLink(this.#store!, PRACTICE, PERSON, this.now)).path;
  }

  /** @returns what devices sent, as it stands in the store */
  async stored(): Promise<readonly StaveEvent[]> {
    return (await this.#store!.eventsOf(PRACTICE, PERSON)).map(({ event }) => event);
  }

  /** @returns the token of a phone that was linked, without its page */
  async token(): Promise<string> {
    const token = makeToken();
    const response = await this.post("/links/exchange", { link: (await this.link()).slice(5), token }, {});
    if (!response.ok) throw new Error(await response.text());
    return token;
  }

  /** @returns up to where the person's record was received */
  async position(): Promise<number> {
    return (await this.#store!.eventsOf(PRACTICE, PERSON)).at(-1)?.position ?? 0;
  }

  /** @returns the bundle that a phone would get now */
  async bundle(token: string): Promise<Bundle> {
    const { port } = this.#running!;
    const headers = { authorization: `Bearer ${token}` };
    return (await (await fetch(`http://127.0.0.1:${port}${API_ROOT}/bundle`, { headers })).json()) as Bundle;
  }

  /** The coach's word, by the coach's own page. */
  async decide(word: DecisionInput): Promise<void> {
    const { port } = this.#running!;
    const origin = `http://127.0.0.1:${port}`;
    const response = await fetch(`${origin}${API_ROOT}/decisions`, {
      method: "POST",
      headers: { "content-type": "application/json", origin, cookie: await this.#cookie(origin) },
      body: JSON.stringify(word),
    });
    if (!response.ok) throw new Error(await response.text());
  }

  /** @returns the person as the coach's page shows them */
  async page(): Promise<PersonOutput> {
    const origin = `http://127.0.0.1:${this.#running!.port}`;
    const response = await fetch(`${origin}${API_ROOT}/people/${PERSON}`, {
      headers: { cookie: await this.#cookie(origin) },
    });
    if (!response.ok) throw new Error(await response.text());
    return (await response.json()) as PersonOutput;
  }

  async #cookie(origin: string): Promise<string> {
    const { headers } = await fetch(`${origin}/`, { headers: { accept: "text/html" } });
    return headers.getSetCookie()[0]!.split(";")[0]!;
  }

  /** Asks the server as a phone does, past the way. */
  async post(path: string, body: unknown, headers: Readonly<Record<string, string>>): Promise<Response> {
    const { port } = this.#running!;
    return await fetch(`http://127.0.0.1:${port}${API_ROOT}${path}`, {
      method: "POST",
      headers: { "content-type": "application/json", ...headers },
      body: JSON.stringify(body),
    });
  }

  async end(): Promise<void> {
    await this.closeServer();
    rmSync(this.#folder, { recursive: true, force: true });
  }
}

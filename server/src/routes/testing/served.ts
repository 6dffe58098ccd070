import { readFileSync } from "node:fs";
import { API_ROOT, ROUTES } from "@stave/core/api";
import { day } from "@stave/core/day";
import { readPlaces, readRoster } from "@stave/core/model";
import { Ajv2020 } from "ajv/dist/2020.js";
import { expect } from "vitest";
import { LOCAL_PRACTICE } from "../../local-practice.ts";
import { sha256 } from "../../made-by.ts";
import { fillPractice } from "../../practice/index.ts";
import { newToken } from "../../safeguard/index.ts";
import type { Store } from "../../store/index.ts";
import { newLink, serveApi } from "../index.ts";
import { type Got, type Sent, send } from "./send.ts";

export const START = "2027-01-11";
/** Wednesday of the third week, at noon. */
export const NOON = Date.UTC(2027, 0, 27, 12);
const ROOM = "examples/ropewalk";

/** A practice with some of the demo's people, served from a real port. */
export interface Served {
  readonly port: number;
  readonly store: Store;
  readonly faults: readonly string[];
  /** What the server's clock shows. */
  readonly time: { now: number };
  /** Sends as given, and holds what comes back against the published description of the API. */
  ask(path: string, sent?: Sent): Promise<Got>;
  /** The headers of the coach's own page. */
  owner(): Promise<Record<string, string>>;
  /** The headers of a phone of that person. */
  phone(person: string): Promise<Record<string, string>>;
  /** Stops serving; the store stays open. */
  leave(): Promise<void>;
  stop(): Promise<void>;
}

export async function fill(store: Store, people: readonly string[], practice = LOCAL_PRACTICE): Promise<void> {
  const [peopleText, placesText, programme] = ["people", "places", "harbour-steps"].map((name) =>
    readFileSync(`${ROOM}/${name}.yaml`, "utf8"),
  ) as [string, string, string];
  const places = readPlaces(placesText, "places.yaml");
  const roster = readRoster(peopleText, "people.yaml", places.ok ? places.value.value : []);
  if (!roster.ok) throw new Error("the demo's files are read by their own tests");
  await fillPractice(store, practice, {
    programmes: new Map([[sha256(programme), programme]]),
    places: placesText,
    people: peopleText,
    training: roster.value.value
      .filter(({ id }) => people.includes(id))
      .map((person) => ({ person, programme: sha256(programme) })),
    on: day(START),
    keepStarts: false,
    coach: "Imke Farrowdale",
    call: "Imke Farrowdale, 01632 960 123",
  });
}

/** @param pages folder of built pages */
export async function served(store: Store, pages = "server/dist/pages"): Promise<Served> {
  const faults: string[] = [];
  const time = { now: NOON };
  const running = await serveApi({
    store,
    practice: LOCAL_PRACTICE,
    host: "127.0.0.1",
    port: 0,
    pages,
    clock: () => time.now,
    today: () => new Date(time.now).toISOString().slice(0, 10),
    onFault: (line) => faults.push(line),
  });
  const { port } = running;
  const origin = `http://127.0.0.1:${port}`;
  const described = (await send(port, `${API_ROOT}/openapi.json`)).json;
  const ajv = new Ajv2020({ strict: false, validateFormats: false });
  if (described.openapi === undefined) throw new Error(`no description: ${JSON.stringify(described)} ${faults.join()}`);
  ajv.addSchema(described, "api");

  const it: Served = {
    port,
    store,
    faults,
    time,
    async ask(path, sent) {
      const got = await send(port, path, sent);
      const { pathname } = new URL(path, origin);
      const method = (sent?.method ?? (sent?.body === undefined ? "GET" : "POST")).toLowerCase();
      const route = Object.values(ROUTES).find(
        (one) =>
          one.method.toLowerCase() === method &&
          new RegExp(`^${API_ROOT}${one.path.replace(/:\w+/g, "[^/]+")}$`).test(pathname),
      );
      const key = got.status >= 500 ? "5XX" : got.status >= 400 ? "4XX" : String(got.status);
      const type = (got.headers["content-type"] ?? "").replace(/;.*/, "");
      if (key === "4XX" || key === "5XX") {
        expect(type).toBe("application/problem+json");
        expect(got.json.status).toBe(got.status);
      }
      if (route !== undefined && got.status !== 304 && method !== "head") {
        const template = (API_ROOT + route.path.replace(/:(\w+)/g, "{$1}")).replaceAll("~", "~0").replaceAll("/", "~1");
        const pointer = `api#/paths/${template}/${method}/responses/${key}/content/${type.replace("/", "~1")}/schema`;
        const fits = ajv.getSchema(pointer) ?? ajv.compile({ $ref: pointer });
        expect(fits(got.json), `${method} ${path}: ${JSON.stringify(fits.errors)}`).toBe(true);
      }
      return got;
    },
    async owner() {
      const { headers } = await send(port, "/", { headers: { accept: "text/html" } });
      return { cookie: headers["set-cookie"]![0]!.split(";")[0]!, origin };
    },
    async phone(person) {
      const { path } = await newLink(store, LOCAL_PRACTICE, person, time.now);
      const token = newToken();
      const { status } = await it.ask(`${API_ROOT}/links/exchange`, { body: { link: path.slice(5), token } });
      expect(status).toBe(200);
      return { authorization: `Bearer ${token}` };
    },
    leave: () => running.stop(),
    async stop() {
      await running.stop();
      await store.close();
    },
  };
  return it;
}

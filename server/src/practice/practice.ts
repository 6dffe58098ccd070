import type {
  DecisionInput,
  DecisionOutput,
  DecisionsOutput,
  Morning,
  PeopleOutput,
  PersonOutput,
  RuleInput,
} from "@stave/core/api";
import type { Day } from "@stave/core/day";
import { CATALOGUE, readOwnExercises } from "@stave/core/exercises";
import { FitMemory } from "@stave/core/fit";
import {
  type Bundle,
  type Catalogue,
  canonicalJson,
  latestRules,
  nameOnRoster,
  type Place,
  type Plan,
  type Programme,
  readPlaces,
  readProgramme,
  rulesInForce,
  type StandingRule,
  type StaveEvent,
  writtenAlike,
} from "@stave/core/model";
import {
  bundleFor,
  decide,
  madeFor,
  morningFor,
  nextRevision,
  type PlannedPerson,
  personLine,
  personPage,
  type Situation,
  wordsByRule,
} from "@stave/core/revise";
import { catalogueHash, ENGINE, sha256 } from "../made-by.ts";
import type { Ack, Store, StoredDocument } from "../store/index.ts";
import type { Changes } from "./changes.ts";
import { daysIn } from "./day-in.ts";
import { InTurn } from "./in-turn.ts";
import { OWN_EXERCISES, type PersonFile, readPersonFile } from "./person-file.ts";

/** The coach's own device, by which decisions are recorded; nobody else's may go by this name. */
export const DESK_DEVICE = "stave-desk";

/** Phases of people that are remembered between two plans: one decision follows another. About 2 MB each. */
const REMEMBERED = 16;

export type Decided =
  | { readonly ok: true; readonly output: DecisionOutput }
  | { readonly ok: false; readonly why: "stale" | "unknown" | "taken" | "no such person" };

/** What a person's files say. */
export type Facts = Omit<Situation, "events" | "today" | "revisionOf">;

/** What is known of a person without asking the database again, and what it was made from. */
interface Known {
  readonly files: string;
  readonly file: PersonFile;
  readonly situation: Facts;
  readonly events: readonly StaveEvent[];
  readonly position: number;
  readonly today?: Day;
  readonly planned?: PlannedPerson;
}

/** One practice's people: their files and records in the store, and what core makes of them. */
export class Practice {
  readonly #store: Store;
  readonly #id: string;
  readonly #changes: Changes;
  readonly #inTurn = new InTurn();
  readonly #known = new Map<string, Known>();
  readonly #programmes = new Map<string, Programme>();
  readonly #memory = new FitMemory(REMEMBERED);
  readonly #revisions = new Map<string, Map<string, Plan | undefined>>();
  #places: { readonly hashes: string; readonly places: readonly Place[] } = { hashes: "", places: [] };
  #own: { readonly hash: string | undefined; readonly catalogue: Catalogue } = {
    hash: undefined,
    catalogue: CATALOGUE,
  };
  #rules: readonly StandingRule[] | undefined;
  #morning: { readonly key: readonly unknown[]; readonly morning: Morning } | undefined;

  constructor(store: Store, id: string, changes: Changes) {
    this.#store = store;
    this.#id = id;
    this.#changes = changes;
  }

  /** Adds what a person's device sends. When it returns, what was acknowledged is on the disk. */
  async append(person: string, events: readonly StaveEvent[]): Promise<readonly Ack[]> {
    const acks = await this.#store.appendEvents(this.#id, person, events);
    if (acks.includes("stored")) this.#changes.tell(this.#id, person);
    return acks;
  }

  /** @returns what may be chosen from: the catalogue with what the practice's own file adds, changes and hides */
  async catalogue(): Promise<Catalogue> {
    const document = await this.#store.getDocument(this.#id, "exercises", OWN_EXERCISES);
    if (document?.hash !== this.#own.hash) {
      const read = document && readOwnExercises(document.text, OWN_EXERCISES);
      if (read?.ok === false)
        throw new Error("The own exercises in the database cannot be read with this catalogue; import them again");
      this.#own = { hash: document?.hash, catalogue: read?.value ?? CATALOGUE };
    }
    return this.#own.catalogue;
  }

  /** @returns what the files of a person say; undefined for nobody */
  async facts(person: string): Promise<Facts | undefined> {
    const document = await this.#store.getDocument(this.#id, "person", person);
    return document && (await this.#upToDate(document)).situation;
  }

  /** @returns the person with the plan that stands, made anew if facts or record ask for it; undefined for nobody */
  async planned(person: string, now: number): Promise<PlannedPerson | undefined> {
    const document = await this.#store.getDocument(this.#id, "person", person);
    return document && (await this.#inTurn.run(person, () => this.#plannedNow(document, now)));
  }

  /** @returns everybody with their plans, by id */
  async everybody(now: number): Promise<readonly PlannedPerson[]> {
    const documents = await this.#store.listDocuments(this.#id, "person");
    const all: PlannedPerson[] = [];
    for (const document of documents) {
      all.push(await this.#inTurn.run(document.id, () => this.#plannedNow(document, now)));
    }
    return all;
  }

  async bundle(person: string, now: number): Promise<Bundle | undefined> {
    const planned = await this.planned(person, now);
    return planned && bundleFor(planned, this.#known.get(person)!.file.call);
  }

  async morning(day: Day, now: number): Promise<Morning> {
    const people = await this.everybody(now);
    const rules = await this.rules();
    const key = [day, rules, ...people];
    if (this.#morning === undefined || !isSame(this.#morning.key, key))
      this.#morning = { key, morning: morningFor(people, day, rules) };
    return this.#morning.morning;
  }

  /** @returns who decides for a person */
  async coachOf(person: string): Promise<string> {
    await this.facts(person);
    return this.#known.get(person)?.file.coach ?? "";
  }

  async people(now: number): Promise<PeopleOutput> {
    const people = await this.everybody(now);
    const alike = writtenAlike(people.map(({ person }) => person));
    return { people: people.map((each) => ({ ...personLine(each), name: nameOnRoster(each.person, alike) })) };
  }

  async page(person: string, now: number): Promise<PersonOutput | undefined> {
    const planned = await this.planned(person, now);
    return planned && personPage(planned, await this.rules());
  }

  /** @returns the standing rules in force */
  async rules(): Promise<readonly StandingRule[]> {
    this.#rules ??= rulesInForce(await this.#store.listRules(this.#id));
    return this.#rules;
  }

  /** @returns the last version of each rule, also of those that are over */
  async latestRules(): Promise<readonly StandingRule[]> {
    return latestRules(await this.#store.listRules(this.#id));
  }

  /**
   * Sets the next version of a rule; it speaks at once for everybody for whom something waits that it may take.
   *
   * @returns false when it is not the next version
   */
  async setRule(input: RuleInput, now: number): Promise<boolean> {
    const versions = (await this.#store.listRules(this.#id)).filter(({ id }) => id === input.id);
    if (input.version !== versions.length + 1) return false;
    await this.everybody(now);
    const coaches = new Set([...this.#known.values()].map(({ file }) => file.coach));
    const by = [...coaches].sort().join(", ") || "the coach";
    if ((await this.#store.putRule(this.#id, { ...input, by, at: now })) === "conflict") return false;
    this.#rules = undefined;
    for (const [person, { planned: _, ...known }] of [...this.#known]) this.#known.set(person, known);
    for (const { person } of await this.everybody(now)) this.#changes.tell(this.#id, person.id);
    return true;
  }

  /** The coach's word: recorded first, then the plan that follows from it. Asking again changes nothing. */
  async decide(input: DecisionInput, now: number): Promise<Decided> {
    const { person } = input;
    const document = await this.#store.getDocument(this.#id, "person", person);
    if (document === undefined) return { ok: false, why: "no such person" };
    const decided = await this.#inTurn.run(person, async (): Promise<Decided> => {
      const before = await this.#plannedNow(document, now);
      const by = this.#known.get(person)!.file.coach;
      const word = decide(before, input, { by, device: DESK_DEVICE, at: now });
      if (!word.ok) return word;
      const [ack] = await this.#store.appendEvents(this.#id, person, [word.event]);
      if (ack === "conflict") return { ok: false, why: "taken" };
      const { plan } = await this.#plannedNow(document, now);
      return { ok: true, output: { id: input.id, plan: plan.id } };
    });
    if (decided.ok) this.#changes.tell(this.#id, person);
    return decided;
  }

  /** The coach's word on many, one after another: one that cannot be taken stops no other. */
  async decideMany(inputs: readonly DecisionInput[], now: number): Promise<DecisionsOutput["answers"]> {
    const answers: DecisionsOutput["answers"][number][] = [];
    for (const input of inputs) {
      const decided = await this.decide(input, now);
      answers.push(decided.ok ? decided.output : { id: input.id, why: decided.why });
    }
    return answers;
  }

  async #plannedNow(document: StoredDocument, now: number): Promise<PlannedPerson> {
    const known = await this.#upToDate(document);
    const today = known.situation.dayOf(now);
    if (known.planned !== undefined && known.today === today) return known.planned;
    const revisionOf = await this.#revisionsOf(document.id, known.events);
    const more = { events: known.events, today, revisionOf, memory: this.#memory };
    const situation: Situation = { ...known.situation, ...more };
    const planned = { ...situation, plan: await this.#planFor(situation) };
    const words = wordsByRule(planned, await this.rules(), now);
    if (words.length > 0) {
      await this.#store.appendEvents(this.#id, document.id, words);
      return await this.#plannedNow(document, now);
    }
    this.#known.set(document.id, { ...known, today, planned });
    return planned;
  }

  /** The revisions that were on the screens of what was recorded. One that is not there is not looked for again. */
  async #revisionsOf(person: string, events: readonly StaveEvent[]): Promise<Situation["revisionOf"]> {
    const known = this.#revisions.get(person) ?? new Map<string, Plan | undefined>();
    this.#revisions.set(person, known);
    for (const id of new Set(events.flatMap(({ of }) => of?.plan ?? []))) {
      if (known.has(id)) continue;
      known.set(id, (await this.#store.revision(this.#id, person, id))?.plan);
    }
    return (id) => known.get(id);
  }

  /** The plan that stands, or the next revision if what it would be made from has changed. */
  async #planFor(situation: Situation): Promise<Plan> {
    const { id } = situation.person;
    const latest = await this.#store.latestRevision(this.#id, id);
    if (latest !== undefined && canonicalJson(latest.plan.made) === canonicalJson(madeFor(situation)))
      return latest.plan;
    const plan = nextRevision(situation);
    if ((await this.#store.putRevision(this.#id, id, { id: plan.id, plan })) === "stored") return plan;
    // A stored plan is the truth, whatever this version would make of the same.
    const stored = (await this.#store.revision(this.#id, id, plan.id))!;
    await this.#store.putRevision(this.#id, id, stored);
    return stored.plan;
  }

  /** What is known of a person, after looking whether their files changed and reading on in their record. */
  async #upToDate({ id, text, hash }: StoredDocument): Promise<Known> {
    const places = await this.#readPlaces();
    await this.catalogue();
    const files = `${hash}/${this.#places.hashes}/${this.#own.hash ?? ""}`;
    const old = this.#known.get(id);
    const same = old?.files === files;
    const file = same ? old.file : readPersonFile(text, places);
    const news = await this.#store.eventsOf(this.#id, id, old?.position);
    if (same && news.length === 0) return old;
    const known: Known = {
      files,
      file,
      situation: same ? old.situation : await this.#situationOf(file, places),
      events: [...(old?.events ?? []), ...news.map(({ event }) => event)],
      position: news.at(-1)?.position ?? old?.position ?? 0,
    };
    this.#known.set(id, known);
    return known;
  }

  async #situationOf({ person, programme, on }: PersonFile, places: readonly Place[]): Promise<Facts> {
    const place = places.find(({ id }) => id === person.place);
    if (place === undefined) throw new Error(`The database lacks the place ${person.place} of a person`);
    return {
      programme: await this.#programme(programme),
      programmeHash: programme,
      person,
      place,
      others: places,
      catalogue: await this.catalogue(),
      on,
      dayOf: daysIn(place.zone),
      engine: ENGINE,
      catalogueHash: catalogueHash(await this.catalogue()),
      hash: sha256,
    };
  }

  async #programme(hash: string): Promise<Programme> {
    const known = this.#programmes.get(hash);
    if (known !== undefined) return known;
    const document = await this.#store.getDocument(this.#id, "programme", hash);
    const read = document && readProgramme(document.text, "programme");
    if (!read?.ok) throw new Error(`The database lacks the programme ${hash}, or it cannot be read`);
    this.#programmes.set(hash, read.value.programme);
    return read.value.programme;
  }

  async #readPlaces(): Promise<readonly Place[]> {
    const documents = await this.#store.listDocuments(this.#id, "place");
    const hashes = documents.map(({ hash }) => hash).join("/");
    if (hashes !== this.#places.hashes) {
      const places = documents.flatMap(({ id, text }) => {
        const read = readPlaces(text, "place");
        if (!read.ok) throw new Error(`The place ${id} in the database cannot be read; restore it from a backup`);
        return read.value.value;
      });
      this.#places = { hashes, places };
    }
    return this.#places.places;
  }
}

function isSame(one: readonly unknown[], other: readonly unknown[]): boolean {
  return one.length === other.length && one.every((each, i) => each === other[i]);
}

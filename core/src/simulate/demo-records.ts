import type { Day } from "../day.ts";
import { slotsIn } from "../measures/index.ts";
import type { EventData, EventKind, EventOf, Plan, PlanSlot, SetDone, StaveEvent } from "../model/index.ts";
import { daysOfPhases, nextRevision, type SessionDay, type Situation, sessionDays } from "../revise/index.ts";
import { type Chance, chance } from "./chance.ts";
import type { DemoStory } from "./demo-stories.ts";

/** What chance is drawn for; each has its own. */
const DRAW = { came: 101, set: 102, id: 103, rated: 104 } as const;
/** How often these people come, how often they enter what they did, and how often they say what was left. Ours. */
const COMES = 0.88;
const ENTERS = 0.75;
const SAYS_RESERVE = 0.6;
const SAYS_EFFORT = 0.9;
/** How hard they call a session as a whole, 0 to 10. Ours. */
const EFFORT = { from: 4, to: 7.5 };
/** The device by which a coach decides. */
const COACH = "stave-desk";
const MINUTE_MS = 60_000;
const DAY_MS = 86_400_000;

export interface DemoRecords {
  readonly events: readonly StaveEvent[];
  /** The revisions that were on the screens, in their order. */
  readonly revisions: readonly Plan[];
}

/**
 * Seeded records of one made-up person from the first day of their plan up to the day before today, phase by phase, each
 * by the plan that stood then. The same arguments give the same records, and a later first day the same ones later.
 *
 * @param seed any whole number
 * @param situation facts; its `on` is the first day, its `today` the first day without a record
 * @param toInstant epoch milliseconds of a wall time where this person trains
 */
export function demoRecords(
  seed: number,
  situation: Omit<Situation, "events" | "revisionOf">,
  toInstant: (day: Day, minutes: number) => number,
  story: DemoStory,
): DemoRecords {
  const scribe = new Scribe(seed, situation.person.id, situation.on, situation.today, toInstant(situation.today, 0));
  const revisions: Plan[] = [];
  const come: { readonly plan: Plan; readonly day: SessionDay }[] = [];
  for (const { on, to } of daysOfPhases(situation)) {
    if (!(on < situation.today)) break;
    const isLast = to >= situation.today - 1;
    if (isLast) scribe.asksFor(story, toInstant(on, 0));
    const known = { ...situation, today: on, events: scribe.events, revisionOf: byId(revisions) };
    const plan = nextRevision(known);
    revisions.push(plan);
    const here = sessionDays({ ...known, plan })
      .filter(({ day }) => on <= day && day <= to && day < situation.today)
      .filter(({ day }) => chance(seed, day - situation.on, DRAW.came).happens(COMES))
      .map((day) => ({ plan, day }));
    come.push(...here);
    for (const [at, { day }] of here.entries()) {
      const later = isLast ? here.slice(at + 1).map((one) => one.day) : undefined;
      scribe.session(plan, day, toInstant(day.day, day.from), story, later);
      if (scribe.hasEnded) break;
    }
  }
  return { events: scribe.events, revisions };
}

function byId(revisions: readonly Plan[]): Situation["revisionOf"] {
  return (id) => revisions.find((plan) => plan.id === id);
}

/** Writes events one after another, as a phone does. */
class Scribe {
  readonly events: StaveEvent[] = [];
  /** Whether something happened after which nothing more was done. */
  hasEnded = false;
  readonly #seed: number;
  readonly #person: string;
  readonly #on: Day;
  /** The first moment without a record. */
  readonly #until: number;
  readonly #today: Day;
  readonly #ids: Chance;

  constructor(seed: number, person: string, on: Day, today: Day, until: number) {
    this.#seed = seed;
    this.#person = person;
    this.#on = on;
    this.#today = today;
    this.#until = until;
    this.#ids = chance(seed, ...[...person].map((letter) => letter.codePointAt(0)!), DRAW.id);
  }

  /** What the coach asked for in the phase that runs. */
  asksFor({ couldNot }: DemoStory, at: number): void {
    if (couldNot === undefined) return;
    const patch = { slot: couldNot.slot, change: "load", load: couldNot.asked } as const;
    this.#write("pinned", { patch, by: "Imke Farrowdale" }, undefined, at);
  }

  /** @param later the sessions that follow; undefined while there are many */
  session(
    plan: Plan,
    { occurrence, day }: SessionDay,
    at: number,
    story: DemoStory,
    later: readonly SessionDay[] | undefined,
  ): void {
    const of = { plan: plan.id, session: occurrence.id };
    const slots = slotsIn(occurrence.session);
    const { couldNot, hurts } = story;
    /** Whether the slot that hurts is in a session whose next morning is past. */
    const told = (one: SessionDay) =>
      slotsIn(one.occurrence.session).some(({ key }) => key === hurts?.slot) && one.day + 1 < this.#today;
    const isTold = later !== undefined && told({ occurrence, day } as SessionDay);
    const before = this.events.length;
    let clock = at;
    this.#write("session-started", {}, of, clock);
    for (const slot of slots) {
      const left = later?.filter((one) => slotsIn(one.occurrence.session).some(({ key }) => key === slot.key)).length;
      const over = left === undefined || left > 1 || occurrence.light ? undefined : story.passes[slot.key];
      for (const set of slot.dose.sets.keys()) {
        clock += 3 * MINUTE_MS;
        const draw = chance(this.#seed, day - this.#on, set, slots.indexOf(slot), DRAW.set);
        const done = setOf(slot, set, draw, over);
        const load = couldNot?.slot === slot.key && left === 0 ? { load: couldNot.done } : {};
        this.#write("set-done", { ...done, ...load }, { ...of, slot: slot.key, set }, clock);
      }
      if (couldNot?.slot === slot.key && left === 0)
        this.#write("noted", { about: "other", text: couldNot.note }, of, clock);
      if (hurts === undefined || hurts.slot !== slot.key || !isTold || later?.some(told)) continue;
      const { where, howMuch, ends } = hurts;
      const set = Math.min(hurts.set, slot.dose.sets.length - 1);
      const hurt = this.#write("hurt", { where, howMuch }, { ...of, slot: slot.key, set }, clock);
      if (hurts.nextMorning !== undefined && clock + DAY_MS < this.#until)
        this.#write("next-morning", { hurt, howMuch: hurts.nextMorning }, of, clock + DAY_MS);
      if (ends) {
        this.hasEnded = true;
        break;
      }
    }
    const felt = chance(this.#seed, day - this.#on, DRAW.rated);
    if (felt.happens(SAYS_EFFORT)) {
      const effort = Math.round(felt.even(2 * EFFORT.from, 2 * EFFORT.to)) / 2;
      this.#write("rated", { effort, minutes: occurrence.session.minutes.high }, of, clock);
    }
    this.#write("session-ended", { early: this.hasEnded }, of, clock + MINUTE_MS);
    if (story.twice === true && later?.length === 0) this.#again(before);
  }

  /** The same session from a second phone, which did not know of the first. */
  #again(from: number): void {
    const device = this.#id(this.events[from]!.at);
    const twins = this.events.slice(from).map((event) => ({ ...event, id: this.#id(event.at), device }));
    this.events.push(...twins);
  }

  #phone(at: number): string {
    return this.events.find(({ device }) => device !== COACH)?.device ?? this.#id(at);
  }

  /** @returns the id */
  #write<Kind extends EventKind>(kind: Kind, data: EventData[Kind], of: EventOf | undefined, at: number): string {
    const event: StaveEvent<Kind> = {
      v: 1,
      id: this.#id(at),
      person: this.#person,
      device: kind === "pinned" ? COACH : this.#phone(at),
      n: (this.events.at(-1)?.n ?? 0) + 1,
      at,
      kind,
      ...(of === undefined ? {} : { of }),
      data: data as StaveEvent<Kind>["data"],
    };
    this.events.push(event as StaveEvent);
    return event.id;
  }

  /** An id of the form of a UUID, version 7: the instant, then chance. */
  #id(at: number): string {
    const hex = (digits: number) =>
      Math.floor(this.#ids.even(0, 16 ** digits))
        .toString(16)
        .padStart(digits, "0");
    const time = at.toString(16).padStart(12, "0");
    return `${time.slice(0, 8)}-${time.slice(8)}-7${hex(3)}-8${hex(3)}-${hex(6)}${hex(6)}`;
  }
}

/** One set: as asked with nothing touched, or with what was entered. `over`: repetitions over the top of the range. */
function setOf(slot: PlanSlot, at: number, draw: Chance, over: number | undefined): SetDone {
  const { amount, eachSide, reserve } = slot.dose.sets[at]!;
  const bare: SetDone = { exercise: slot.exercise, load: "as asked", reserve: "not said" };
  const untouched = eachSide ? ({ left: "as asked", right: "as asked" } as const) : ("as asked" as const);
  const isLast = at === slot.dose.sets.length - 1;
  const passes = over !== undefined && isLast && amount.kind === "reps";
  const enters = draw.happens(ENTERS) || passes;
  if (amount.kind === "hold") return { ...bare, holdS: untouched };
  if (amount.kind !== "reps" || !enters) return { ...bare, reps: untouched };
  const { from, to } = amount.span;
  const count = passes ? to + over : Math.round(draw.even(from - 0.5, to + 0.49));
  const left = reserve === undefined ? 2 : Math.round(reserve.from + draw.even(-0.6, 0.6));
  return {
    ...bare,
    reps: eachSide ? { left: count, right: count } : count,
    ...(passes || !draw.happens(SAYS_RESERVE) ? {} : { reserve: Math.max(0, left) }),
  };
}

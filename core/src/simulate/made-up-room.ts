import { CATALOGUE } from "../exercises/index.ts";
import { foldRecord } from "../measures/index.ts";
import type { Person, Place, Plan, PlanSession, Programme } from "../model/index.ts";
import type { ProgressInput } from "../progress/index.ts";
import { PAIN_RULES } from "../screen/index.ts";
import { dayAt, doseOf, instantOf, MOVEMENT, SLOT, slotOf } from "./recorded.ts";
import { ASKED_ALWAYS } from "./start.ts";
import type { Moment } from "./ways.ts";
import type { World } from "./world.ts";

const YEARS = 365.25;
const AGE = { younger: 35, older: 68 };
/** Pins on the stack: enough for anybody. */
const PINS = 120;
const PHASE = "made-up";

function personOf({ older }: World): Person {
  const today = dayAt(instantOf(0));
  return {
    id: "somebody",
    name: "Somebody",
    born: dayAt(instantOf(-Math.round(YEARS * (older ? AGE.older : AGE.younger)))),
    status: "novice",
    units: "kg",
    place: "room",
    windows: [],
    minutes: 60,
    rungs: {},
    lifts: [],
    limits: [],
    cautions: [],
    cannot: [],
    likes: [],
    dislikes: [],
    pins: [],
    away: [],
    instead: [],
    screening: { outcome: "no reason found", on: today, until: dayAt(instantOf(10 * YEARS)), by: "nobody" },
  };
}

function placeOf({ stepKg }: World): Place {
  const pins = Array.from({ length: PINS }, (_, pin) => (pin + 1) * stepKg);
  return {
    id: "room",
    name: "Room",
    zone: "Etc/UTC",
    equipment: { "chest press machine": 1 },
    stacks: { "chest press machine": { unit: "kg", pins } },
  };
}

const PROGRAMME: Programme = {
  stave: 1,
  id: PHASE,
  title: "Made up",
  version: 1,
  goal: "general",
  status: "novice",
  units: "kg",
  phases: [
    {
      key: PHASE,
      title: "Made up",
      weeks: 1,
      sessions: [
        {
          key: "a",
          title: "A",
          minutes: 60,
          work: [
            {
              slot: SLOT,
              pattern: MOVEMENT.pattern,
              first: MOVEMENT.id,
              down: 0,
              up: 0,
              dose: doseOf(ASKED_ALWAYS),
              way: "reps then load",
            },
          ],
        },
      ],
    },
  ],
};

function planOf({ asked, dose }: Pick<Moment, "asked" | "dose">): Plan {
  const session: PlanSession = {
    key: "a",
    title: "A",
    warmup: [],
    blocks: [{ kind: "straight", slots: [slotOf(asked, dose)] }],
    conditioning: [],
    open: [],
    minutes: { low: 10, high: 20 },
  };
  return {
    id: "plan",
    person: "somebody",
    programme: PHASE,
    made: { engine: "", catalogue: "", state: "", decisions: "" },
    firmTo: { phase: PHASE },
    notes: [],
    phases: [
      {
        key: PHASE,
        title: "Made up",
        score: { must: 0, want: 0, bound: 0, proven: true },
        weeks: [{ week: 0, light: false, sessions: [session] }],
      },
    ],
  };
}

const NOTHING = foldRecord([]);
const rooms = new Map<string, Pick<ProgressInput, "person" | "place">>();

/**
 * Everything that a proposal is made from, for one made-up person who does one movement in a room with one machine: no
 * pain, no limit, nothing decided, nothing else recorded.
 */
export function situationOf(moment: Moment): ProgressInput {
  const { history, day, world } = moment;
  const room = rooms.get(world.id) ?? { person: personOf(world), place: placeOf(world) };
  rooms.set(world.id, room);
  return {
    ...room,
    plan: planOf(moment),
    programme: PROGRAMME,
    catalogue: CATALOGUE,
    record: NOTHING,
    // A log never changes, and what is asked of it is remembered: the record goes on, so it is told as it stands.
    log: [...history],
    today: dayAt(instantOf(day)),
    dayOf: dayAt,
    edges: PAIN_RULES[0]!,
    engine: "",
    hash: () => "",
  };
}

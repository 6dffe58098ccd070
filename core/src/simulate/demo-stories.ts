import type { SlotKey } from "../model/index.ts";
import type { Load } from "../units.ts";

/** What happens to one person of the demonstration. Everything that is not said here is an ordinary week. */
export interface DemoStory {
  /** Slots in whose last two sessions the last set passes the top of its range by this many repetitions. */
  readonly passes: Readonly<Record<SlotKey, number>>;
  /** Noted the last time that this slot was done and its next morning is known; `ends`: nothing was done after it. */
  readonly hurts?: {
    readonly slot: SlotKey;
    /** 0 = first. */
    readonly set: number;
    readonly where: string;
    readonly howMuch: number;
    /** How much it was said to hurt a day later. */
    readonly nextMorning?: number;
    readonly ends: boolean;
  };
  /** The last session was typed in twice, on two phones. */
  readonly twice?: boolean;
  /** The coach had asked for a load that could not be made the last time. */
  readonly couldNot?: { readonly slot: SlotKey; readonly asked: Load; readonly done: Load; readonly note: string };
  /** By another programme than the others', and for fewer weeks. */
  readonly programme?: string;
  readonly weeks?: number;
}

/** How long these people have trained when the demonstration begins, and by which programme. */
export const DEMO_WEEKS = 10;
export const DEMO_PROGRAMME = "harbour-long";
/** By this one the stories come out on whatever day of the week the demonstration is begun. */
export const DEMO_SEED = 19;

/** By the ids of the people of the demonstration. All of it is made up. */
export const DEMO_STORIES: Readonly<Record<string, DemoStory>> = {
  /** Ready for a heavier pin. */
  solve: { passes: { "build-row-a": 5, "build-pull-b": 5 } },
  /** On the road without a signal he once had two phones with him. */
  ilario: { passes: {}, twice: true },
  /** His next dumbbells and bells are far heavier. */
  esteban: { passes: { "build-hinge-b": 2, "build-squat-a": 2 } },
  /** Her knee is told and watched, and her limits leave nothing heavier. */
  priyamvada: {
    passes: { "build-hinge-b": 2 },
    hurts: { slot: "build-split-c", set: 1, where: "knee", howMuch: 4, nextMorning: 5, ends: false },
  },
  /** Dizzy after a set. */
  tobiah: { passes: {}, hurts: { slot: "build-row-a", set: 2, where: "dizzy", howMuch: 3, ends: true } },
  /** She stands up from a chair four times more than at the start. */
  dagny: { passes: {} },
  /** Somebody else had the smallest plates. */
  kofi: {
    programme: "slipway-strength",
    weeks: 4,
    passes: {},
    couldNot: {
      slot: "hinge-light",
      asked: { value: 102.5, unit: "kg" },
      done: { value: 100, unit: "kg" },
      note: "102.5 kg could not be loaded: the only 1.25 kg plates were in use. 100 kg done; 105 kg is the next that can be.",
    },
  },
};

/** What the coach wrote down on the day before, by the ids of people. All of it is made up. */
export const DEMO_NOTES: Readonly<Record<string, string>> = {
  tobiah:
    "Incident: dizzy after the third set. Sat down, drank, well after five minutes. Training waits for Dr Okparavere's word.",
  dagny: "30-second chair stand: 13 full stands, arms crossed, the same chair as at the start, when it was 9.",
};

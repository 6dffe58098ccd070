import type { SlotKey } from "../model/index.ts";

/** What happens to one person of the demonstration. Everything that is not said here is an ordinary week. */
export interface DemoStory {
  /** Slots in whose last two sessions the last set passes the top of its range by this many repetitions. */
  readonly passes: Readonly<Record<SlotKey, number>>;
  /** Noted in the last session, during this slot; where the session lacks it, during its first. */
  readonly hurts?: { readonly slot: SlotKey; readonly where: string; readonly howMuch: number };
  /** The third session was typed in twice, on two phones. */
  readonly twice?: boolean;
}

/** How long these people have trained when the demonstration begins, and by which programme. */
export const DEMO_WEEKS = 10;
export const DEMO_PROGRAMME = "harbour-long";

/** By the ids of the people of the demonstration. All of it is made up. */
export const DEMO_STORIES: Readonly<Record<string, DemoStory>> = {
  /** Ready for a heavier pin; once he had two phones with him. */
  solve: { passes: { "build-row-a": 5, "build-pull-b": 5 }, twice: true },
  /** Her dumbbells end at 12.5 kg, and the step from 10 is a quarter; her knee is told and watched. */
  priyamvada: {
    passes: { "build-hinge-b": 2, "build-press-b": 2 },
    hurts: { slot: "build-split-c", where: "knee", howMuch: 4 },
  },
  /** Dizzy after a set. */
  tobiah: { passes: {}, hurts: { slot: "build-row-a", where: "dizzy", howMuch: 3 } },
};

import type { Amount, Dose, HurtPlace, LoadMeaning, PlanSlot, RunEnd } from "@stave/core/model";
import { plural, printDate, printDuration, printIntervals, printLoad, printSpan } from "@stave/core/text";
import type { Load } from "@stave/core/units";
import { askedSpan, type Side } from "./session/index.ts";

/** Where a load is, in the words of whoever lifts it. */
const where: Readonly<Record<LoadMeaning, string>> = {
  total: "in all",
  "per hand": "in each hand",
  "one implement": "one weight",
  stack: "on the machine",
  "added to body": "added to your body",
  assist: "of help from the machine",
  band: "band",
  "body only": "your body only",
  height: "high",
  none: "no load",
};

const sides: Readonly<Record<Side, string>> = { both: "", left: "left", right: "right" };

/** @example asked({ kind: "hold", span: { from: 20, to: 30 } }) //=> "20–30 s" */
function asked(amount: Amount): string {
  const { from, to } = askedSpan(amount);
  const span = printSpan(from, to);
  switch (amount.kind) {
    case "reps":
      return span;
    case "contacts":
      return `${span} landings`;
    case "most":
      return to === 0 ? "as many as you can do well" : `${span} or more`;
    case "hold":
      return `hold ${span} s`;
    case "time":
      return from === to ? printDuration(to) : `${span} s`;
    case "metres":
      return `${span} m`;
  }
}

function sideOf({ side }: Pick<PlanSlot, "side">, eachSide: boolean): string {
  return side === undefined ? (eachSide ? " each side" : "") : `, ${side} side only`;
}

/** A dose of one or more like sets. @example dose(threeOfEight) //=> "3 × 8" */
function dose({ sets }: Dose, slot: Pick<PlanSlot, "side"> = {}): string {
  const [first] = sets;
  if (first === undefined) return "";
  const each = sideOf(slot, first.eachSide);
  const amounts = sets.map(({ amount }) => asked(amount));
  if (amounts.every((one) => one === amounts[0])) {
    return sets.length === 1 ? `${amounts[0]}${each}` : `${sets.length} × ${amounts[0]}${each}`;
  }
  return `${amounts.join(", ")}${each}`;
}

/** Minutes and seconds on a timer. @example clock(75) //=> "1:15" */
function clock(seconds: number): string {
  const whole = Math.max(0, Math.ceil(seconds));
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, "0")}`;
}

/** @param minutes after midnight @example hour(1080) //=> "18:00" */
function hour(minutes: number): string {
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
}

const hurtPlaces: Readonly<Record<HurtPlace, string>> = {
  neck: "Neck",
  shoulder: "Shoulder",
  elbow: "Elbow",
  "wrist or hand": "Wrist or hand",
  "upper back": "Upper back",
  "low back": "Low back",
  belly: "Belly",
  hip: "Hip",
  knee: "Knee",
  "ankle or foot": "Ankle or foot",
  chest: "Chest",
  dizzy: "I feel dizzy",
};

/** All that the phone's page says in English. Another language is an object of the same shape. */
export const words = {
  load: printLoad,
  span: ({ from, to }: { readonly from: number; readonly to: number }) => (to === 0 ? "" : printSpan(from, to)),
  asked,
  dose,
  hour,
  side: (side: Side) => sides[side],
  where: (meaning: LoadMeaning) => where[meaning],
  session: (title: string) => (title.length > 2 ? title : `Session ${title}`),

  link: {
    title: "Your training plan",
    why: "This puts your plan on this phone. It then works with no network too.",
    open: "Put my plan on this phone",
    busy: "One moment …",
    noNetwork: "No network, or no answer. Nothing is lost: try again.",
    notValid: "This link does not work any more. Ask your coach for a new one.",
    unsentFirst: "This phone holds sets that are not sent yet. They are sent first; then try again.",
    already: "This phone has a plan already. The new link takes its place.",
    back: "Back to my plan",
    none: "Open the link that your coach gave you. It puts your plan on this phone.",
  },
  plan: {
    coming: "Your plan is on its way. It needs the network once.",
    greeting: (name: string) => `${name}, your sessions`,
    none: "No session is planned for the next days.",
    today: "Today",
    day: (day: string) => printDate(day).replace(/ \d+$/, ""),
    when: (minutes: number) => `from ${hour(minutes)}`,
    minutes: (low: number, high: number) => `about ${printSpan(low, high)} min`,
    start: "Start",
    goOn: "Go on",
    done: "done",
    doneEarly: "done, ended early",
    again: "Open again",
    waiting: (count: number) => (count === 1 ? "One movement waits." : `${count} movements wait.`),
    movements: (count: number) => plural(count, "movement", "movements"),
    allWait: "Every movement of it waits.",
    ask: (call: string) => `Ask ${call}.`,
  },
  status: {
    saving: "saving …",
    saved: "saved on this phone",
    notSent: (count: number) => `${count} to send`,
    sent: "sent to your coach",
    failed: "This phone could not save it. It may be full. Write it down and tell your coach.",
    unknownPhone:
      "The server does not know this phone any more. Ask your coach for a new link. What you did is kept here.",
    onlyHere: (count: number) =>
      `${count === 1 ? "One entry stands" : `${count} entries stand`} on this phone only. Show this to your coach.`,
    conflict: "the record holds something else under its number",
    refused: "the server could not read it",
  },
  course: {
    progress: (behind: number, all: number) => `${behind} of ${plural(all, "set", "sets")}`,
    overview: "Whole session",
    back: "Back",
    one: (set: number) => `set ${set}`,
    set: (set: number, all: number) => (all === 1 ? "1 set" : `set ${set} of ${all}`),
    slotDose: (amount: Amount, slot: Pick<PlanSlot, "side">, eachSide: boolean) =>
      `${asked(amount)}${sideOf(slot, eachSide)}`,
    how: "How it is done",
    done: "Done",
    change: "Save the change",
    corrects: "You change a set that is saved.",
    takeBack: "Take this set back",
    leaveOut: "Leave this set out",
    leftOut: "left out",
    waits: "waits",
    bare: "done",
    next: "Next",
    warmup: "Warm-up",
    conditioning: "To finish",
    effort: { easy: "easy: you can talk", steady: "steady: short sentences", hard: "hard: single words" },
    readyToGo: "Warm, go on",
    finished: "Done, go on",
    stopNow: "Stop at once and tell your coach",
    news: "New from your coach",
    takenOut: "Your coach has taken this movement out. Leave it for today.",
    newLoads: (most: string) => `Your coach has set a limit: ${most} at most.`,
    understood: "Go on",
  },
  control: {
    reps: "Repetitions",
    seconds: "Seconds",
    of: (what: string, side: Side) => (side === "both" ? what : `${what}, ${side}`),
    untouched: (span: string) => `not said, ${span} asked`,
    more: (what: string) => `${what}: one more`,
    fewer: (what: string) => `${what}: one fewer`,
    load: "Load",
    noLoad: "not said",
    heavier: "heavier",
    lighter: "lighter",
    askedLoad: "asked",
    lastTime: (load: Load) => `last time ${printLoad(load)}`,
    find: (from: Load | undefined) =>
      from === undefined ? "Choose a load that fits." : `Begin with ${printLoad(from)}. Go up or down until it fits.`,
    reserve: "How many more could you have done well? Leave it if unsure.",
    reserveMost: "4+",
    reserveSaid: (said: string) => `${said} more`,
  },
  run: {
    asked: (level: number, { sets, restS = 0 }: Dose) => {
      const [first] = sets;
      const runS = first?.amount.kind === "time" ? first.amount.span.to : 0;
      return `Level ${level}: ${printIntervals(sets.length, runS, restS)}`;
    },
    title: "How did the run end?",
    ends: { done: "All of it done", breath: "Out of breath", legs: "Tired legs", pain: "Pain grew" } satisfies Record<
      RunEnd,
      string
    >,
    stop: "When pain grows, stop running and walk home.",
    notDone: "I did not run today",
  },
  timer: {
    clockOf: clock,
    rest: (seconds: number) => `Rest ${clock(seconds)}`,
    hold: "Time the hold",
    stop: "Stop",
    resting: "Rest",
    over: "Rest is over",
    holding: "Hold",
    speak: "Say it aloud",
    spoken: { ten: "Ten seconds", over: "Rest is over", held: "Time" },
  },
  hurt: {
    button: "This hurts",
    title: "Where does it hurt?",
    howMuch: "How much, from 0 to 10?",
    least: "0 is not at all",
    most: "10 is the worst there is",
    tell: "Tell my coach",
    back: "It does not hurt",
    places: hurtPlaces,
    said: (place: string, howMuch: number) => `${place}, ${howMuch} of 10`,
    notSent: (call: string) => `Not sent yet. Call ${call}.`,
    sent: "Your coach can see it now.",
    stop: "Stop the movement that hurts.",
    stopAll: "Stop now. Sit down. If it does not pass at once, call for help.",
    instead: (from: string, to: string) => `In place of ${from}: ${to}.`,
    waits: (name: string) => `${name} waits.`,
    goOn: "Go on without it",
  },
  easier: {
    button: "Easier",
    title: (name: string) => `Easier than ${name}`,
    none: "There is no easier form here. You can leave the set out.",
    take: "Take this one",
    back: "Stay with what I have",
  },
  end: {
    title: "All sets are behind you",
    some: (behind: number, all: number) => `${behind} of ${plural(all, "set", "sets")} done`,
    end: "End the session",
    early: "End here for today",
    earlyWhy: "What you did is kept. Nothing is owed.",
    stay: "Stay",
  },
} as const;

export type Words = typeof words;

import { plural, printNumber, printSpan } from "@stave/core/text";
import type { Load } from "@stave/core/units";

/** Dates and hours follow the reader's own habits within English; a language that is none gives British ones. */
function localeOf(language: string | undefined): string {
  try {
    const [locale] = Intl.getCanonicalLocales(language);
    return locale?.startsWith("en") ? locale : "en-GB";
  } catch {
    return "en-GB";
  }
}
const LOCALE = localeOf(globalThis.navigator?.language);

const SMALL = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

/** @example counted(11, "decision", "decisions") //=> "eleven decisions" */
function counted(count: number, one: string, many: string): string {
  const small = SMALL[count];
  return small === undefined ? plural(count, one, many) : `${small} ${count === 1 ? one : many}`;
}

/** An estimate to a tenth of its unit: more digits would say more than is known. */
function tenth({ value }: Load): string {
  return printNumber(value, 1);
}

function begun(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}

const LONG_DAY = new Intl.DateTimeFormat(LOCALE, { weekday: "long", day: "numeric", month: "long", timeZone: "UTC" });
const SHORT_DAY = new Intl.DateTimeFormat(LOCALE, {
  weekday: "short",
  day: "numeric",
  month: "short",
  timeZone: "UTC",
});
const BARE_DAY = new Intl.DateTimeFormat(LOCALE, { day: "numeric", month: "short", timeZone: "UTC" });
const CLOCK = new Intl.DateTimeFormat(LOCALE, { hour: "2-digit", minute: "2-digit", timeZone: "UTC" });
const INSTANT = new Intl.DateTimeFormat(LOCALE, {
  weekday: "short",
  day: "numeric",
  month: "short",
  hour: "2-digit",
  minute: "2-digit",
});
const HOUR_NOW = new Intl.DateTimeFormat(LOCALE, { hour: "2-digit", minute: "2-digit" });

/** A day that travels as YYYY-MM-DD. */
const dayIn = (format: Intl.DateTimeFormat) => (day: string) => {
  const at = new Date(`${day}T00:00:00Z`);
  return Number.isNaN(at.getTime()) ? day : format.format(at);
};

/** Everything the coach's page says that is not a name, a dose, a reason or a problem. */
export const words = {
  day: dayIn(LONG_DAY),
  shortDay: dayIn(SHORT_DAY),
  bareDay: dayIn(BARE_DAY),
  /** Wall minutes after midnight. @example clock(465) //=> "07:45" */
  clock: (minutes: number) => CLOCK.format(new Date(minutes * 60_000)),
  instant: (at: number) => INSTANT.format(new Date(at)),
  hour: (at: number) => HOUR_NOW.format(new Date(at)),

  product: "Stave",
  toMain: "To the page",
  pages: { morning: "Morning", people: "People", rules: "Standing rules" },
  pagesLabel: "Pages",
  title: (page: string) => `${page} · Stave`,
  nowhere: {
    title: "There is no such page",
    text: (path: string) => `Nothing stands at ${path}. The morning list and the people can be reached above.`,
  },
  loading: "Reading…",
  tryAgain: "Try again",
  close: "Close",
  cancel: "Cancel",
  faults: {
    unreachable: "The server does not answer.",
    garbled: (place: string) => `The server gave no answer that can be read at ${place}.`,
    refused: (place: string, status: number, what: string) => `${what} (${place}, ${status})`,
    notShown: (what: string, why: string) => `${what} cannot be shown. ${why}`,
    notSent: (why: string) => `Not sent. ${why} Nothing is lost: try again.`,
    lost: (hour: string) => `The server does not answer. Shown as it was at ${hour}; asked again every few seconds.`,
    lostAtOnce: "The server does not answer; asked again every few seconds.",
    back: "The server answers again.",
  },

  keys: {
    open: "Keys",
    title: "Keys",
    where: "Letters act while you are inside the page below the heading. Arrows, Tab and Enter act everywhere.",
    rows: [
      ["↓ ↑", "next and last decision, person or place in the week"],
      ["← →", "session before and after, in the week"],
      ["Enter", "take the decision; open the person or the place in the week"],
      ["O", "other answers, or type a dose or a load"],
      ["R", "refuse: leave it as it is"],
      ["M", "mark, to take several at once; Enter then takes all that are marked"],
      ["A", "mark all but stops; again: none"],
      ["U, Ctrl+Z", "undo what was decided last"],
      ["F", "find by name, in the list of people"],
      ["Esc", "close, with nothing changed"],
      ["?", "these keys"],
    ] as readonly (readonly [key: string, does: string])[],
  },

  morning: {
    title: (decisions: number, people: number) =>
      decisions === 0
        ? "Nothing to decide"
        : begun(`${counted(decisions, "decision", "decisions")}, for ${counted(people, "person", "people")}`),
    order: "In the order you meet them today. Stops come first.",
    markAll: (count: number) => `Mark the ${count} that stop nothing`,
    unmark: "Unmark",
    marked: (count: number) => `${plural(count, "decision", "decisions")} marked`,
    takeMarked: (count: number) => `Take ${count}`,
    noHour: "not today",
    figures: "Figures of the record",
    takeStops: (count: number) => `Pause all ${count}`,
    nothing: "Nothing to decide.",
    decidedToday: "Decided today",
    noneDecided: "Nothing yet.",
    gone: (person: string, title: string) =>
      `${person}: “${title}” was not taken. It has changed meanwhile, and the list shows what waits now.`,
    changed: "The list has changed.",
    showChanged: "Show it as it is now",
  },

  decision: {
    stop: "Stop",
    /** The first word on the button that takes a proposal: what it does. */
    take: {
      load: "Go",
      reps: "Set",
      exercise: "Swap",
      pause: "Pause",
      resume: "Resume",
      "run-walk": "Go",
      "light week": "Set",
      "full week": "Set",
    },
    other: "Other",
    of: (does: string, title: string, person: string) => `${does}: ${title} (${person})`,
    mark: (title: string, person: string) => `Mark ${title} (${person})`,
    sending: "Sending…",
    done: {
      accepted: "Taken",
      changed: "Changed",
      refused: "Left as it is",
      pinned: "Pinned",
      undone: "Undone",
    },
    settled: (done: string, title: string) => `${done}. ${title}`,
    undo: "Undo",
    undoOf: (title: string, person: string) => `Undo: ${title} (${person})`,
    said: (done: string, person: string, title: string) => `${done}. ${person}: ${title}. U takes it back.`,
    saidMany: (count: number) => `${plural(count, "decision", "decisions")} taken. U takes them back.`,
    saidUndone: (person: string, title: string) => `Undone. ${person}: ${title}.`,
    saidManyUndone: (count: number) => `${plural(count, "decision", "decisions")} undone.`,
    nothingToUndo: "There is nothing to undo here.",
    proposed: "Proposed",
    because: "What is behind it",
  },

  other: {
    title: (person: string, exercise: string) => `${person}: ${exercise}`,
    week: (person: string) => `${person}: the week`,
    choose: "Instead",
    typed: "A dose or a load of your own",
    level: (level: number) => `level ${level}`,
    levelHint: "A level of running and walking in turn, 1 to 9.",
    typedHint: "For example 14 kg, or 3 × 8–10, rest 90 s",
    change: "Change",
    refuse: "Refuse",
    refuseHint: "Refuse leaves everything as it is.",
    would: (what: string) => `It would be ${what}.`,
    place: (character: number) => `At character ${character}:`,
    chooseFirst: "Choose an answer, or type one.",
  },

  /** What a change asks for. */
  patch: {
    to: (exercise: string, what: string) => `${exercise}: ${what}`,
    instead: (exercise: string, was: string) => `${exercise} instead of ${was}`,
    pause: (exercise: string) => `Pause ${exercise}`,
    pauseUntil: (exercise: string, day: string) => `Pause ${exercise} until ${day}`,
    resume: (exercise: string) => `Resume ${exercise}`,
    lightWeek: (week: string) => `Light week: ${week}`,
    fullWeek: (week: string) => `Full week: ${week}`,
    runLevel: (level: number) => `run–walk level ${level}`,
  },

  strip: {
    thenAgain: "then",
    none: "No session on record yet.",
    session: (day: string, sets: string) => `${day}: ${sets}`,
    sides: (left: string, right: string) => `left ${left}, right ${right}`,
    notSaid: "not said",
    asAsked: "as asked",
    missed: "left out",
    hurt: (what: string) => `${what}, pain noted`,
    next: (sets: string) => `asked next: ${sets}`,
    past: (sessions: number) => `The last ${counted(sessions, "session", "sessions")}.`,
    seconds: (value: string) => `${value} s`,
  },

  rules: {
    about:
      "A standing rule takes, in its own name, proposals that are sure enough. Every word of it can be undone, and is then left to the coach.",
    never:
      "Whatever it says, no rule touches limits, pain, what a screening or a caution binds, a new form, the first two sessions, a comeback, pregnancy, or anybody under 18.",
    inForce: (version: number, by: string, day: string) => `In force: version ${version}, set by ${by}, ${day}.`,
    none: "No rule is in force.",
    takes: "Takes",
    kinds: { load: "the next load", reps: "a wider range of repetitions" },
    leastChance: "Least sure, %",
    leastSessions: "From at least so many sessions",
    mostPercent: "Largest step of a load, %",
    set: "Set the rule",
    stop: "End the rule",
    saidSet: (version: number) => `Version ${version} is in force.`,
    saidOver: "The rule is over.",
    left: "No rule took it:",
    byRule: (by: string) => `by ${by}`,
  },

  people: {
    title: (count: number) => begun(counted(count, "person", "people")),
    find: "Find by name or programme",
    found: (count: number, all: number) => (count === all ? `${all} shown` : `${count} of ${all} shown`),
    none: (find: string) => `Nobody's name or programme has “${find}” in it.`,
    nobody: "Nobody is on record yet.",
    columns: { name: "Name", programme: "Programme", last: "Last record", next: "Next session", waiting: "To decide" },
    noRecord: "none",
    noNext: "none planned",
    next: (day: string, hour: string, title: string) => `${day}, ${hour}, ${words.person.session(title)}`,
  },

  person: {
    toDecide: (count: number) => begun(counted(count, "decision waits", "decisions wait")),
    nothingWaits: "Nothing waits.",
    programme: (programme: string, units: string) => `${programme} · loads in ${units}`,
    week: (week: number) => `Week ${week}`,
    light: "dashed: light week",
    lightWeek: (week: number) => `Week ${week}, light`,
    forecast: "forecast",
    firm: "firm",
    planTitle: (phase: string, week: number) => `${phase}, week ${week}`,
    weeks: "Weeks of the plan",
    session: (title: string) => (title.length > 2 ? title : `Session ${title}`),
    minutes: (low: number, high: number) => `${printSpan(low, high)} min`,
    when: (day: string, hour: string) => `${day}, ${hour}`,
    lanes: {
      squat: "Squat",
      hinge: "Hinge",
      "single leg": "Single leg",
      push: "Push",
      pull: "Pull",
      trunk: "Trunk",
      "carry or conditioning": "Carry",
      other: "Other",
    },
    warmup: "Warm-up",
    conditioning: "Conditioning",
    efforts: { easy: "easy", steady: "steady", hard: "hard" },
    order: (order: number) => `Place ${order}`,
    pair: "in turn",
    openSlot: (exercise: string) => `${exercise}: why, record, change`,
    apart: " · ",
    from: (first: string, last: string) => (first === last ? first : `${first} to ${last}`),
    noWeek: "This plan has no week.",
    pinned: "pinned",
    paused: "paused",
    noSession: "No session in this week.",
    planNotes: "About this plan",
    record: "Record, by movement",
    noRecord: "No set is on record yet.",
    capacity: (value: Load, low: Load, high: Load, sessions: number) =>
      `Can lift about ${tenth(value)} ${value.unit} once; 80 % between ${tenth(low)} and ${tenth(high)} ${high.unit}, from ${plural(sessions, "session", "sessions")}.`,
    noCapacity: "What can be lifted cannot be judged.",
    history: "Decided",
    noHistory: "Nothing has been decided yet.",
    decidedAt: (instant: string, done: string) => `${instant}: ${done.toLowerCase()}`,
    showAll: (count: number) => `Show all ${count}`,
    table: { day: "Day", sets: "Sets" },
  },

  slot: {
    title: (exercise: string) => exercise,
    now: "Asked now",
    why: "Why",
    record: "Last sessions",
    pinTitle: "Change and pin",
    pinHint: "A pin stays through every later plan, until it is undone. Only a limit beats it, and says so.",
    exercise: "Another form",
    exerciseKeep: (name: string) => `${name}, as now`,
    offered: "Offered for this place",
    anyOther: "All others of the catalogue",
    dose: "Dose",
    load: "Load",
    capacity: "Can lift",
    pin: "Pin",
    pause: "Pause it",
    resume: "Resume it",
    unpin: "Undo",
    pins: "Decided here",
    nothing: "Nothing is changed yet: choose another form, or type over the dose or the load.",
  },

  link: {
    title: "Phone",
    about: "A link opens the plan on the person's own phone. Give it to nobody else.",
    make: "Make a phone link",
    made: "Phone link",
    once: (until: string) => `Works until ${until}. It is shown this once: what is lost is made anew.`,
    address: "Address",
    copy: "Copy",
    copied: "Copied.",
    cannotCopy: "This browser does not copy: mark the address and copy it by hand.",
  },
} as const;

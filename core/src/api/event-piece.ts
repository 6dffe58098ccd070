import { z } from "zod";
import {
  type Cut,
  DECISION_KINDS,
  type EventData,
  type EventKind,
  NOT_DONE,
  NOTE_ABOUT,
  OUTSIDE_WORK,
  type Patch,
  type Proposal,
  RUN_ENDS,
  RUN_WALK_BOUNDS,
  type SetDone,
  type StaveEvent,
  SWAP_CAUSES,
} from "../model/index.ts";
import {
  counterPiece,
  dataPiece,
  dayTextPiece,
  loadPiece,
  madeIdPiece,
  namePiece,
  reasonPiece,
  textPiece,
} from "./pieces.ts";
import { dosePiece } from "./plan-piece.ts";

/** Most characters of what one event says, in its canonical spelling. Ours, no source. */
const MOST_EVENT_DATA = 8000;
/** Nobody does more in a set, and nobody can tell more in reserve; tables are read by the same bounds. Ours, no source. */
const MOST_REPS = 500;
const MOST_RESERVE = 10;
const MOST_SECONDS = 7200;
/** Instants that a calendar of this program can name, as ECMAScript bounds them. */
const MOST_INSTANT = 8.64e15;

const untouched = z.literal("as asked");

function amountPiece(most: number): z.ZodType<NonNullable<SetDone["reps"]>> {
  const one = z.union([z.int().min(0).max(most), untouched]);
  return z.union([one, z.strictObject({ left: z.exactOptional(one), right: z.exactOptional(one) })]);
}

export const setDonePiece: z.ZodType<SetDone> = z.strictObject({
  exercise: namePiece,
  reps: z.exactOptional(amountPiece(MOST_REPS)),
  holdS: z.exactOptional(amountPiece(MOST_SECONDS)),
  load: z.union([loadPiece, untouched, z.literal("none")]),
  reserve: z.union([z.number().min(0).max(MOST_RESERVE), z.literal("not said")]),
  pulledBy: z.exactOptional(
    z.union([z.strictObject({ band: namePiece }), z.strictObject({ setting: z.number().min(0).max(999) })]),
  ),
  machine: z.exactOptional(namePiece),
  technique: z.exactOptional(z.enum(["kept", "lost"])),
  written: z.exactOptional(textPiece.max(200)),
});

/** A week of a plan: phase/week. */
const weekPiece = namePiece.refine((week) => /^[^/]+\/[1-9]\d?$/.test(week));
const levelPiece = z.int().min(RUN_WALK_BOUNDS.from).max(RUN_WALK_BOUNDS.to);

const patchPiece: z.ZodType<Patch> = z.discriminatedUnion("change", [
  z.strictObject({
    slot: namePiece,
    change: z.literal("load"),
    load: loadPiece,
    exercise: z.exactOptional(namePiece),
  }),
  z.strictObject({
    slot: namePiece,
    change: z.literal("reps"),
    dose: dosePiece,
    exercise: z.exactOptional(namePiece),
  }),
  z.strictObject({ slot: namePiece, change: z.literal("exercise"), exercise: namePiece }),
  z.strictObject({ slot: namePiece, change: z.literal("pause"), until: z.exactOptional(dayTextPiece) }),
  z.strictObject({ slot: namePiece, change: z.literal("resume") }),
  z.strictObject({
    slot: namePiece,
    change: z.literal("light week"),
    week: weekPiece,
    instead: z.exactOptional(weekPiece),
    lighter: z.exactOptional(z.literal(true)),
  }),
  z.strictObject({ slot: namePiece, change: z.literal("full week"), week: weekPiece }),
  z.strictObject({ slot: namePiece, change: z.literal("run-walk"), level: levelPiece }),
]);

const cutPiece: z.ZodType<Cut> = z.record(namePiece, counterPiece).refine((cut) => Object.keys(cut).length <= 200);

const proposalShape = {
  proposal: madeIdPiece,
  patch: patchPiece,
  evidence: z.array(reasonPiece).min(1).max(50),
  cut: cutPiece,
  engine: namePiece,
};
const proposalPiece: z.ZodType<Proposal> = z.strictObject(proposalShape);

const nothing = z.strictObject({});
const notDone = z.strictObject({ because: z.exactOptional(z.enum(NOT_DONE)) });
/** CR-10: halves are said too. */
const effortPiece = z.union([z.number().min(0).max(10), z.literal("not said")]);
const minutesPiece = z.int().min(1).max(1440);
const painPiece = z.int().min(0).max(10);
/** What a cuff shows, mmHg; the lower number is the lower. Ours, no source. */
const pressurePiece = z.int().min(20).max(300);

/** What each known kind says. */
const DATA: { readonly [Kind in EventKind]: z.ZodType<EventData[Kind]> } = {
  "session-started": nothing,
  "set-done": setDonePiece,
  "set-left-out": notDone,
  ran: z.strictObject({ level: levelPiece, end: z.enum(RUN_ENDS) }),
  hurt: z.strictObject({ where: namePiece, howMuch: painPiece }),
  swapped: z.strictObject({ from: namePiece, to: namePiece, because: z.enum(SWAP_CAUSES) }),
  "session-ended": z.strictObject({ early: z.boolean() }),
  missed: notDone,
  rated: z.strictObject({ effort: effortPiece, minutes: minutesPiece }),
  outside: z.strictObject({
    what: z.enum(OUTSIDE_WORK),
    minutes: minutesPiece,
    effort: effortPiece,
    note: z.exactOptional(textPiece),
  }),
  "next-morning": z.strictObject({ hurt: madeIdPiece, howMuch: painPiece }),
  pressure: z
    .strictObject({
      systolic: pressurePiece,
      diastolic: pressurePiece,
      when: z.enum(["before", "after"]),
      arm: z.exactOptional(z.enum(["left", "right"])),
    })
    .refine(({ systolic, diastolic }) => systolic > diastolic, {
      path: ["diastolic"],
      message: "The upper number first",
    }),
  noted: z.strictObject({ about: z.enum(NOTE_ABOUT), text: textPiece }),
  struck: nothing,
  accepted: z.strictObject({ ...proposalShape, by: namePiece }),
  changed: z.strictObject({ ...proposalShape, by: namePiece, instead: patchPiece }),
  refused: z.strictObject({ ...proposalShape, by: namePiece }),
  pinned: z.strictObject({ patch: patchPiece, by: namePiece, cut: z.exactOptional(cutPiece) }),
  undone: z.strictObject({ decision: madeIdPiece, by: namePiece }),
};

/** Kinds that are about one set, and say which. */
const OF_A_SET: ReadonlySet<string> = new Set(["set-done", "set-left-out"]);

const OF_A_SESSION: ReadonlySet<string> = new Set(["missed", "rated"]);

/**
 * One event as it comes from outside. Kinds that this version does not know are kept as they are, within bounds; a kind
 * that it knows must say what that kind says.
 */
export const eventPiece: z.ZodType<StaveEvent> = z
  .strictObject({
    v: z.literal(1),
    id: madeIdPiece,
    person: namePiece,
    device: madeIdPiece,
    n: counterPiece,
    at: z.int().min(-MOST_INSTANT).max(MOST_INSTANT),
    kind: z.string().regex(/^[a-z][a-z-]{0,39}$/),
    of: z.exactOptional(
      z.strictObject({
        plan: namePiece,
        session: namePiece,
        slot: z.exactOptional(namePiece),
        set: z.exactOptional(z.int().min(0).max(99)),
      }),
    ),
    replaces: z.exactOptional(madeIdPiece),
    data: dataPiece(MOST_EVENT_DATA),
  })
  .superRefine((event, ctx) => {
    if (!Object.hasOwn(DATA, event.kind)) return;
    const said = DATA[event.kind as EventKind].safeParse(event.data);
    for (const issue of said.error?.issues ?? [])
      ctx.addIssue({ code: "custom", path: ["data", ...issue.path], message: issue.message });
    if (OF_A_SET.has(event.kind) && (event.of?.slot === undefined || event.of.set === undefined))
      ctx.addIssue({ code: "custom", path: ["of"], message: "A set names its session, its slot and its number" });
    if (event.kind === "ran" && event.of?.slot === undefined)
      ctx.addIssue({ code: "custom", path: ["of"], message: "A run names its session and its name" });
    if (OF_A_SESSION.has(event.kind) && event.of === undefined)
      ctx.addIssue({ code: "custom", path: ["of"], message: "Name the session" });
    if (event.kind === "struck" && event.replaces === undefined)
      ctx.addIssue({ code: "custom", path: ["replaces"], message: "What is struck must be named" });
    if (event.replaces === event.id)
      ctx.addIssue({ code: "custom", path: ["replaces"], message: "An event cannot replace itself" });
  });

/** The highest counter that a device may send: far above any record, and far below the bound that decisions count on to. */
const MOST_SENT = 999_000_000_000;

/** An event that a person's device may send: everything but a coach's decisions. */
export const recordEventPiece: z.ZodType<StaveEvent> = eventPiece
  .refine(({ kind }) => !(DECISION_KINDS as readonly string[]).includes(kind), {
    path: ["kind"],
    message: "Only a coach decides",
  })
  .refine(({ n }) => n <= MOST_SENT, { path: ["n"], message: "The counter leaves no room for what follows" });

export { patchPiece, proposalPiece };

import { z } from "zod";
import { RULE_TAKES, type Stroke } from "../model/index.ts";
import { bundlePiece } from "./bundle-piece.ts";
import { eventPiece, patchPiece, proposalPiece, recordEventPiece } from "./event-piece.ts";
import {
  counterPiece,
  dayTextPiece,
  loadPiece,
  madeIdPiece,
  minutePiece,
  namePiece,
  reasonPiece,
  textPiece,
  tokenPiece,
} from "./pieces.ts";
import { planPiece } from "./plan-piece.ts";
import type {
  Changed,
  DecisionInput,
  DecisionOutput,
  DecisionsInput,
  DecisionsOutput,
  EventsInput,
  EventsOutput,
  EventsSince,
  ExchangeInput,
  ExchangeOutput,
  LinkOutput,
  Morning,
  MorningItem,
  PeopleOutput,
  PersonOutput,
  RuleInput,
  RuleOutput,
  RulesOutput,
} from "./shapes.ts";

/** Most events of one batch. */
export const MOST_EVENTS = 100;
const MANY = 5000;

const personNamePiece = z.strictObject({ id: namePiece, name: textPiece });
const todayPiece = z.strictObject({ from: minutePiece, title: textPiece });

const amountOfStroke = z.number().min(0).optional();
const strokePiece = z.strictObject({
  state: z.enum(["done", "asked", "to come", "missed"]),
  asked: z.strictObject({ from: z.number().min(0), to: z.number().min(0) }),
  hold: z.boolean(),
  done: z.exactOptional(
    z.union([
      z.strictObject({ both: amountOfStroke }),
      z.strictObject({ left: amountOfStroke, right: amountOfStroke }),
    ]),
  ),
  share: z.exactOptional(z.number().min(0).max(1)),
  hurt: z.boolean(),
}) as z.ZodType<Stroke>;
const pastPiece = z.array(z.strictObject({ day: dayTextPiece, strokes: z.array(strokePiece).max(50) })).max(MANY);

export const exchangeInput: z.ZodType<ExchangeInput> = z.strictObject({ link: tokenPiece, token: tokenPiece });
export const exchangeOutput: z.ZodType<ExchangeOutput> = z.strictObject({ person: namePiece });
export const bundleOutput = bundlePiece;
export const eventsInput: z.ZodType<EventsInput> = z.strictObject({
  events: z.array(recordEventPiece).min(1).max(MOST_EVENTS),
});
export const eventsOutput: z.ZodType<EventsOutput> = z.strictObject({
  acks: z.array(z.strictObject({ id: madeIdPiece, ack: z.enum(["stored", "known", "conflict"]) })).max(MOST_EVENTS),
});
/** As a query says it: digits. */
export const eventsQuery = z.strictObject({ after: z.exactOptional(z.string().regex(/^\d{1,15}$/)) });
export const eventsSince: z.ZodType<EventsSince> = z.strictObject({ events: z.array(eventPiece), after: counterPiece });

const morningItemPiece: z.ZodType<MorningItem> = z.strictObject({
  proposal: proposalPiece,
  slot: namePiece,
  exercise: personNamePiece,
  title: reasonPiece,
  stop: z.boolean(),
  past: pastPiece,
  next: z.array(strokePiece).max(50),
  others: z.array(z.strictObject({ patch: patchPiece, title: reasonPiece })).max(20),
  left: z.array(reasonPiece).max(50),
});
export const morningOutput: z.ZodType<Morning> = z.strictObject({
  day: dayTextPiece,
  people: z
    .array(
      z.strictObject({
        person: personNamePiece,
        today: z.exactOptional(todayPiece),
        items: z.array(morningItemPiece).max(MANY),
        notes: z.array(reasonPiece).max(MANY),
        figures: z.array(reasonPiece).max(MANY),
        names: z.array(personNamePiece).max(MANY),
      }),
    )
    .max(MANY),
  decided: z
    .array(
      z.strictObject({
        id: madeIdPiece,
        person: personNamePiece,
        kind: z.enum(["accepted", "changed", "refused", "pinned"]),
        by: textPiece,
        title: reasonPiece,
      }),
    )
    .max(MANY),
});

const decided = { id: madeIdPiece, person: namePiece };
export const decisionInput: z.ZodType<DecisionInput> = z.discriminatedUnion("kind", [
  z.strictObject({ ...decided, kind: z.literal("accepted"), proposal: madeIdPiece }),
  z.strictObject({ ...decided, kind: z.literal("changed"), proposal: madeIdPiece, instead: patchPiece }),
  z.strictObject({ ...decided, kind: z.literal("refused"), proposal: madeIdPiece }),
  z.strictObject({ ...decided, kind: z.literal("pinned"), patch: patchPiece }),
  z.strictObject({ ...decided, kind: z.literal("undone"), decision: madeIdPiece }),
]);
export const decisionOutput: z.ZodType<DecisionOutput> = z.strictObject({ id: madeIdPiece, plan: namePiece });

/** Most decisions of one message. Ours, no source. */
export const MOST_DECISIONS = 200;
export const decisionsInput: z.ZodType<DecisionsInput> = z.strictObject({
  decisions: z
    .array(decisionInput)
    .min(1)
    .max(MOST_DECISIONS)
    .refine((all) => new Set(all.map(({ id }) => id)).size === all.length, { message: "Each has an id of its own" }),
});
export const decisionsOutput: z.ZodType<DecisionsOutput> = z.strictObject({
  answers: z.array(
    z.union([
      z.strictObject({ id: madeIdPiece, plan: namePiece }),
      z.strictObject({ id: madeIdPiece, why: z.enum(["no such person", "unknown", "stale", "taken"]) }),
    ]),
  ),
});

const ruleShape = {
  id: z.string().regex(/^[a-z][a-z0-9-]{0,39}$/),
  version: z.int().min(1).max(10_000),
  takes: z.array(z.enum(RULE_TAKES)).max(RULE_TAKES.length),
  leastChance: z.number().min(0.5).max(1),
  leastSessions: z.int().min(3).max(50),
  /** Up to what the position stand of 2009 calls a usual step. */
  mostPercent: z.number().min(1).max(10),
};
export const ruleInput: z.ZodType<RuleInput> = z.strictObject(ruleShape);
export const ruleOutput: z.ZodType<RuleOutput> = z.strictObject({ id: ruleShape.id, version: ruleShape.version });
export const rulesOutput: z.ZodType<RulesOutput> = z.strictObject({
  rules: z.array(z.strictObject({ ...ruleShape, by: textPiece, at: z.number() })).max(100),
});

export const peopleOutput: z.ZodType<PeopleOutput> = z.strictObject({
  people: z
    .array(
      z.strictObject({
        ...personNamePiece.shape,
        programme: textPiece,
        last: z.exactOptional(dayTextPiece),
        next: z.exactOptional(z.strictObject({ day: dayTextPiece, ...todayPiece.shape })),
        waiting: z.int().min(0),
      }),
    )
    .max(MANY),
});
export const personOutput: z.ZodType<PersonOutput> = z.strictObject({
  day: dayTextPiece,
  person: z.strictObject({ ...personNamePiece.shape, units: z.enum(["kg", "lb"]), programme: textPiece }),
  plan: planPiece,
  names: z.array(personNamePiece).max(MANY),
  own: z.array(personNamePiece).max(MANY),
  dates: z.array(z.strictObject({ session: namePiece, day: dayTextPiece, from: minutePiece })).max(MANY),
  slots: z
    .array(
      z.strictObject({
        slot: namePiece,
        past: pastPiece,
        capacity: z.exactOptional(
          z.strictObject({ value: loadPiece, low: loadPiece, high: loadPiece, sessions: z.int().min(1) }),
        ),
        missing: z.exactOptional(reasonPiece),
        carried: z.exactOptional(reasonPiece),
        next: z.exactOptional(z.array(strokePiece).max(50)),
      }),
    )
    .max(MANY),
  waiting: z.array(morningItemPiece).max(MANY),
  notes: z.array(reasonPiece).max(MANY),
  figures: z.array(reasonPiece).max(MANY),
  decided: z
    .array(
      z.strictObject({
        id: madeIdPiece,
        at: z.number(),
        kind: z.enum(["accepted", "changed", "refused", "pinned", "undone"]),
        by: textPiece,
        title: reasonPiece,
        slot: z.exactOptional(namePiece),
        stands: z.boolean(),
      }),
    )
    .max(MANY),
});
export const personParams = z.strictObject({ id: namePiece });
export const linkOutput: z.ZodType<LinkOutput> = z.strictObject({
  path: z.string().max(500),
  expires: z.int().min(0),
});
export const changedOutput: z.ZodType<Changed> = z.strictObject({ person: namePiece });

import type {
  Bundle,
  ExerciseId,
  Patch,
  Plan,
  Proposal,
  Reason,
  SlotKey,
  StandingRule,
  StaveEvent,
  Stroke,
} from "../model/index.ts";
import type { Load } from "../units.ts";

/** The phone's first word: the token of the link it was opened by, and the token it made for itself. */
export interface ExchangeInput {
  /** From the fragment of the link's address, after a tap; base64url, 32 bytes. */
  readonly link: string;
  /** Made by the phone; base64url, 32 bytes. Sent as `Authorization: Bearer` from then on. */
  readonly token: string;
}
export interface ExchangeOutput {
  readonly person: string;
}

/** `GET bundle`, with an ETag; 304 when nothing changed. */
export type BundleOutput = Bundle;

/** `POST events`: at most 100; acknowledged one by one, after the commit that holds them. */
export interface EventsInput {
  readonly events: readonly StaveEvent[];
}
export interface EventsOutput {
  /** In the order sent. `conflict`: the id stands with other bytes, and those stay. */
  readonly acks: readonly { readonly id: string; readonly ack: "stored" | "known" | "conflict" }[];
}

/** `GET events?after=`: what other devices of this person sent. */
export interface EventsSince {
  readonly events: readonly StaveEvent[];
  /** Give it back as `after` to read on. */
  readonly after: number;
}

/** A proposal as the coach sees it: everything to decide by. */
export interface MorningItem {
  readonly proposal: Proposal;
  readonly slot: SlotKey;
  readonly exercise: { readonly id: ExerciseId; readonly name: string };
  /** What is proposed, as a reason. */
  readonly title: Reason;
  /** True for pain and stops; those come first. */
  readonly stop: boolean;
  /** Strokes of the last sessions of this slot, oldest first. */
  readonly past: readonly { readonly day: string; readonly strokes: readonly Stroke[] }[];
  /** What would be asked next, drawn over the last. */
  readonly next: readonly Stroke[];
  /** Other answers than the proposed one: patches with their titles. */
  readonly others: readonly { readonly patch: Patch; readonly title: Reason }[];
  /** Why no standing rule took it; nothing where there is no rule. */
  readonly left: readonly Reason[];
}

/** One person of the morning list. */
export interface MorningPerson {
  readonly person: { readonly id: string; readonly name: string };
  /** The session they come to today. */
  readonly today?: { readonly from: number; readonly title: string };
  readonly items: readonly MorningItem[];
  /** What in the record calls for a look: silence, a morning after, far more than before, a fall, no change. */
  readonly notes: readonly Reason[];
  /** Figures beside it: what was asked and done, load of the week, changes. */
  readonly figures: readonly Reason[];
  /** Of the movements that notes and figures name. */
  readonly names: readonly { readonly id: ExerciseId; readonly name: string }[];
}

/** `GET morning`: by today's hours, stops on top. */
export interface Morning {
  /** YYYY-MM-DD */
  readonly day: string;
  readonly people: readonly MorningPerson[];
  /** Decisions of today that can be undone, latest first. */
  readonly decided: readonly {
    readonly id: string;
    readonly person: { readonly id: string; readonly name: string };
    readonly kind: "accepted" | "changed" | "refused" | "pinned";
    /** The coach, or the rule that spoke. */
    readonly by: string;
    readonly title: Reason;
  }[];
}

/** `POST decisions`: the coach's word. The client makes the id, so that asking again changes nothing. */
export type DecisionInput = { readonly id: string; readonly person: string } & (
  | { readonly kind: "accepted"; readonly proposal: string }
  | { readonly kind: "changed"; readonly proposal: string; readonly instead: Patch }
  | { readonly kind: "refused"; readonly proposal: string }
  | { readonly kind: "pinned"; readonly patch: Patch }
  | { readonly kind: "undone"; readonly decision: string }
);
export interface DecisionOutput {
  readonly id: string;
  /** Id of the plan revision that now stands. */
  readonly plan: string;
}

/** `POST decisions/many`: the coach's word on many at once, each by itself: one that cannot be taken stops no other. */
export interface DecisionsInput {
  readonly decisions: readonly DecisionInput[];
}
export interface DecisionsOutput {
  readonly answers: readonly (
    | DecisionOutput
    | { readonly id: string; readonly why: "no such person" | "unknown" | "stale" | "taken" }
  )[];
}

/** `GET rules`: the last version of each; one that takes nothing is over. */
export interface RulesOutput {
  readonly rules: readonly StandingRule[];
}

/** `POST rules`: the next version of a rule. A rule that takes nothing is over. */
export type RuleInput = Omit<StandingRule, "by" | "at">;
export interface RuleOutput {
  readonly id: string;
  readonly version: number;
}

/** `GET people` */
export interface PeopleOutput {
  readonly people: readonly {
    readonly id: string;
    readonly name: string;
    readonly programme: string;
    /** Day of the last record, YYYY-MM-DD. */
    readonly last?: string;
    readonly next?: { readonly day: string; readonly from: number; readonly title: string };
    /** Proposals that wait. */
    readonly waiting: number;
  }[];
}

/** `GET people/:id` */
export interface PersonOutput {
  /** Today where this person trains, YYYY-MM-DD. */
  readonly day: string;
  readonly person: {
    readonly id: string;
    readonly name: string;
    readonly units: "kg" | "lb";
    readonly programme: string;
  };
  /** The revision that stands, with its reasons. */
  readonly plan: Plan;
  readonly names: readonly { readonly id: ExerciseId; readonly name: string }[];
  /** The coach's own exercises: what stands in no other catalogue. */
  readonly own: readonly { readonly id: ExerciseId; readonly name: string }[];
  /** Sessions on their days, past and to come. */
  readonly dates: readonly { readonly session: string; readonly day: string; readonly from: number }[];
  /** For each slot the strokes of its sessions, oldest first, and what can be lifted now. */
  readonly slots: readonly {
    readonly slot: SlotKey;
    readonly past: readonly { readonly day: string; readonly strokes: readonly Stroke[] }[];
    /** What is asked of it the next time. */
    readonly next?: readonly Stroke[];
    readonly capacity?: { readonly value: Load; readonly low: Load; readonly high: Load; readonly sessions: number };
    /** Why there is no capacity. */
    readonly missing?: Reason;
    /** A range carried from another form, beside what is missing. */
    readonly carried?: Reason;
  }[];
  readonly waiting: readonly MorningItem[];
  /** As in the morning list. */
  readonly notes: readonly Reason[];
  readonly figures: readonly Reason[];
  readonly decided: readonly {
    readonly id: string;
    readonly at: number;
    readonly kind: "accepted" | "changed" | "refused" | "pinned" | "undone";
    /** The coach, or the rule that spoke. */
    readonly by: string;
    readonly title: Reason;
    /** The slot it is about, where it is about one. */
    readonly slot?: SlotKey;
    /** True while it can be undone: it was not, and is no undoing itself. */
    readonly stands: boolean;
  }[];
}

/** `POST people/:id/links` */
export interface LinkOutput {
  /** Path and fragment of the address to give to the person. */
  readonly path: string;
  /** Epoch milliseconds. */
  readonly expires: number;
}

/** `GET stream`: server-sent events named `changed`. */
export interface Changed {
  readonly person: string;
}

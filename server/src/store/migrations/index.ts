import type { Migration } from "kysely";
import type { Dialect } from "../engine.ts";
import { eventsPlansDocumentsLinks } from "./2026-11-25-events-plans-documents-links.ts";
import { sessionsAndTokens } from "./2026-11-28-sessions-and-tokens.ts";
import { standingRules } from "./2026-11-28-standing-rules.ts";
import { ownExercises } from "./2026-11-29-own-exercises.ts";

/** All steps to the present tables, by name: the day, then what it does. One that was released never changes. */
export function migrations(dialect: Dialect): Readonly<Record<string, Migration>> {
  return {
    "2026-11-25-events-plans-documents-links": eventsPlansDocumentsLinks(dialect),
    "2026-11-28-sessions-and-tokens": sessionsAndTokens(dialect),
    "2026-11-28-standing-rules": standingRules(dialect),
    "2026-11-29-own-exercises": ownExercises(dialect),
  };
}

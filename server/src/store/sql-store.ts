import type { StaveEvent } from "@stave/core/model";
import { appender } from "./append-events.ts";
import { documents } from "./documents.ts";
import type { Engine } from "./engine.ts";
import { links } from "./links.ts";
import { checkNames } from "./names.ts";
import { revisions } from "./revisions.ts";
import { rules } from "./rules.ts";
import { sessions } from "./sessions.ts";
import type { Store } from "./store.ts";

/** The store over either database: the same queries, the same answers. */
export function sqlStore(engine: Engine): Store {
  const { db, run } = engine;
  return {
    appendEvents: appender(engine),
    async eventsOf(practice, person, after = 0) {
      checkNames(practice, person);
      const [rows] = await run(practice, [
        db
          .selectFrom("event")
          .select(["position", "body"])
          .where("practice_id", "=", practice)
          .where("person_id", "=", person)
          .where("position", ">", after)
          .orderBy("position")
          .compile(),
      ]);
      return rows.map(({ position, body }) => ({ position, event: JSON.parse(body) as StaveEvent }));
    },
    ...documents(engine),
    ...revisions(engine),
    ...rules(engine),
    ...links(engine),
    ...sessions(engine),
    close: () => engine.close(),
  };
}

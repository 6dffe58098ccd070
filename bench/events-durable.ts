import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { StaveEvent } from "@stave/core/model";
import Sqlite from "better-sqlite3";
import { openStore } from "../server/src/store/index.ts";
import { medianTime, RUNS } from "./clock.ts";
import type { Measure, Result } from "./measure.ts";

const BATCH = 20;
/** Batches in one run: long enough for a clock on a quick disk. */
const BATCHES = 40;
const PRACTICE = "bench";
const PERSON = "ana";

function eventOf(n: number): StaveEvent {
  return {
    v: 1,
    id: `019aaaaa-0000-7000-8000-${String(n).padStart(12, "0")}`,
    person: PERSON,
    device: "phone",
    n,
    at: 1_795_000_000_000 + n * 90_000,
    kind: "set-done",
    of: { plan: "plan", session: "base/1/a", slot: "squat", set: n % 4 },
    data: { exercise: "goblet-squat", reps: 8, load: "as asked", reserve: "not said" },
  };
}

/** Milliseconds for 20 events: through the store, as 20 bare commits, and as one bare commit of 20 rows. */
async function times(): Promise<{ ours: number; singles: number; batch: number }> {
  const folder = mkdtempSync(join(tmpdir(), "stave-bench-"));
  const store = await openStore(join(folder, "stave.db"));
  const bare = new Sqlite(join(folder, "bare.db"));
  try {
    bare.pragma("journal_mode = WAL");
    bare.pragma("synchronous = FULL");
    bare.exec("create table event (id text not null primary key, body text not null) strict");
    const insert = bare.prepare("insert into event values (?, ?)");
    const add = ({ id, body }: { readonly id: string; readonly body: string }) => void insert.run(id, body);
    let next = 0;
    const fresh = () => Array.from({ length: BATCH }, () => eventOf(next++));
    const rows = () => fresh().map((event) => ({ id: event.id, body: JSON.stringify(event) }));
    const together = bare.transaction((some: ReturnType<typeof rows>) => some.forEach(add));

    const ours = await medianTime(async () => {
      for (let batch = 0; batch < BATCHES; batch++) {
        const acks = await store.appendEvents(PRACTICE, PERSON, fresh());
        if (acks.some((ack) => ack !== "stored")) throw new Error("An event of the bench was not stored");
      }
    });
    const singles = await medianTime(() => {
      for (let batch = 0; batch < BATCHES; batch++) rows().forEach(add);
    });
    const batch = await medianTime(() => {
      for (let one = 0; one < BATCHES; one++) together(rows());
    });
    return { ours: ours / BATCHES, singles: singles / BATCHES, batch: batch / BATCHES };
  } finally {
    await store.close();
    bare.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

function result(name: string, value: number, baseline: string, baselineValue: number, aim: string): Result {
  return { name, value, unit: "ms", baseline, baselineValue, ratio: baselineValue / value, n: RUNS, aim };
}

/** Twenty events acknowledged by the store against twenty bare commits of one row each. */
export const eventsDurable: Measure = {
  name: "events/durable",
  async run() {
    const { ours, singles } = await times();
    return result("events/durable", ours, "20 bare single commits", singles, "at least 2");
  },
};

/** The same against one bare commit of twenty rows: what the store costs beyond the disk. */
export const eventsDurableBatch: Measure = {
  name: "events/durable-batch",
  async run() {
    const { ours, batch } = await times();
    return result("events/durable-batch", ours, "one bare commit of 20 rows", batch, "at least 0.15");
  },
};

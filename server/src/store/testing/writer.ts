/**
 * `writer FILE FROM [BATCHES]`: appends batches to a store, each overlapping the one before it, and says on standard
 * output when it has received a batch and when it would reply. Without a number of batches it goes on until it is killed.
 */
import { writeSync } from "node:fs";
import { openStore } from "../open-store.ts";
import { sampleEvents } from "./sample-events.ts";

const BATCH = 120;
const OVERLAP = 40;
const [file, from, batches = "Infinity"] = process.argv.slice(2);
const store = await openStore(file!);
for (let batch = 0; batch < Number(batches); batch++) {
  const first = Number(from) + batch * (BATCH - OVERLAP);
  const events = sampleEvents(first, first + BATCH);
  writeSync(1, `receipt ${first}\n`);
  const acks = await store.appendEvents("p", "ana", events);
  writeSync(1, `reply ${first} ${acks.join(" ")}\n`);
}
await store.close();

import { expect, test } from "vitest";
import { CATALOGUE } from "../exercises/index.ts";
import { foldRecord } from "../measures/index.ts";
import type { StaveEvent } from "../model/index.ts";
import { nextRevision, sessionDays } from "../revise/index.ts";
import { madeUpSituation, plainHash } from "../testing/index.ts";
import { type RecordOptions, type RecordPerson, readRecords } from "./index.ts";

const DAY_MS = 86_400_000;
const SITUATION = madeUpSituation(CATALOGUE, [], 27);
const PLAN = nextRevision(SITUATION);
const DAYS = sessionDays({ ...SITUATION, plan: PLAN });

function ana(events: readonly StaveEvent[]): RecordPerson {
  const toInstant: RecordPerson["toInstant"] = (on, minutes) => on * DAY_MS + minutes * 60_000;
  return { ...SITUATION, plan: PLAN, days: DAYS, events, record: foldRecord(events), toInstant };
}

/** Reads a table over a record, and adds what it says. */
function after(events: readonly StaveEvent[], lines: string, options: RecordOptions): readonly StaveEvent[] {
  const people = [ana(events)];
  const answer = readRecords(`day;movement;load;result;pain\n${lines}`, {
    ...{ people, catalogue: CATALOGUE, file: "log.csv", hash: plainHash },
    options: { unit: "kg", ...options },
  });
  if (!answer.ok) throw new Error(answer.problems[0]!.code);
  expect(answer.value.rows.flatMap(({ problems }) => problems)).toEqual([]);
  return [...events, ...(answer.value.events.get("ana") ?? [])];
}
const said = (events: readonly StaveEvent[]) => {
  const { sessions, hurts } = foldRecord(events);
  return { sessions: sessions.map(({ n: _, ...rest }) => rest), hurts: hurts.map(({ where }) => where) };
};

const TABLE = "2027-03-01;back squat;60;8/8/7;knee 2\n2027-03-04;goblet squat;16;10/9";
const OTHER = "2027-03-08;back squat;60;8/8/8;";

test("a whole table is taken back: sets, sessions, pain; what another table said stays", () => {
  const other = after([], OTHER, {});
  const both = after(other, TABLE, {});
  expect(said(both).sessions).toHaveLength(3);
  const back = after(both, TABLE, { undo: true });
  expect(said(back)).toEqual(said(other));
  expect(back.length).toBeGreaterThan(both.length);
});

test("taken back once more changes nothing; taken again it stands as before, and can be taken back again", () => {
  const taken = after([], TABLE, {});
  const back = after(taken, TABLE, { undo: true });
  expect(after(back, TABLE, { undo: true })).toEqual(back);
  const again = after(back, TABLE, {});
  expect(said(again)).toEqual(said(taken));
  expect(after(again, TABLE, {})).toEqual(again);
  expect(new Set(again.map(({ id }) => id)).size).toBe(again.length);
});

test("a correction that is taken back leaves what was said before it; what was corrected since stays", () => {
  const first = after([], OTHER, {});
  const right = OTHER.replace("8/8/8", "8/8/6");
  const corrected = after(first, right, { correct: true });
  expect(said(corrected)).not.toEqual(said(first));
  expect(said(after(corrected, right, { undo: true }))).toEqual(said(first));
  const kept = after(corrected, OTHER, { undo: true });
  expect(said(kept).sessions[0]!.slots[0]!.sets.map(({ reps }) => reps)).toEqual([{ both: 6 }]);
});

import { expect, test } from "vitest";
import { CATALOGUE } from "../exercises/index.ts";
import { foldRecord } from "../measures/index.ts";
import { nextRevision, sessionDays } from "../revise/index.ts";
import { LOOP_PLACE, LOOP_PROGRAMME, madeUpSituation, plainHash } from "../testing/index.ts";
import { type RecordPerson, readRecords } from "./index.ts";

const DAY_MS = 86_400_000;

function runner(): RecordPerson {
  const situation = {
    ...madeUpSituation(CATALOGUE, [], 27),
    place: { ...LOOP_PLACE, equipment: { ...LOOP_PLACE.equipment, "way to walk": 1 } },
    programme: {
      ...LOOP_PROGRAMME,
      phases: LOOP_PROGRAMME.phases.map((phase) => ({
        ...phase,
        sessions: phase.sessions.map((session) => ({
          ...session,
          conditioning: [{ slot: "run", runWalk: 2, do: "run", effort: "easy" } as const],
        })),
      })),
    },
  };
  const plan = nextRevision(situation);
  return {
    ...situation,
    plan,
    days: sessionDays({ ...situation, plan }),
    events: [],
    record: foldRecord([]),
    toInstant: (on, minutes) => on * DAY_MS + minutes * 60_000,
  };
}

const ANA = runner();

function read(lines: string) {
  const answer = readRecords(lines, {
    people: [ANA],
    catalogue: CATALOGUE,
    file: "log.csv",
    options: {},
    hash: plainHash,
  });
  if (!answer.ok) throw new Error(answer.problems[0]!.code);
  return { rows: answer.value.rows, events: answer.value.events.get("ana") ?? [] };
}

test("a run is told by its name or by the movement, with what ended it", () => {
  for (const line of ["slot;result\n2027-03-01;run;legs", "movement;result\n2027-03-01;Run;legs"]) {
    const { rows, events } = read(`day;${line}`);
    expect(rows[0]!.problems).toEqual([]);
    expect(events.map(({ kind, data, of }) => ({ kind, data, slot: of?.slot }))).toEqual([
      { kind: "session-started", data: {}, slot: undefined },
      { kind: "ran", data: { level: 2, end: "legs" }, slot: "run" },
    ]);
  }
});

test("other words are asked, and a run that was left out says nothing of the level", () => {
  const { rows, events } = read("day;slot;result\n2027-03-01;run;19");
  expect(rows[0]!.problems).toMatchObject([{ code: "record/run-end", allowed: "done, breath, legs, pain" }]);
  expect(events).toEqual([]);
  expect(read("day;slot;result\n2027-03-01;run;-").events.map(({ kind }) => kind)).toEqual(["session-started"]);
});

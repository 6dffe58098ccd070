import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import ICAL from "ical.js";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { PEOPLE, PROGRAMME, stave } from "../testing/run-stave.ts";

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "stave-calendar-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

interface Shown {
  readonly day: string;
  readonly sequence: number;
  readonly status: string;
}

/** A person's file after a run, read by another reader: ical.js. */
async function written(id: string, ...more: readonly string[]) {
  const args = [...PEOPLE, "--person", id, "--weeks", "2", "--out", folder, ...more];
  const { exit, out } = await stave("calendar", PROGRAMME, ...args);
  expect(exit).toBe(0);
  const text = readFileSync(join(folder, id, "sessions.ics"), "utf8");
  const calendar = new ICAL.Component(ICAL.parse(text));
  expect(calendar.getFirstPropertyValue("method")).toBe("PUBLISH");
  const events = new Map<string, Shown>();
  for (const component of calendar.getAllSubcomponents("vevent")) {
    const event = new ICAL.Event(component);
    events.set(event.uid, {
      day: event.startDate.toJSDate().toISOString().slice(0, 10),
      sequence: event.sequence,
      status: String(component.getFirstPropertyValue("status")),
    });
  }
  return { text, out, events };
}
const changed = (before: ReadonlyMap<string, Shown>, after: ReadonlyMap<string, Shown>) =>
  [...after].flatMap(([uid, shown]) =>
    JSON.stringify(shown) === JSON.stringify(before.get(uid)) ? [] : [{ from: before.get(uid)?.day, ...shown }],
  );

describe("the calendar after a miss keeps every identity", () => {
  test("ill: the session that fell away is cancelled, one sequence up, and all others keep every byte", async () => {
    const before = await written("wren");
    const after = await written("wren", "--missed", "2027-01-13", "--because", "ill");
    expect([...after.events.keys()].sort()).toEqual([...before.events.keys()].sort());
    expect(changed(before.events, after.events)).toEqual([
      { from: "2027-01-13", day: "2027-01-13", sequence: 1, status: "CANCELLED" },
    ]);
    const blocks = (text: string) => [...text.matchAll(/BEGIN:VEVENT.*?END:VEVENT/gs)].map(([block]) => block);
    const kept = blocks(after.text).filter((block) => !block.includes("CANCELLED"));
    expect(kept).toHaveLength(5);
    for (const block of kept) expect(blocks(before.text)).toContain(block);
    expect(after.out).toMatch(/was missed, ill: skipped, and not made up/);
    const again = await written("wren", "--missed", "2027-01-13", "--because", "ill");
    expect(again.text).toBe(after.text);
  });

  test("busy: what moves keeps its identity on its new day, one sequence up; nothing is cancelled", async () => {
    const before = await written("esteban");
    const first = [...before.events.values()].map(({ day }) => day).sort()[0]!;
    const after = await written("esteban", "--missed", first, "--because", "busy");
    const moves = changed(before.events, after.events);
    expect([...after.events.keys()].sort()).toEqual([...before.events.keys()].sort());
    expect(moves.length).toBeGreaterThan(0);
    for (const { from, day, sequence, status } of moves) {
      expect([sequence, status]).toEqual([1, "CONFIRMED"]);
      expect(day).not.toBe(from);
    }
    expect(moves.map(({ from }) => from)).toContain(first);
  });

  test("a fixed date moves its event, and what is wrong with a wish is told as for days", async () => {
    const before = await written("dagny");
    const [first] = [...before.events.values()].map(({ day }) => day).sort();
    const args = [...PEOPLE, "--out", folder, "--missed", first!, "--because", "ill"];
    expect(await stave("calendar", PROGRAMME, ...args)).toMatchObject({ exit: 2, err: /--person/ });
    const wrong = await stave("calendar", PROGRAMME, ...args, "--person", "dagny", "--back", first!);
    expect(wrong.exit).toBe(2);
    expect((await written("dagny")).text).toBe(before.text);
  });

  test("as a document it says what follows", async () => {
    const args = [...PEOPLE, "--person", "wren", "--out", folder, "--missed", "ground/1/b", "--because", "tired"];
    const { result } = JSON.parse((await stave("calendar", PROGRAMME, ...args, "--json")).out);
    expect(result.missed).toMatchObject({ because: "tired", answer: "skip", skipped: ["ground/1/b"] });
    expect(result.files).toHaveLength(1);
  });
});

import { expect, test } from "vitest";
import type { Place } from "./place.ts";
import { readRoster } from "./roster-read.ts";

const places = [{ id: "room" }] as unknown as readonly Place[];
type Lines = Readonly<Record<string, string | undefined>>;

/** A roster of one person with these lines, and windows unless they are put out. */
function roster(lines: Lines): string {
  const usual = { born: "1990-05-14", status: "novice", units: "kg", place: "room", minutes: "50" };
  const said = { ...usual, windows: "[tue thu 17:00–18:30]", ...lines };
  const rest = Object.entries<string | undefined>(said).filter(([, value]) => value !== undefined);
  return `stave: 1\npeople:\n  - id: ann\n    name: Ann\n${rest.map(([key, value]) => `    ${key}: ${value}\n`).join("")}`;
}

/** What is told, with its place in the text. */
function told(lines: Lines): readonly string[] {
  const result = readRoster(roster(lines).replace("▸", ""), "people.yaml", places);
  return result.problems.map(
    ({ code, line, column, found = "", allowed = "", maybe = "" }) =>
      `${code} ${line}:${column} ${found}|${allowed.length > 20 ? "…" : allowed}|${maybe}`,
  );
}

/** So many hours on one day, each a quarter of an hour. */
function hours(count: number, on: string): string {
  const clock = (n: number, minutes: string) => `${String(n % 24).padStart(2, "0")}:${minutes}`;
  return `[${Array.from({ length: count }, (_, n) => `${on} ${clock(n, "00")}–${clock(n, "15")}`).join(", ")}]`;
}

const wrong: readonly (readonly [Lines, string])[] = [
  [{ away: "[{ from: 2027-02-02, to: 2027-02-03, waits: ▸maybe }]" }, "value/type maybe|true, false|"],
  [{ away: "[{ from: 2027-02-02, to: ▸2028-02-03, waits: true }]" }, "person/long-wait 367|≤ 366|"],
  [
    {
      away: "[{ from: 2027-02-02, to: 2027-12-31, waits: true }, { from: 2028-02-02, to: ▸2028-03-31, waits: true }]",
    },
    "person/long-wait 392|≤ 366|",
  ],
  [
    { instead: "[{ from: 2027-02-02, to: ▸2027-02-01, windows: mon 10:00–11:00 }]" },
    "date/reversed 2027-02-01|≥ 2027-02-02|",
  ],
  [{ instead: "[▸{ from: 2027-02-02, to: 2027-02-03 }]" }, "key/missing |text, number|"],
  [{ instead: "[{ from: 2027-02-02, to: 2027-02-03, windows: ▸mno 10:00–11:00 }]" }, "window/day mno|…|mon"],
  [{ instead: "[{ from: 2027-02-02, to: 2027-02-03, windows: ▸any 2 of mon tue 10:00–11:00 }]" }, "window/day any|…|"],
  [
    { instead: "[{ from: 2027-02-02, to: 2027-02-03, windows: mon 10:00–11:00 at ▸hotle }]" },
    "name/unknown hotle|room|",
  ],
  [
    {
      instead:
        "[{ from: 2027-02-02, to: 2027-02-08, windows: mon 10:00–11:00 }, { from: ▸2027-02-08, to: 2027-02-09, windows: tue 10:00–11:00 }]",
    },
    "person/instead-twice 2027-02-08 – 2027-02-09, 2027-02-02 – 2027-02-08||",
  ],
  [{ missed: "[{ on: 2027-02-02, because: ▸lazy }]" }, "value/choice lazy|…|"],
  [{ missed: "[{ on: 2027-02-02, because: ill, back: ▸2027-02-02 }]" }, "date/reversed 2027-02-02|≥ 2027-02-03|"],
  [
    { missed: "[{ on: 2027-02-02, because: ill }, { on: ▸2027-02-02, because: busy }]" },
    "person/missed-twice 2027-02-02||",
  ],
  [
    { windows: undefined, cycle: "{ length: 8, anchor: 2026-03-02, days: [2 10:00–11:00, 3 10:00–11:00 at ▸rom] }" },
    "name/unknown rom|room|room",
  ],
  [{ windows: `▸${hours(25, "mon")}` }, "person/many-windows 25|≤ 24|"],
  [
    { windows: undefined, cycle: `{ length: 8, anchor: 2026-03-02, days: ▸${hours(25, "2")} }` },
    "person/many-windows 25|≤ 24|",
  ],
  [
    { instead: `[{ from: 2027-02-02, to: 2027-02-03, windows: ▸${hours(25, "tue")} }]` },
    "person/many-windows 25|≤ 24|",
  ],
];

test.each(wrong)("told where it stands: %j", (lines, what) => {
  const before = roster(lines).split("▸")[0]!.split("\n");
  const [code, ...found] = what.split(" ");
  expect(told(lines)).toEqual([`${code} ${before.length}:${before.at(-1)!.length + 1} ${found.join(" ")}`]);
});

test("at the bounds themselves, and side by side, nothing is told", () => {
  for (const fine of [
    { missed: "[{ on: 2027-02-02, because: ill, back: 2027-02-03 }, { on: 2027-02-03, because: tired }]" },
    { windows: hours(24, "mon") },
    { away: "[{ from: 2027-02-02, to: 2028-02-02, waits: true }, { from: 2029-01-01, to: 2031-01-01 }]" },
    {
      instead:
        "[{ from: 2027-02-02, to: 2027-02-08, windows: mon 10:00–11:00 }, { from: 2027-02-09, to: 2027-02-09, windows: tue 10:00–11:00 }]",
    },
  ]) {
    expect(told(fine)).toEqual([]);
  }
});

import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { ROOM, stave } from "../testing/run-stave.ts";

const folder = mkdtempSync(join(tmpdir(), "stave-health-"));
afterAll(() => rmSync(folder, { recursive: true }));
function write(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

describe("screen: the words say what the published logic says (Riebe et al. 2015, rows 6 and 7)", () => {
  const answers = (active: string, wanted: string) =>
    write(
      "answers.yaml",
      readFileSync(`${ROOM}/screening-tobiah.yaml`, "utf8")
        .replace("swelling: yes", "swelling: no")
        .replace("diabetes type 2: no", "diabetes type 2: yes")
        .replace("active: no", `active: ${active}`)
        .replace("wanted: moderate", `wanted: ${wanted}`),
    );
  test.each([
    ["yes", "moderate", "tobiah: go on, moderate work at most."],
    ["yes", "vigorous", "tobiah: go on, moderate work at most; ask a doctor before vigorous work."],
    ["no", "light", "tobiah: ask a doctor first."],
  ])("active %s, wants %s", async (active, wanted, first) => {
    const { exit, out } = await stave("screen", answers(active, wanted));
    expect([exit, out.split("\n")[0]]).toEqual([0, first]);
  });
});

describe("assess: born on 29 February, the norms of a day are those of the age on that day", () => {
  const results = `stave: 1
person: leap
born: 1964-02-29
sex: woman
results:
  - { test: chair-stand-30, on: 2024-02-28, value: 12 }
  - { test: chair-stand-30, on: 2024-02-29, value: 12 }
  - { test: grip, on: 2024-02-29, left: 15, right: 30 }
`;
  test("59 the day before, 60 on the day; sides are told apart and never averaged", async () => {
    const { exit, out } = await stave("assess", write("leap.yaml", results));
    expect(exit).toBe(0);
    expect(out).toContain("no printed row for this protocol at 59 years");
    expect(out).toContain("The middle half of this age: 12–17 repetitions");
    expect(out).toContain("left 15, right 30 kg; left weaker by 50 %, trained first");
    expect(out).not.toContain("22.5");
  });
  test("the 29th of a year that has none is refused, and the day before is named", async () => {
    const { exit, err } = await stave("assess", write("none.yaml", results.replace("1964-02-29", "1965-02-29")));
    expect(exit).toBe(2);
    expect(err).toContain("There is no such day. Found: 1965-02-29. Maybe: 1965-02-28.");
  });
});

describe("reckon: what is wrong names the answer it is about, once", () => {
  test.each([
    [
      "tape sex=man age=30 height=178cm neck=38cm",
      "The answer waist=… is missing. Allowed: a number with cm, mm, m, in, ft.",
    ],
    ["bmi mass=70kg height=175 age=40", "The number behind height= has no unit. Found: 175."],
    ["bmi mass=70kg height=175kg age=40", "The unit behind height= does not go with it. Found: 175kg."],
    [
      "bmi mass=70,5kg height=175cm age=40",
      "Behind mass= stand plain figures with a point for decimals, and their unit.",
    ],
    [
      "tape sex=men age=30 height=178cm neck=38cm waist=90cm",
      "None of the words that may stand behind sex=. Found: men.",
    ],
    ["pulse-message bytes=xx", "Behind bytes= stand pairs of hexadecimal figures. Found: xx."],
  ])("%s", async (line, wanted) => {
    const { exit, err } = await stave("reckon", ...line.split(" "));
    expect(exit).toBe(2);
    expect(err).toContain(wanted);
    expect(err.trim().split("\n")).toHaveLength(1);
  });

  test.each([
    ["tape sex=man age=30 height=178cm neck=38cm waist=36cm", "abdomen in cm, which must be over the neck"],
    ["tape sex=man age=30 height=1.78cm neck=38cm waist=90cm", "height in cm must be from 120 to 230"],
    ["tape sex=man age=17 height=178cm neck=38cm waist=90cm", "age in years must be from 18"],
    ["resting-energy sex=man mass=20kg height=180cm age=30", "body mass in kg must be from 30 to 300"],
    ["highest-pulse age=90", "age must be from 18 to 89"],
    ["pulse-target rest=62 percent=60 slowed=yes age=55", "no medicine may slow the heart"],
    ["bmi mass=70kg height=175cm age=17", "age"],
  ])("%s: outside the people of the formula", async (line, wanted) => {
    const { exit, err } = await stave("reckon", ...line.split(" "));
    expect(exit).toBe(2);
    expect(err).toContain(wanted);
  });

  test("kilograms and pounds, feet and centimetres in one line agree with one unit throughout", async () => {
    const mixed = await stave("reckon", "bmi", "mass=154.3236lb", "height=5.741470ft", "age=40", "--json");
    const plain = await stave("reckon", "bmi", "mass=70kg", "height=175cm", "age=40", "--json");
    const value = ({ out }: { out: string }) => JSON.parse(out).result.figures[0].value as number;
    expect(value(mixed)).toBeCloseTo(value(plain), 4);
  });
});

describe("fit: what a roster says of health", () => {
  const PLACES = ["--places", `${ROOM}/places.yaml`];
  const roster = (change: (text: string) => string): string => {
    const all = readFileSync(`${ROOM}/people.yaml`, "utf8");
    const start = all.indexOf("  - id: marguerite");
    const end = all.indexOf("\n\n", start);
    return write("people.yaml", `stave: 1\npeople:\n${change(all.slice(start, end < 0 ? undefined : end))}\n`);
  };
  const fit = (people: string) =>
    stave("fit", `${ROOM}/harbour-steps.yaml`, "--people", people, ...PLACES, "--from", "2027-01-04");

  test("a statement whose day of asking was yesterday stays, and asks", async () => {
    const { exit, out } = await fit(roster((text) => text.replace("recheck: 2027-01-20", "recheck: 2027-01-03")));
    expect(exit).toBe(0);
    expect(out).toContain("to be asked again since Sunday 3 January 2027");
    expect(out).toContain("It stays until then.");
  });
  test("what to act on and whom to ask stands under the name, once for each statement", async () => {
    const { out } = await fit(roster((text) => text));
    expect(out).toContain("Mind shoulder pain when raising or pressing: rows stop with the elbow at the trunk;");
    expect(out).toContain("Ask: eye specialist before the start.");
    expect(out.match(/^ {2}Mind /gm)).toHaveLength(2);
  });
  test("a condition that is not known is refused with what may be stated, and no plan is made", async () => {
    const { exit, out, err } = await fit(roster((text) => text.replace("statement: shoulder", "statement: lupus")));
    expect([exit, out]).toEqual([2, ""]);
    expect(err).toContain("Found: lupus. Allowed: pregnant, postnatal, pressure");
  });
  test("two statements at once: no set is asked with less in reserve than the stricter of the two wants", async () => {
    const people = roster((text) => text.replace("statement: eye", "statement: postnatal"));
    const { out } = await stave(
      "fit",
      `${ROOM}/harbour-steps.yaml`,
      "--people",
      people,
      ...PLACES,
      "--from",
      "2027-01-04",
      "--json",
    );
    const reserves = [...out.matchAll(/"reserve":\s*\{\s*"from":\s*(\d)/g)].map(([, from]) => Number(from));
    expect(reserves.length).toBeGreaterThan(10);
    expect(Math.min(...reserves)).toBe(4);
  });
});

/** Questions about effort as a coach meets them. Each answer is worked beside it from the printed formula. */
import { describe, expect, test } from "vitest";
import { reckon } from "./index.ts";

function told(name: string, ...answers: readonly string[]) {
  const reckoned = reckon(name, answers);
  if (!reckoned.ok) throw new Error(reckoned.problems.map(({ code, allowed }) => `${code}: ${allowed}`).join());
  return Object.fromEntries(reckoned.value.figures.map((figure) => [figure.what, figure]));
}
const refused = (name: string, ...answers: readonly string[]) => expect(() => told(name, ...answers));

describe("a band of the reserve, whole beats half up", () => {
  // karvonen1957 over robergsLandwehr2002: 220 − 34 = 186, 186 − 76 = 110; 76 + 66 = 142, 76 + 71.5 = 147.5, 76 + 77 = 153.
  const woman = ["rest=76", "slowed=no", "age=34", "by=220 - age"];
  test("60 to 70 % of a reserve of 110 is 142 to 153; at 65 % the half beat is told and not hidden", () => {
    expect(told("pulse-target", "percent=60", "to=70", ...woman)["pulse-band"]).toMatchObject({ low: 142, high: 153 });
    expect(told("pulse-target", "percent=65", ...woman)["pulse-target"]?.value).toBe(147.5);
    expect(told("pulse-target", "percent=65", "to=65.1", "rest=76", "slowed=no", "max=186")["pulse-band"]?.low).toBe(
      148,
    );
  });
  // tanaka2001: 208 − 0.7 × 34 = 184.2
  test("without a word the other line of age is taken, and said", () => {
    expect(told("pulse-target", "percent=60", "rest=76", "slowed=no", "age=34")["highest-pulse"]?.value).toBeCloseTo(
      184.2,
    );
  });
  test("neither age nor a measured highest: said what is missing; an upper share under the lower is refused", () => {
    refused("pulse-target", "percent=60", "rest=76", "slowed=no").toThrow(/age, or a measured .* missing/);
    refused("pulse-target", "percent=60", "to=50", ...woman).toThrow(/over 60/);
  });
});

describe("62 years, a medicine that slows the heart", () => {
  // brawner2004: 164 − 0.7 × 62 = 120.6, standard error 18
  test("the one equation is told with its error, and no target is made of it", () => {
    const figures = told("highest-pulse", "age=62", "slowed=yes");
    expect(figures["highest-pulse"]).toMatchObject({ low: expect.closeTo(102.6), high: expect.closeTo(138.6) });
    expect(figures["pulse-no-target"]?.value).toBe("effort and talking");
    refused("pulse-target", "rest=54", "percent=50", "slowed=yes", "age=62").toThrow(/effort and talking/);
  });
  test("outside its ages nothing is told; a highest that was measured under the medicine gives a target", () => {
    refused("highest-pulse", "age=35", "slowed=yes").toThrow(/40 to 80/);
    expect(told("pulse-target", "rest=54", "percent=50", "slowed=yes", "max=130")["pulse-target"]?.value).toBe(92);
  });
  // Common practice, no source: sings, talks in sentences, a few words.
  test.each([
    ["can sing", "light"],
    ["whole sentences", "moderate"],
    ["a few words", "vigorous"],
  ])("%s is %s", (can, wanted) => {
    expect(told("talk-test", `can=${can}`)["intensity"]?.value).toBe(wanted);
  });
});

describe("half an hour of running in four weeks, from nothing", () => {
  // Eight levels to go, three good runs each: 24 runs.
  test.each([
    [3, 8],
    [2, 12],
    [5, 5],
  ])("with %d runs a week it takes %d weeks at least", (runs, weeks) => {
    const figures = told("run-walk", "level=1", "end=done", "good=0", "away=0", `runs=${runs}`);
    expect(figures["run-weeks-least"]?.value).toBe(weeks);
  });
});

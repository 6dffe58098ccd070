import { expect, test } from "vitest";
import { day } from "../day.ts";
import { type Answers, DISEASES, newSince, SIGNS, screen, withNews } from "./index.ts";

const BORN = day("1967-05-05");
/** Active, a known disease of the heart, nothing to feel. */
const BEFORE: Answers = {
  on: day("2027-01-11"),
  by: "coach",
  active: true,
  disease: { ...Object.fromEntries(DISEASES.map((name) => [name, false])), heart: true },
  signs: Object.fromEntries(SIGNS.map((name) => [name, false])),
  wanted: "moderate",
};

test("a new sign stops; the day and the name are those of the news", () => {
  const now = withNews(BEFORE, { signs: ["chest pain"] }, day("2027-02-20"), "Ines");
  expect(newSince(BEFORE, now)).toEqual(["chest pain"]);
  expect(screen(now, BORN).screening).toMatchObject({ outcome: "stop", on: day("2027-02-20"), by: "Ines" });
  expect(BEFORE.signs["chest pain"]).toBe(false);
});

test("nothing new leaves all as it was", () => {
  const now = withNews(BEFORE, {}, day("2027-02-20"), "Ines");
  expect(newSince(BEFORE, now)).toEqual([]);
  expect(screen(now, BORN).readiness).toBe(screen(BEFORE, BORN).readiness);
});

test("a wish for harder work is judged anew", () => {
  expect(screen(withNews(BEFORE, { wanted: "vigorous" }, day("2027-02-20"), "Ines"), BORN).readiness).toBe(
    "ask a doctor before vigorous",
  );
});

test("somebody who began inactive and has trained since is stopped by a new disease's sign", () => {
  const began: Answers = { ...BEFORE, active: false, disease: { ...BEFORE.disease, heart: false } };
  const now = withNews(began, { signs: ["faint"] }, day("2027-06-01"), "Ines", true);
  expect(screen(now, BORN).screening.outcome).toBe("stop");
  expect(screen(withNews(began, { signs: ["faint"] }, day("2027-06-01"), "Ines"), BORN).screening.outcome).toBe(
    "ask a doctor first",
  );
});

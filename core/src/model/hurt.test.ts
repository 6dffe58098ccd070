import { expect, test } from "vitest";
import { HURT_PLACES, STRESS_TAGS, stressesOf } from "./index.ts";

test("every place has stresses that exist, or stops everything", () => {
  for (const place of Object.keys(HURT_PLACES)) {
    const tags = stressesOf(place);
    if (tags === "everything") continue;
    expect(tags.length).toBeGreaterThan(0);
    for (const tag of tags) expect(STRESS_TAGS).toContain(tag);
  }
  expect(Object.keys(HURT_PLACES).filter((place) => stressesOf(place) === "everything")).toEqual(["chest", "dizzy"]);
});

test("other words, names of what every object has among them, tell no stress", () => {
  for (const words of ["elsewhere", "", "constructor", "__proto__", "Knee"]) expect(stressesOf(words)).toEqual([]);
});

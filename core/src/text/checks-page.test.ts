import { expect, test } from "vitest";
import { CHECKS } from "../checks/index.ts";
import { checksPage } from "./checks-page.ts";

test("the page has every check with its reason and source, and an example where one is given", () => {
  const page = checksPage([
    {
      check: "slot/unknown-exercise",
      severity: "stop",
      at: [],
      data: { exercise: "goblet-sqaut", near: [] },
      remedies: [],
    },
  ]);
  for (const { id } of CHECKS) expect(page).toContain(`## \`${id}\``);
  expect(page.match(/Sources?:/g)).toHaveLength(CHECKS.length);
  expect(page.match(/For example:/g)).toHaveLength(1);
  expect(page).toContain("goblet-sqaut");
});

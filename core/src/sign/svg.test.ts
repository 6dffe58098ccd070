import { expect, test } from "vitest";
import { PRINTED, STYLED, svgOf } from "./index.ts";

const WORD = {
  width: 20,
  height: 20,
  shapes: [{ kind: "word", x: 1, y: 2, word: "<b>&", role: "correction" }],
} as const;

test("what people wrote cannot become markup", () => {
  const svg = svgOf(WORD, PRINTED, '"><script>');
  expect(svg).toContain("&lt;b&gt;&amp;");
  expect(svg).toContain('aria-label="&quot;&gt;&lt;script&gt;"');
});
test("on a page colours are the style sheet's, on paper they are fixed", () => {
  expect(svgOf(WORD, STYLED)).toContain('fill="var(--correction)"');
  expect(svgOf(WORD, PRINTED)).toContain('fill="#a63d2f"');
});
test("with words beside it a sign is hidden from readers of the screen, alone it is a picture with a name", () => {
  expect(svgOf(WORD, STYLED)).toContain('aria-hidden="true"');
  expect(svgOf(WORD, STYLED, "8, 8, 7")).toContain('role="img" aria-label="8, 8, 7"');
});
test("an outline lies inside its bar", () => {
  const bar = { kind: "bar", x: 4, y: 4, width: 10, height: 20, fill: "none", outline: "ink", dashed: true } as const;
  expect(svgOf({ width: 20, height: 30, shapes: [{ ...bar, weight: 1 }] }, PRINTED)).toContain(
    '<rect x="4.5" y="4.5" width="9" height="19" fill="none" stroke="#1d2733" stroke-width="1" stroke-dasharray="2 2"/>',
  );
});

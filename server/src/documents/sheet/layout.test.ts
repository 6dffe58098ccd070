import type { SheetPage } from "@stave/core/report";
import { afterAll, describe, expect, test } from "vitest";
import { Press } from "./press.ts";
import { type PrintedPage, readBack } from "./read-back.ts";
import { trialCell, trialPage, trialRow, trialSheet } from "./trial-sheet.ts";

const press = new Press();
afterAll(() => press.close());

async function printed(pages: readonly SheetPage[], paper: "a4" | "us-letter" = "a4"): Promise<readonly PrintedPage[]> {
  return (await readBack(await press.print("sheet.typ", trialSheet(pages, paper)))).pages;
}

function letters(text: string): string {
  return text.replace(/[\s\u200b]/g, "");
}

/** Where the farthest ink of a page stands from its left and right edge, in points. */
function edges({ size: [width], pieces, boxes }: PrintedPage): readonly [left: number, right: number] {
  const all = [...pieces, ...boxes];
  return [Math.min(...all.map(({ x }) => x)), width - Math.max(...all.map((piece) => piece.x + piece.width))];
}

describe("a name is text, whatever it holds", () => {
  const hostile = [
    "#let x = 1",
    '#eval("1+1")',
    "#import sys: *",
    "*bold* _slanted_ `raw`",
    "$x^2$ \\ \\n \\u{41}",
    "\"double\" and 'single' ‘curly’",
    "// no comment /* none */",
    "= Heading",
    "<label> @label",
    "- one + two / three: four",
    "a~b---c...",
    "https://stave.example/#name",
  ];
  test.each(hostile)("%s", async (name) => {
    const [page] = await printed([trialPage({ title: name, left: [name, name, name], rows: [trialRow({ name })] })]);
    expect(letters(page!.text).split(letters(name))).toHaveLength(6);
    expect(page!.roles.filter((role) => role === "H1")).toHaveLength(1);
    expect(page!.roles).not.toContain("Link");
  });
});

describe("any script prints", () => {
  const names = [
    ["Cyrillic", "Дмитрий Щукин"],
    ["Greek", "Ευαγγελία Ξένου"],
    ["Vietnamese", "Nguyễn Thị Ngọc Ánh"],
    ["Turkish", "Işıl Öğütçü"],
    ["Chinese", "王小明"],
    ["Japanese", "さくら 山田"],
    ["Korean", "김민수"],
    ["Thai", "สมชาย"],
    ["Devanagari", "राम"],
    ["Hebrew", "נועה"],
    ["Arabic", "ليان"],
    ["Armenian", "Արամ"],
    ["Georgian", "გიორგი"],
  ] as const;
  test.each(names)("%s: %s", async (_, name) => {
    const [page] = await printed([trialPage({ left: [name, "Trial", "Hall"] })]);
    // Marks that are drawn by themselves come back a second time, and right-to-left letters as they stand on paper.
    const back = new Set(page!.text.normalize("NFC"));
    expect([...name].filter((letter) => !back.has(letter))).toEqual([]);
    expect(back.has("□")).toBe(false);
    expect(page!.fonts.every(({ embedded }) => embedded)).toBe(true);
  });

  test("Japanese and Korean names take their own fonts, Chinese ones theirs", async () => {
    const fonts = async (name: string) => {
      const [page] = await printed([trialPage({ left: [name] })]);
      return page!.fonts.map((font) => font.name.replace(/^[A-Z]{6}\+/, "").replace(/-.*/, ""));
    };
    expect(await fonts("山田 さくら")).toContain("NotoSansJP");
    expect(await fonts("山田 さくら")).not.toContain("NotoSansHans");
    expect(await fonts("김민수 金")).toContain("NotoSansKR");
    expect(await fonts("金")).toContain("NotoSansHans");
  });

  test("a letter that no font has becomes a square, and the rest of the sheet stands", async () => {
    const [page] = await printed([trialPage({ left: ["Ann 😀 1⃣ é ተስፋ", "Trial"], rows: [trialRow({ name: "1 é" })] })]);
    expect(letters(page!.text)).toContain("Ann□1é□□□");
    expect(page!.text).toContain("1 é");
  });
});

describe("long words", () => {
  test.each(["a4", "us-letter"] as const)("80 letters without a blank stay on %s", async (paper) => {
    const long = "W".repeat(80);
    const title = trialPage({ title: long, left: [long, `${long} ${long}`, long], rows: [trialRow({ name: long })] });
    const [page] = await printed([title], paper);
    expect(letters(page!.text).split("W".repeat(80))).toHaveLength(7);
    const [left, right] = edges(page!);
    expect(left).toBeGreaterThan(30);
    expect(right).toBeGreaterThan(30);
  });
});

/** How high the lines of boxes stand. */
function heights(page: PrintedPage): ReadonlySet<number> {
  return new Set(page.boxes.map(({ y }) => Math.round(y)));
}

describe("boxes", () => {
  test.each([true, false])("three sets in each of four weeks stand in one line, split: %s", async (split) => {
    const cells = [1, 2, 3, 4].map(() => trialCell({ split }));
    for (const paper of ["a4", "us-letter"] as const) {
      const [page] = await printed([trialPage({ rows: [trialRow({ cells })] })], paper);
      expect(page!.boxes).toHaveLength(12);
      expect(heights(page!).size).toBe(1);
    }
  });

  test.each([1, 2, 4, 5, 6, 12, 20])("%s sets: as many boxes, none over another", async (count) => {
    for (const split of [true, false]) {
      const cells = [1, 2, 3, 4].map(() => trialCell({ split, boxes: count }));
      const [page] = await printed([trialPage({ rows: [trialRow({ cells })] })]);
      expect(page!.boxes).toHaveLength(4 * count);
      for (const [index, a] of page!.boxes.entries())
        for (const b of page!.boxes.slice(index + 1))
          expect(a.x + a.width <= b.x || b.x + b.width <= a.x || a.y + a.height <= b.y || b.y + b.height <= a.y).toBe(
            true,
          );
    }
  });
});

describe("one session, one page", () => {
  const weeks = (count: number) => trialPage().weeks.slice(4 - count);
  const full = (count: number, boxes: number, split: boolean) => [
    trialRow({ name: "Warm up", cells: [], note: "Talk in full sentences. ".repeat(8) }),
    ...[0, 1, 2, 3, 4, 5, 6, 7].map((at) =>
      trialRow({
        turn: at % 2 === 0 ? "first" : "last",
        above: at % 2 === 0 ? "in turn, rest 60 s between" : null,
        dose: `${boxes} × 8–10 each side, rest 90 s, 2 in reserve`,
        cells: weeks(count).map(({ light }) =>
          trialCell({ boxes, split, dose: light === null ? null : "2 × 8–10 each side, 3 in reserve" }),
        ),
      }),
    ),
    trialRow({
      name: "Upright cycle",
      cells: weeks(count).map(() => trialCell({ boxes: 0, load: { label: "done", text: "" } })),
    }),
  ];
  const words = "a sentence that goes on for about as long as the longest of the foot's own lines does";
  const foot = [1, 2, 3, 4].map((n) => [`Head ${n}`, words] as const);
  const open = "Left open: push. Ask your coach.";

  describe.each(["a4", "us-letter"] as const)("%s", (paper) => {
    test.each([
      [4, 3],
      [3, 4],
      [2, 6],
    ])("eight movements in pairs, %s weeks of %s sets, each in one line", async (count, boxes) => {
      for (const split of [true, false]) {
        const page = trialPage({ weeks: weeks(count), rows: full(count, boxes, split), foot, open });
        const pages = await printed([page], paper);
        expect(pages).toHaveLength(1);
        expect(pages[0]!.boxes).toHaveLength(8 * count * boxes);
        for (const line of heights(pages[0]!))
          expect(pages[0]!.boxes.filter(({ y }) => Math.round(y) === line).length % boxes).toBe(0);
        expect(Math.min(...pages[0]!.pieces.map(({ y }) => y))).toBeGreaterThan(20);
      }
    });
  });

  test("a session with room is set larger than one that fills its page", async () => {
    const tallest = (page: PrintedPage) => page.pieces.map(({ height }) => height).sort((a, b) => b - a)[3]!;
    const [small] = await printed([trialPage({ rows: full(4, 3, false).slice(1, 2), foot })]);
    const [crowded] = await printed([trialPage({ rows: full(4, 3, false), foot })], "us-letter");
    expect(tallest(small!)).toBeGreaterThan(tallest(crowded!));
  });
});

test("a bracket ties what is done in turn, and nothing else", async () => {
  const thick = async (turns: readonly ("alone" | "first" | "middle" | "last")[]) => {
    const [page] = await printed([trialPage({ rows: turns.map((turn) => trialRow({ turn })) })]);
    const left = Math.min(...page!.lines.map(({ x }) => x));
    const upright = page!.lines.filter(({ x, width, height }) => x - left < 1 && width < 0.01 && height > 20);
    return {
      tall: upright.reduce((sum, { height }) => sum + height, 0),
      hooks: page!.lines.filter(({ width }) => width > 5 && width < 7).length,
    };
  };
  expect(await thick(["alone", "alone"])).toEqual({ tall: 0, hooks: 0 });
  const pair = await thick(["first", "last"]);
  const round = await thick(["first", "middle", "last"]);
  expect(pair.hooks).toBe(2);
  expect(round.hooks).toBe(2);
  expect(round.tall / pair.tall).toBeCloseTo(1.5, 1);
});

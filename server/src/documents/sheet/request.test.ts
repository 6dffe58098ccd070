import { readFileSync } from "node:fs";
import { CATALOGUE } from "@stave/core/exercises";
import { requestPage } from "@stave/core/report";
import { type AnswersFile, adviceRequest, beforeSession, readAnswers, readToday, screen } from "@stave/core/screen";
import { en, namesFrom } from "@stave/core/text";
import { afterAll, expect, test } from "vitest";
import { Press } from "./press.ts";
import { readBack } from "./read-back.ts";

const press = new Press();
afterAll(() => press.close());

const NAMES = namesFrom(CATALOGUE);
const read = (name: string) => readFileSync(`examples/ropewalk/${name}.yaml`, "utf8");

function answersOf(text: string): AnswersFile {
  const found = readAnswers(text, "answers");
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found.value.value;
}

async function printed(file: AnswersFile, paper: "a4" | "us-letter" = "a4", today?: string) {
  const said = today === undefined ? undefined : readToday(today, "today");
  const day = said?.ok ? said.value.value.today : undefined;
  const before = day === undefined ? undefined : beforeSession(file, day);
  const screened = before?.screened ?? screen(file.answers, file.born);
  const session = day === undefined || before === undefined ? undefined : { today: day, before };
  const answer = adviceRequest(file, screened, session);
  if (!answer.ok) throw new Error(answer.reason.code);
  return await readBack(await press.print("request.typ", requestPage(answer.request, "2015-11", NAMES, paper)));
}

test("one page of PDF/UA with who, what is asked, why, room for the answer, and the consent", async () => {
  const { pages, title, language, tagged, standard, dated } = await printed(answersOf(read("screening-tobiah")));
  expect({ title, language, tagged, standard, dated }).toEqual({
    title: en.request.title,
    language: "en",
    tagged: true,
    standard: "1",
    dated: false,
  });
  expect(pages).toHaveLength(1);
  const [page] = pages;
  for (const words of [
    "Tobiah Okonrell, born Monday 3 June 1968",
    "From Imke Farrowdale, coach, on Monday 7 December 2026",
    "Said to be felt: ankle swelling.",
    "Tobiah Okonrell agreed on Monday 7 December 2026 that this page is shared with the clinician",
    en.request.efforts.moderate,
    en.request.none,
  ])
    expect(page!.text).toContain(words);
  expect(page!.text).not.toContain(en.request.efforts.vigorous);
  expect(page!.roles.filter((role) => /^H\d$/.test(role))).toEqual(["H1", "H2", "H2", "H2"]);
  expect(page!.boxes).toHaveLength(3);
  expect(page!.boxes.every(({ artifact }) => artifact)).toBe(true);
  expect(page!.lines).toHaveLength(6);
  expect(page!.fonts.every(({ embedded }) => embedded)).toBe(true);
});

test("a held day: its readings and the rule, and no fact that did not cause it", async () => {
  const { pages } = await printed(answersOf(read("screening-tobiah")), "us-letter", read("before-tobiah"));
  expect(pages[0]!.size).toEqual([612, 792]);
  expect(pages[0]!.text).toContain("184/112 mmHg then 182/111 mmHg (held by “lifting 2024”, 2024)");
  expect(pages[0]!.text).toContain("a second tablet for the pressure since Monday");
  expect(pages[0]!.text).not.toMatch(/knee|sleep|slept|photos|6\.5/i);
});

test("the longest answers that a file takes stay on one page", async () => {
  const long = Array.from({ length: 20 }, (_, at) => `${at} ${"a long story of what happened then ".repeat(5)}`);
  const past = `past: [${long.map((each) => JSON.stringify(each)).join(", ")}]\n`;
  const file = answersOf(read("screening-tobiah") + past);
  for (const paper of ["a4", "us-letter"] as const) {
    const { pages } = await printed(file, paper);
    expect(pages).toHaveLength(1);
    expect(pages[0]!.text).toContain("19 a long story");
  }
});

test("what people write is text, whatever it holds", async () => {
  const name = '#eval("1") *b* \\ $x$';
  const file = answersOf(read("screening-tobiah").replace("Tobiah Okonrell", () => `'${name}'`));
  const [page] = (await printed(file)).pages;
  expect(page!.text.replace(/\s/g, "").split(name.replace(/\s/g, "")).length - 1).toBe(3);
});

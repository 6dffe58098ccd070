import { rmSync } from "node:fs";
import type { Morning, PersonOutput, RulesOutput } from "@stave/core/api";
import type { Browser } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { openChromium } from "../testing/open-chromium.ts";
import { Coach } from "./testing/coach.ts";
import { DeskServer } from "./testing/desk-server.ts";

/** Two who earn steps, and one whose knee hurts. */
const PEOPLE = ["esteban", "wren", "yusra"];

let browser: Browser;
let folder: string;
let server: DeskServer;
let coach: Coach;

beforeAll(async () => {
  browser = await openChromium();
  folder = await DeskServer.prepare(PEOPLE, async (made) => {
    for (const one of PEOPLE) await made.train(one, 2, one === "yusra" ? 0 : 2);
    await made.hurtInSquat("yusra", 6);
  });
}, 120_000);
afterAll(async () => {
  await browser?.close();
  rmSync(folder, { recursive: true, force: true });
});
beforeEach(async () => {
  server = await DeskServer.start(folder);
  coach = await Coach.sit(browser, server.origin);
});
afterEach(async () => {
  await coach.leave();
  await server.end();
  expect(coach.faults).toEqual([]);
});

/** The button that takes a step; stops are paused by another. */
const STEP = /^(Go|Set): /;

const waiting = async () =>
  (await server.get<Morning>("morning")).people.flatMap(({ items }) => items.map(({ proposal }) => proposal.proposal));
const person = (id: string) => server.get<PersonOutput>(`people/${id}`);

describe("standing rules", () => {
  test("set and ended from the page, with what no rule may touch; the list says why a rule left something", async () => {
    await coach.open("/rules");
    await coach.sees("No rule is in force.");
    await coach.sees(/no rule touches limits, pain/);
    await coach.page.getByLabel("From at least so many sessions").fill("40");
    await coach.button("Set the rule").click();
    await coach.sees(/In force: version 1, set by Imke Farrowdale/);
    await coach.open("/");
    await coach.sees(/No rule took it: /);
    await coach.open("/rules");
    await coach.button("End the rule").click();
    await coach.sees("No rule is in force.");
    expect((await server.get<RulesOutput>("rules")).rules).toMatchObject([{ version: 2, takes: [] }]);
  });
});

describe("the morning list", () => {
  test("shows what the server says, stops first, with what is behind it", async () => {
    await coach.open("/");
    const titles = await coach.titles();
    expect(titles).toHaveLength((await waiting()).length);
    expect(titles[0]).toMatch(/^Stop: Pause /);
    expect(titles.some((title) => /: (go to|range) /.test(title))).toBe(true);
    await coach.sees(/over the goal/);
    await coach.sees(/6 of 10, knee/);
    await coach.sees(/ask how the morning after was/);
  });

  test("by keyboard alone: arrow, Enter, and the focus is on the next; U takes it back", async () => {
    await coach.open("/");
    const before = await waiting();
    await coach.press("ArrowDown", "ArrowDown");
    const taken = await coach.focus();
    await coach.press("ArrowDown");
    const next = await coach.focus();
    await coach.press("ArrowUp", "Enter");
    await coach.hears(/Taken/);
    expect(await coach.focus()).toBe(next);
    expect(taken).not.toBe(next);
    expect(await waiting()).toEqual(before.filter((_, at) => at !== 1));
    expect((await coach.titles())[1]).toMatch(/^Taken\. /);
    await coach.press("u");
    await coach.hears(/Undone/);
    expect(await waiting()).toEqual(before);
    expect((await coach.titles())[1]).not.toMatch(/^Taken/);
  });

  test("a key held down or a double click decides once", async () => {
    await coach.open("/");
    const before = await waiting();
    const go = coach.button(STEP).first();
    await go.dblclick();
    await coach.hears(/Taken/);
    await expect.poll(waiting).toHaveLength(before.length - 1);
    await coach.page.waitForFunction(() => document.activeElement?.classList.contains("first"));
    await coach.page.keyboard.down("Enter");
    await coach.page.keyboard.down("Enter");
    await coach.page.keyboard.down("Enter");
    await coach.page.keyboard.up("Enter");
    await expect.poll(waiting).toHaveLength(before.length - 2);
  });

  test("A marks all but stops, and again none", async () => {
    await coach.open("/");
    const steps = await coach.button(STEP).count();
    await coach.press("a");
    await coach.sees(`${steps} decisions marked`);
    const stops = await coach.page.getByRole("checkbox", { name: /^Mark Pause/ }).all();
    expect(await Promise.all(stops.map((stop) => stop.isChecked()))).not.toContain(true);
    await coach.press("a");
    expect(await coach.button(/^Take \d/).count()).toBe(0);
  });

  test("several at once: what says the same is taken, though the first answer changed what the second is made from", async () => {
    await coach.open("/");
    const before = await waiting();
    const wren = (await server.get<Morning>("morning")).people.find((one) => one.person.id === "wren")!;
    const rows = wren.items.slice(1, 3).map(({ proposal }) => coach.page.locator(`[data-row="${proposal.proposal}"]`));
    for (const row of rows) {
      await row.getByRole("button", { name: STEP }).focus();
      await coach.press("m");
    }
    await coach.press("Enter");
    await coach.hears(/2 decisions taken/);
    expect(await waiting()).toHaveLength(before.length - 2);
    await coach.press("Control+z");
    await coach.hears(/2 decisions undone/);
    expect(await waiting()).toEqual(before);
  });

  test("answered elsewhere in the meantime: it is said, and nothing is decided twice", async () => {
    await coach.open("/");
    const step = coach.button(STEP).first();
    await step.hover();
    const { people } = await server.get<Morning>("morning");
    const first = people.find(({ items }) => items.some(({ stop }) => !stop))!;
    const { proposal } = first.items.find(({ stop }) => !stop)!.proposal;
    await server.post("decisions", { id: "decided-elsewhere", person: first.person.id, kind: "refused", proposal });
    await coach.sees("The list has changed.");
    await step.click();
    await coach.sees(/No such proposal waits/);
    await coach.page.mouse.move(5, 5);
    await coach.sees(/was not taken\. It has changed meanwhile/);
    expect((await server.get<Morning>("morning")).decided.map(({ kind }) => kind)).toEqual(["refused"]);
  });

  test("another answer, typed: slips are told with their place, Escape gives the focus back, the answer stands", async () => {
    await coach.open("/");
    const go = coach.button(STEP).first();
    await go.focus();
    const name = await coach.focus();
    await coach.press("o");
    const field = coach.page.getByRole("textbox", { name: "A dose or a load of your own" });
    await field.fill("3 x 12-8");
    await coach.sees(/At character 5: .*8–12/);
    await coach.press("Escape");
    expect(await coach.focus()).toBe(name);
    await coach.press("o");
    expect(await field.inputValue()).toBe("3 x 12-8");
    await field.fill("14 kg");
    await coach.sees(/It would be .*14 kg/);
    await coach.press("Enter");
    await coach.hears(/Changed/);
    const { decided } = await server.get<Morning>("morning");
    expect(decided).toHaveLength(1);
    expect(decided[0]).toMatchObject({ kind: "changed" });
  });

  test("refused: nothing changes, and it does not come again", async () => {
    await coach.open("/");
    const before = await waiting();
    await coach.button(STEP).first().focus();
    await coach.press("r");
    await coach.hears(/Left as it is/);
    expect(await waiting()).toHaveLength(before.length - 1);
    await coach.open("/");
    expect(await coach.titles()).toHaveLength(before.length - 1);
  });

  test("the server stopped: it is said, nothing typed is lost, and asked again it is decided once", async () => {
    await coach.open("/");
    await server.down();
    await coach.sees(/The server does not answer/);
    await coach.button(STEP).first().focus();
    await coach.press("o");
    await coach.page.getByRole("textbox", { name: "A dose or a load of your own" }).fill("13 kg");
    await coach.press("Enter");
    await coach.sees(/Not sent\. The server does not answer/);
    await server.up();
    await coach.hears(/answers again/);
    await coach.button(STEP).first().focus();
    await coach.press("o");
    const field = coach.page.getByRole("textbox", { name: "A dose or a load of your own" });
    expect(await field.inputValue()).toBe("13 kg");
    await coach.press("Escape");
    await coach.button(STEP).first().click();
    await coach.hears(/Taken/);
    expect((await server.get<Morning>("morning")).decided).toHaveLength(1);
  });

  test("live: what others decide moves nothing under an open dialog, and is there when it is closed", async () => {
    await coach.open("/");
    const before = await coach.titles();
    const { people } = await server.get<Morning>("morning");
    const first = people[0]!;
    await coach.button(STEP).last().focus();
    await coach.press("o");
    await server.post("decisions", {
      id: "decided-elsewhere",
      person: first.person.id,
      kind: "refused",
      proposal: first.items[0]!.proposal.proposal,
    });
    await coach.sees("The list has changed.");
    expect(await coach.titles()).toEqual(before);
    await coach.press("Escape");
    await expect.poll(() => coach.titles()).toHaveLength(before.length - 1);
    expect(await coach.focus()).toMatch(STEP);
  });

  test("? shows the keys", async () => {
    await coach.open("/");
    await coach.press("?");
    await coach.sees("take the decision; open the person or the place in the week");
    await coach.press("Escape");
    expect(await coach.page.getByRole("dialog").count()).toBe(0);
  });
});

describe("people", () => {
  test("the list follows the typing, and what was found has an address", async () => {
    await coach.open("/people");
    await coach.press("f");
    await coach.page.keyboard.type("WREN");
    await coach.sees(`1 of ${PEOPLE.length} shown`);
    expect(coach.page.url()).toMatch(/\/people\?find=WREN$/);
    await coach.open("/people?find=wren");
    expect(await coach.page.getByRole("row").count()).toBe(2);
    await coach.press("ArrowDown");
    expect(await coach.focus()).toMatch(/^Wren/);
    await coach.press("Enter");
    await coach.page.waitForURL(/\/people\/wren$/);
  });
});

describe("one person", () => {
  test("the week in lanes, with its reasons; arrows go from place to place", async () => {
    await coach.open("/people/esteban");
    const { plan } = await person("esteban");
    const week = plan.phases[0]!.weeks[2]!;
    const slots = week.sessions.flatMap(({ blocks }) => blocks.flatMap((block) => block.slots));
    expect(await coach.page.locator("[data-column]").count()).toBe(slots.length);
    await coach.page.locator('[data-column="0"]').first().focus();
    await coach.press("ArrowRight");
    expect(await coach.page.evaluate(() => (document.activeElement as HTMLElement).dataset["column"])).toBe("1");
  });

  test("a load is typed over and pinned, stands after a new start, and is undone", async () => {
    await coach.open("/people/esteban");
    const made = (await person("esteban")).plan.id;
    await coach
      .button(/^Goblet squat: /)
      .first()
      .click();
    await coach.page.getByRole("textbox", { name: "Load" }).fill("12 kg");
    await coach.press("Enter");
    await coach.hears(/Pinned/);
    const pinned = await person("esteban");
    expect(pinned.plan.id).not.toBe(made);
    await coach.open("/people/esteban");
    await coach.sees("pinned");
    await coach.sees(/12 kg/);
    await coach
      .button(/^Undo: /)
      .first()
      .click();
    await coach.hears(/Undone/);
    expect((await person("esteban")).plan.id).toBe(made);
  });

  test("a link for the phone is shown once, and leads to the phone's page", async () => {
    await coach.open("/people/esteban");
    await coach.button("Make a phone link").click();
    const address = await coach.page.getByRole("textbox", { name: "Address" }).inputValue();
    expect(address).toMatch(new RegExp(`^${server.origin}/go/#[\\w-]{43}$`));
    await coach.sees(/Works until/);
    await coach.press("Escape");
    expect(await coach.page.content()).not.toContain(address);
  });

  test("somebody unknown is told as such", async () => {
    await coach.page.goto(`${server.origin}/people/nobody`);
    await coach.sees(/There is nobody of that id/);
  });
});

const PAGES = ["/", "/people", "/people/esteban"];
const LOOKS = [
  ["light", {}, undefined],
  ["dark", { colorScheme: "dark" }, "color-contrast"],
  ["320 px wide", { viewport: { width: 320, height: 700 } }, "target-size"],
] as const;

describe("for everybody", () => {
  test.each(LOOKS)("%s: nothing breaks WCAG 2.2 AA, nothing is wider than its window", async (_, options, rule) => {
    const other = await Coach.sit(browser, server.origin, options);
    for (const path of PAGES) {
      await other.open(path);
      const seen = { path, wrongs: await other.wrongs(rule), overflow: await other.overflow() };
      expect(seen).toEqual({ path, wrongs: [], overflow: 0 });
    }
    await other.open("/");
    await other
      .button(/^Other: /)
      .last()
      .click();
    expect(await other.wrongs(rule)).toEqual([]);
    await other.leave();
  });

  test("text at twice its size: nothing is cut off or lies over the edge", async () => {
    for (const path of PAGES) {
      await coach.open(path);
      await coach.page.evaluate(() => document.documentElement.style.setProperty("font-size", "200%"));
      expect({ path, overflow: await coach.overflow() }).toEqual({ path, overflow: 0 });
    }
  });

  test("on paper there is no control, and nothing of the plan is left out", async () => {
    await coach.open("/people/esteban");
    await coach.page.emulateMedia({ media: "print" });
    expect(await coach.button("Make a phone link").isVisible()).toBe(false);
    expect(await coach.page.getByText("Squat", { exact: true }).isVisible()).toBe(true);
  });
});

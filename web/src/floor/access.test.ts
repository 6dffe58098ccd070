import { AxeBuilder } from "@axe-core/playwright";
import type { Browser, CDPSession } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { openChromium } from "../testing/open-chromium.ts";
import { Gym } from "./testing/gym.ts";
import { PhoneInHand } from "./testing/phone-in-hand.ts";

/** Least side of a control, in pixels: our own rule, above the 24 of WCAG 2.2, 2.5.8. */
const LEAST = 48;
const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/** Pages of the phone, each with the way to it from the one before. */
const PAGES: readonly (readonly [name: string, go: (phone: PhoneInHand, gym: Gym) => Promise<unknown>])[] = [
  ["a link", async (phone, gym) => phone.page.goto(gym.way.origin + (await gym.link()))],
  [
    "today",
    async (phone) => {
      await phone.tap("Put my plan on this phone");
      await phone.sees(/your sessions/);
    },
  ],
  ["warm-up", (phone) => phone.tap(/^Start/)],
  ["a set", (phone) => phone.tap("Warm, go on")],
  ["how it is done", (phone) => phone.page.getByText("How it is done").first().click()],
  [
    "a set that was said",
    async (phone) => {
      await phone.tap("Repetitions: one fewer");
      await phone.tap("2 more");
      await phone.tap("Load: heavier");
      await phone.tap(/^Rest/);
    },
  ],
  ["where it hurts", (phone) => phone.tap("This hurts")],
  [
    "the whole session",
    async (phone) => {
      await phone.tap("It does not hurt");
      await phone.tap("Whole session");
    },
  ],
  ["ending early", (phone) => phone.tap("End here for today")],
];

/** @returns controls that are narrower or lower than a thumb */
function smallTargets(phone: PhoneInHand): Promise<string[]> {
  return phone.page.evaluate((least) => {
    const controls = [...document.querySelectorAll<HTMLElement>("button, input, select, summary")];
    return controls
      .filter((control) => control.offsetParent !== null)
      .map((control) => ({ control, box: control.getBoundingClientRect() }))
      .filter(({ control, box }) => {
        const narrow = control instanceof HTMLInputElement || control instanceof HTMLSelectElement ? 24 : least;
        return box.height < least || box.width < narrow;
      })
      .map(
        ({ control, box }) => `${control.getAttribute("aria-label") ?? control.textContent} ${box.width}×${box.height}`,
      );
  }, LEAST);
}

/** @returns what reaches over the right edge of the screen, and controls whose words are cut off */
function cutOff(phone: PhoneInHand): Promise<string[]> {
  return phone.page.evaluate(() => {
    const width = document.documentElement.clientWidth;
    const over = [...document.querySelectorAll<HTMLElement>("main, main *")]
      .filter((one) => one.getBoundingClientRect().right > width + 0.5)
      .map((one) => `${one.tagName} reaches to ${one.getBoundingClientRect().right} of ${width}`);
    const cut = [...document.querySelectorAll<HTMLElement>("button, h1, h2, p")]
      .filter((one) => one.scrollWidth > one.clientWidth + 1 && one.clientWidth > 1)
      .map((one) => `"${one.textContent}" needs ${one.scrollWidth} of ${one.clientWidth}`);
    return [...over, ...cut];
  });
}

describe.each([
  ["at 390 px in light", { width: 390, height: 844 }, "light", []],
  ["at 390 px in the dark", { width: 390, height: 844 }, "dark", []],
  ["at 320 px", { width: 320, height: 568 }, "light", []],
  ["with text of 200 % at 320 px", { width: 320, height: 640 }, "light", ["--blink-settings=defaultFontSize=32"]],
] as const)("%s", (_, viewport, colorScheme, args) => {
  let gym: Gym;
  let browser: Browser;
  let phone: PhoneInHand;
  beforeAll(async () => {
    gym = await Gym.open();
    browser = await openChromium(args);
    phone = await PhoneInHand.take(browser, gym.way.origin, { viewport, colorScheme });
  });
  afterAll(async () => {
    await browser.close();
    await gym.end();
  });

  for (const [name, go] of PAGES) {
    test(`${name}: axe finds nothing, controls fit a thumb, nothing is cut off`, async () => {
      await go(phone, gym);
      await phone.page.waitForTimeout(100);
      const { violations } = await new AxeBuilder({ page: phone.page }).withTags(RULES).analyze();
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" | ")}`)).toEqual([]);
      expect(await smallTargets(phone)).toEqual([]);
      expect(await cutOff(phone)).toEqual([]);
      expect(phone.faults).toEqual([]);
    });
  }
});

describe("hands", () => {
  let gym: Gym;
  let browser: Browser;
  beforeAll(async () => {
    browser = await openChromium();
  });
  afterAll(() => browser.close());
  beforeEach(async () => {
    gym = await Gym.open();
  });
  afterEach(() => gym.end());

  test("keys alone put the plan on the phone, say a set, and end the session", async () => {
    const phone = await PhoneInHand.take(browser, gym.way.origin);
    const { keyboard } = phone.page;
    const focused = () =>
      phone.page.evaluate(
        () => document.activeElement?.getAttribute("aria-label") ?? document.activeElement?.textContent,
      );
    /** Walks by Tab until the focus stands on what is called so. */
    const walkTo = async (name: RegExp) => {
      for (let steps = 0; steps < 60; steps++) {
        await keyboard.press("Tab");
        if (name.test((await focused()) ?? "")) return;
      }
      throw new Error(`No walk by Tab leads to ${name}; it ended on ${await focused()}`);
    };
    await phone.page.goto(gym.way.origin + (await gym.link()));
    await phone.button(/^Put my plan/).waitFor();
    await walkTo(/^Put my plan/);
    await keyboard.press("Enter");
    await phone.sees(/your sessions/);
    await walkTo(/^Start/);
    await keyboard.press("Enter");
    await phone.button("Warm, go on").waitFor();
    await walkTo(/^Warm, go on$/);
    await keyboard.press("Space");
    await phone.button("Done").waitFor();
    await walkTo(/^Repetitions$/);
    const field = phone.page.getByRole("spinbutton", { name: "Repetitions" });
    expect(await field.getAttribute("aria-valuetext")).toMatch(/^not said/);
    await keyboard.press("ArrowUp");
    await phone.until(async () => (await field.getAttribute("aria-valuenow")) === "10");
    await keyboard.press("ArrowDown");
    await phone.until(async () => (await field.getAttribute("aria-valuenow")) === "9");
    await keyboard.press("Backspace");
    await phone.until(async () => (await field.getAttribute("aria-valuenow")) === null);
    await keyboard.type("12");
    await phone.until(async () => (await field.getAttribute("aria-valuenow")) === "12");
    await walkTo(/^Load: heavier/);
    await keyboard.press("Enter");
    await walkTo(/^2 more/);
    await keyboard.press("Space");
    await phone.button("2 more").and(phone.page.locator("[aria-pressed=true]")).waitFor();
    const before = await phone.progress();
    await walkTo(/^Done$/);
    await keyboard.press("Enter");
    await phone.until(async () => (await phone.progress()) !== before);
    await phone.button("Whole session").waitFor();
    await walkTo(/^Whole session$/);
    await keyboard.press("Enter");
    await phone.sees(/12 · /);
    await walkTo(/^End here/);
    await keyboard.press("Enter");
    await phone.button("End the session").waitFor();
    await walkTo(/^End the session$/);
    await keyboard.press("Enter");
    await phone.sees(/done, ended early/);
    expect(phone.faults).toEqual([]);
    await phone.close();
  });

  test("the thumb sets the stroke; resting on it says nothing", async () => {
    const phone = await PhoneInHand.take(browser, gym.way.origin, { isMobile: true });
    await phone.link(await gym.link());
    await phone.start();
    const touch = await phone.context.newCDPSession(phone.page);
    const field = phone.page.getByRole("spinbutton", { name: "Repetitions" });
    const box = (await phone.page.locator("[data-side=both]").boundingBox())!;
    const x = box.x + box.width / 2;
    await drag(touch, x, box.y + 40, box.y + 42);
    expect(await field.inputValue()).toBe("");
    await drag(touch, x, box.y + 40, box.y + 40 + box.height / 2);
    await phone.until(async () => (await field.inputValue()) !== "");
    const low = Number(await field.inputValue());
    expect(low).toBeLessThan(8);
    await drag(touch, x, box.y + box.height - 20, box.y + 10);
    await phone.until(async () => Number(await field.inputValue()) > low);
    await phone.done();
    await phone.tap("Whole session");
    await phone.sees(/set 1: \d+/);
    await phone.close();
  });
});

/** A finger that goes from one height to another. */
async function drag(touch: CDPSession, x: number, from: number, to: number): Promise<void> {
  await touch.send("Input.dispatchTouchEvent", { type: "touchStart", touchPoints: [{ x, y: from }] });
  for (let step = 1; step <= 8; step++) {
    const y = from + ((to - from) * step) / 8;
    await touch.send("Input.dispatchTouchEvent", { type: "touchMove", touchPoints: [{ x, y }] });
  }
  await touch.send("Input.dispatchTouchEvent", { type: "touchEnd", touchPoints: [] });
}

import AxeBuilder from "@axe-core/playwright";
import type { Browser, BrowserContextOptions, Locator, Page } from "playwright-core";

/** Longest that a page may take to show something, on a busy machine. */
const PATIENCE_MS = 20_000;

/** Tags of the rules of WCAG 2.2, levels A and AA. */
const WCAG = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

/** A coach at the desk: what they see, type and click. */
export class Coach {
  readonly page: Page;
  /** What the page complained of. */
  readonly faults: string[] = [];
  readonly #origin: string;

  private constructor(page: Page, origin: string) {
    this.page = page;
    this.#origin = origin;
    page.on("pageerror", (error) => this.faults.push(error.message));
    page.on("console", (line) => {
      // What the server refuses, or a lost connection, is no fault of the page.
      if (line.type() === "error" && !line.text().startsWith("Failed to load resource")) this.faults.push(line.text());
    });
  }

  static async sit(browser: Browser, origin: string, options: BrowserContextOptions = {}): Promise<Coach> {
    const context = await browser.newContext({
      viewport: { width: 1440, height: 900 },
      timezoneId: "UTC",
      locale: "en-GB",
      ...options,
    });
    context.setDefaultTimeout(PATIENCE_MS);
    return new Coach(await context.newPage(), origin);
  }

  async open(path: string): Promise<void> {
    await this.page.goto(this.#origin + path);
    await this.page.locator("h1").waitFor();
  }

  async press(...keys: readonly string[]): Promise<void> {
    for (const key of keys) await this.page.keyboard.press(key);
  }

  button(name: string | RegExp): Locator {
    return this.page.getByRole("button", { name });
  }

  /** Waits until a text can be seen. */
  async sees(text: string | RegExp): Promise<void> {
    await this.page.getByText(text).first().waitFor();
  }

  /** Waits until a reader of the screen is told something. */
  async hears(text: RegExp): Promise<void> {
    await this.page.getByRole("status").filter({ hasText: text }).first().waitFor({ state: "attached" });
  }

  /** Name of what has the focus. */
  async focus(): Promise<string> {
    return await this.page.evaluate(() => {
      const { activeElement: at } = document;
      return at?.getAttribute("aria-label") ?? at?.textContent ?? "";
    });
  }

  /** Titles of the decisions that are shown, answered ones with what was answered. */
  async titles(): Promise<readonly string[]> {
    return await this.page.locator("main li[data-row] h3").allTextContents();
  }

  /**
   * What breaks WCAG 2.2 AA, as far as a machine can tell.
   *
   * @param rule only this one, where nothing else can differ
   */
  async wrongs(rule?: string): Promise<readonly string[]> {
    const axe = new AxeBuilder({ page: this.page });
    const { violations } = await (rule === undefined ? axe.withTags(WCAG) : axe.withRules(rule)).analyze();
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(" ")).join(", ")}`);
  }

  /** Pixels by which the page is wider than its window. */
  async overflow(): Promise<number> {
    return await this.page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  }

  async leave(): Promise<void> {
    await this.page.context().close();
  }
}

import type { StaveEvent } from "@stave/core/model";
import type { Browser, BrowserContext, BrowserContextOptions, Locator, Page } from "playwright-core";

import { NOON } from "./gym.ts";

/** Longest that a page may take to show something, on a busy machine. */
const PATIENCE_MS = 20_000;

/** A script for the page: its clock shows `now` when it is opened, and goes on from there. */
function clockScript(now: number): string {
  return `{
    const Real = Date;
    const ahead = ${now} - Real.now();
    globalThis.Date = class extends Real {
      constructor(...parts) {
        if (parts.length === 0) super(Real.now() + ahead);
        else super(...parts);
      }
      static now() {
        return Real.now() + ahead;
      }
    };
  }`;
}

/** A phone as its person holds it: what they see and tap. */
export class PhoneInHand {
  readonly context: BrowserContext;
  page: Page;
  /** What the page complained of. */
  readonly faults: string[] = [];
  readonly #origin: string;

  private constructor(context: BrowserContext, page: Page, origin: string) {
    this.context = context;
    this.page = page;
    this.#origin = origin;
    this.#watch();
  }

  /** @param now what its clock shows when a page is opened, epoch milliseconds */
  static async take(
    browser: Browser,
    origin: string,
    options: BrowserContextOptions = {},
    now: number = NOON,
  ): Promise<PhoneInHand> {
    const context = await browser.newContext({
      viewport: { width: 390, height: 844 },
      hasTouch: true,
      timezoneId: "UTC",
      locale: "en-GB",
      ...options,
    });
    context.setDefaultTimeout(PATIENCE_MS);
    await context.addInitScript({ content: clockScript(now) });
    return new PhoneInHand(context, await context.newPage(), origin);
  }

  #watch(): void {
    this.page.on("pageerror", (error) => this.faults.push(error.message));
    this.page.on("console", (line) => {
      // A refused connection is no fault of the page.
      if (line.type() === "error" && !line.text().includes("net::ERR")) this.faults.push(line.text());
    });
  }

  button(name: string | RegExp): Locator {
    return this.page.getByRole("button", typeof name === "string" ? { name, exact: true } : { name });
  }

  async tap(name: string | RegExp): Promise<void> {
    await this.button(name).first().click();
  }

  async sees(text: string | RegExp): Promise<void> {
    await this.page.getByText(text).first().waitFor();
  }

  /** Opens a link and puts the plan on the phone; done when the phone can do without the network. */
  async link(path: string): Promise<void> {
    await this.page.goto(this.#origin + path);
    await this.tap("Put my plan on this phone");
    await this.sees(/your sessions/);
    await this.page.evaluate(async () => {
      await navigator.serviceWorker.ready;
    });
  }

  /** Opens the page as somebody does who takes the phone out of the pocket. */
  async open(): Promise<void> {
    await this.page.goto(`${this.#origin}/go/`);
  }

  /** The page's process dies with no word to the page; then it is opened again. */
  async die(): Promise<void> {
    const dead = this.page;
    const protocol = await this.context.newCDPSession(dead);
    const crashed = new Promise<void>((gone) => dead.once("crash", () => gone()));
    // The answer never comes: whoever would give it is dead.
    void protocol.send("Page.crash").catch(() => undefined);
    await crashed;
    this.page = await this.context.newPage();
    this.#watch();
    await dead.close();
    await this.open();
  }

  /** One tap on Done, and the page has gone on. */
  async done(): Promise<void> {
    const before = await this.progress();
    await this.tap("Done");
    await this.until(async () => (await this.progress()) !== before);
  }

  /** Starts the first session, and passes what comes before its first set. */
  async start(): Promise<void> {
    await this.tap(/^(Start|Go on)/);
    await this.button(/^(Warm, go on|Done)$/).waitFor();
    if (await this.button("Warm, go on").isVisible()) await this.tap("Warm, go on");
    await this.button("Done").waitFor();
  }

  /** Goes on until no set is left, and ends the session. */
  async finish(): Promise<void> {
    for (;;) {
      await this.button(/^(Done|Done, go on|End the session)$/).waitFor();
      if (await this.button("End the session").isVisible()) break;
      if (await this.button("Done, go on").isVisible()) {
        await this.tap("Done, go on");
        await this.button("End the session").waitFor();
      } else await this.done();
    }
    await this.tap("End the session");
    await this.sees(/your sessions/);
  }

  /** Sends what waits, as the phone does when the network comes back. */
  async networkComesBack(): Promise<void> {
    await this.page.evaluate(() => dispatchEvent(new Event("online")));
  }

  /** @returns "4 of 22 sets" */
  async progress(): Promise<string> {
    return /\d+ of \d+ sets?/.exec(await this.screen())?.[0] ?? "";
  }

  /** @returns all that can be read on the screen */
  async screen(): Promise<string> {
    return (await this.page.locator("main").textContent()) ?? "";
  }

  async title(): Promise<string> {
    return (await this.page.getByRole("heading", { level: 1 }).first().textContent()) ?? "";
  }

  /** @returns what somebody would have to set again if it were lost: titles, numbers, loads, choices */
  async state(): Promise<string> {
    return await this.page.evaluate(() => {
      const all = <One extends Element>(selector: string) => [...document.querySelectorAll<One>(selector)];
      return JSON.stringify({
        titles: all("h1, h2, h1 + p").map((title) => title.textContent),
        numbers: all<HTMLInputElement>("input").map(({ value }) => value),
        loads: all<HTMLSelectElement>("select").map(({ selectedOptions }) => selectedOptions[0]?.textContent),
        chosen: all("[aria-pressed=true]").map((one) => one.getAttribute("aria-label") ?? one.textContent),
        taps: all("button").map((one) => one.getAttribute("aria-label") ?? one.textContent),
      });
    });
  }

  /** @returns events that the phone keeps, by what became of them */
  async kept(): Promise<readonly { readonly fate: string; readonly event: StaveEvent }[]> {
    return await this.page.evaluate(
      () =>
        new Promise((found, failed) => {
          const opening = indexedDB.open("stave-floor");
          opening.onerror = failed;
          opening.onsuccess = () => {
            const all = opening.result.transaction("events").objectStore("events").getAll();
            all.onerror = failed;
            all.onsuccess = () => {
              opening.result.close();
              found(all.result);
            };
          };
        }),
    );
  }

  /** Waits for something that is no element. */
  async until(holds: () => Promise<boolean>): Promise<void> {
    for (const end = Date.now() + PATIENCE_MS; !(await holds()); ) {
      if (Date.now() > end) throw new Error(`This did not come; the screen says: ${await this.screen()}`);
      await new Promise((again) => setTimeout(again, 20));
    }
  }

  async close(): Promise<void> {
    await this.context.close();
  }
}

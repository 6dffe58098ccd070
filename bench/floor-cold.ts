import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { Gym } from "../web/src/floor/testing/gym.ts";
import { PhoneInHand } from "../web/src/floor/testing/phone-in-hand.ts";
import { openChromium } from "../web/src/testing/open-chromium.ts";
import { median, RUNS } from "./clock.ts";
import type { Measure } from "./measure.ts";

/** One button, and a worker that keeps it: the least that a page which opens with no network can be. */
const BARE_PAGE = `<!doctype html><html lang="en"><title>Bare</title><body><script>
const button = document.createElement("button");
button.textContent = "Start";
document.body.append(button);
void navigator.serviceWorker.register("worker.js");
</script></body></html>`;
const BARE_WORKER = `
self.addEventListener("install", (event) => event.waitUntil(caches.open("bare").then((cache) => cache.add("./"))));
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));
self.addEventListener("fetch", (event) => event.respondWith(caches.match("./").then((kept) => kept ?? fetch(event.request))));
`;

interface Bare {
  readonly origin: string;
  stop(): Promise<void>;
}

async function serveBare(): Promise<Bare> {
  const server = createServer((request, response) => {
    const worker = request.url === "/worker.js";
    response.setHeader("content-type", worker ? "text/javascript" : "text/html");
    response.end(worker ? BARE_WORKER : BARE_PAGE);
  });
  await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
  return {
    origin: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    stop: () =>
      new Promise((stopped) => {
        server.close(() => stopped());
        server.closeAllConnections();
      }),
  };
}

/** Waits until the page's worker has it whole. */
async function workerReady(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
}

/** @returns milliseconds from the address to the first control that can be tapped, in a new page */
async function coldStart(context: BrowserContext, address: string): Promise<number> {
  const page = await context.newPage();
  const before = performance.now();
  await page.goto(address, { waitUntil: "commit" });
  await page
    .getByRole("button", { name: /^Start/ })
    .first()
    .click({ trial: true });
  const took = performance.now() - before;
  await page.close();
  return took;
}

async function times(browser: Browser): Promise<{ readonly ours: number; readonly bare: number }> {
  const gym = await Gym.open();
  const bare = await serveBare();
  const phone = await PhoneInHand.take(browser, gym.way.origin);
  await phone.link(await gym.link());
  await phone.page.close();
  const page = await phone.context.newPage();
  await page.goto(bare.origin);
  await workerReady(page);
  await page.close();
  await gym.closeServer();
  await bare.stop();
  const ours: number[] = [];
  const theirs: number[] = [];
  // In turn, so that both meet the same machine; the first of each is not counted.
  for (let run = 0; run <= RUNS; run++) {
    ours.push(await coldStart(phone.context, `${gym.way.origin}/go/`));
    theirs.push(await coldStart(phone.context, bare.origin));
  }
  await phone.close();
  await gym.openServer();
  await gym.end();
  return { ours: median(ours.slice(1)), bare: median(theirs.slice(1)) };
}

/** A cold start of the phone's page with the servers stopped, against a bare page in the same browser. */
export const floorCold: Measure = {
  name: "floor/cold",
  async run() {
    const browser = await openChromium();
    try {
      const { ours, bare } = await times(browser);
      return {
        name: "floor/cold",
        value: ours,
        unit: "ms",
        baseline: "a bare page with one button, kept by a worker of its own",
        baselineValue: bare,
        ratio: ours / bare,
        n: RUNS,
      };
    } finally {
      await browser.close();
    }
  },
};

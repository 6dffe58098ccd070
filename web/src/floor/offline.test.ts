import type { EventsInput, EventsOutput } from "@stave/core/api";
import type { StaveEvent } from "@stave/core/model";
import type { Browser } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { openChromium } from "../testing/open-chromium.ts";
import { Gym, NOON } from "./testing/gym.ts";
import { PhoneInHand } from "./testing/phone-in-hand.ts";

const HOUR = 3_600_000;

let browser: Browser;
let gym: Gym;
let phone: PhoneInHand;
beforeAll(async () => {
  browser = await openChromium();
});
afterAll(() => browser.close());
beforeEach(async () => {
  gym = await Gym.open();
  phone = await PhoneInHand.take(browser, gym.way.origin);
});
afterEach(async () => {
  expect(phone.faults).toEqual([]);
  expect(gym.faults).toEqual([]);
  await phone.close();
  await gym.end();
});

const sorted = (ids: readonly string[]) => [...ids].sort();
const ids = (events: readonly { readonly id: string }[]) => sorted(events.map(({ id }) => id));
const about = ({ kind, of }: StaveEvent) => `${kind} ${of?.slot ?? ""} ${of?.set ?? ""}`.trim();

describe("with no network", () => {
  test("a cold start opens the plan, and a deep or old address too, with the server really stopped", async () => {
    await phone.link(await gym.link());
    await gym.closeServer();
    await phone.page.close();
    phone.page = await phone.context.newPage();
    await phone.open();
    await phone.sees("All of it");
    await phone.page.goto(`${gym.way.origin}/go/anything?at=all`);
    await phone.sees("All of it");
    await phone.start();
    expect(await phone.progress()).toBe("0 of 22 sets");
    await gym.openServer();
  });

  test("22 sets, answers lost, sent again in other batches and orders: 25 events stored, each once", async () => {
    await phone.link(await gym.link());
    await gym.closeServer();
    await phone.start();
    for (let set = 0; set < 10; set++) await phone.done();
    await phone.sees("saved on this phone · 11 to send");

    // The first batch arrives, and the answer is lost on the way.
    await gym.openServer();
    gym.way.over = (path) => path.endsWith("/events");
    gym.way.weather = "answers lost";
    await phone.networkComesBack();
    await phone.until(async () => (await gym.stored()).length === 11);
    await gym.closeServer();

    for (let set = 10; set < 22; set++) await phone.done();
    await phone.tap("Whole session");
    await phone.tap(/^set 1: done/);
    await phone.tap("Repetitions: one fewer");
    await phone.tap("Save the change");
    await phone.finish();
    await phone.sees("saved on this phone · 25 to send");
    await phone.die();
    await phone.sees("saved on this phone · 25 to send");

    await gym.openServer();
    await phone.networkComesBack();
    await phone.until(async () => (await gym.stored()).length === 25);
    gym.way.weather = "open";
    await phone.networkComesBack();
    await phone.sees("sent to your coach");
    const stored = await gym.stored();
    expect(stored).toHaveLength(25);
    expect(new Set(stored.map(({ n }) => n)).size).toBe(25);
    expect(stored.filter(({ kind, replaces }) => kind === "set-done" && replaces === undefined)).toHaveLength(22);

    // A network that sends everything again, cut and turned round.
    const sent = gym.way.passed.filter(({ method, path }) => method === "POST" && path.endsWith("/events"));
    const token = sent[0]!.headers.authorization!;
    const again = sent.flatMap(({ body }) => (JSON.parse(body.toString()) as EventsInput).events).reverse();
    expect(new Set(again.map(({ id }) => id)).size).toBe(25);
    for (let at = 0; at < again.length; at += 7) {
      const response = await gym.post("/events", { events: again.slice(at, at + 7) }, { authorization: token });
      const { acks } = (await response.json()) as EventsOutput;
      expect(new Set(acks.map(({ ack }) => ack))).toEqual(new Set(["known"]));
    }
    expect(ids(await gym.stored())).toEqual(ids(stored));
  });

  test("the page is killed between every two taps, and nothing that was on the screen is lost", async () => {
    await phone.link(await gym.link());
    await gym.closeServer();
    const taps: readonly (string | RegExp)[] = [
      /^Start/,
      "Warm, go on",
      "Repetitions: one fewer",
      "Repetitions: one fewer",
      "Load: lighter",
      "2 more",
      "Done",
      "Rest 1:30",
      "Stop",
      "This hurts",
      "Knee",
      "6",
      "It does not hurt",
      "Easier",
      "Take this one",
      "Done",
      "This hurts",
      "Low back",
      "3",
      "Tell my coach",
      "Go on",
      "Leave this set out",
      "Whole session",
      "End here for today",
      "Stay",
    ];
    for (const tap of taps) {
      const before = await phone.state();
      await phone.tap(tap);
      await phone.until(async () => (await phone.state()) !== before);
      const shown = await phone.state();
      await phone.die();
      await phone.until(async () => (await phone.state()) === shown);
    }
    const kept = (await phone.kept()).map(({ event }) => event).sort((a, b) => a.n - b.n);
    expect(kept.map(({ kind }) => kind).filter((kind) => kind !== "swapped")).toEqual([
      "session-started",
      "set-done",
      "set-done",
      "hurt",
      "set-left-out",
    ]);
    expect(kept.find(({ kind }) => kind === "set-done")!.data).toMatchObject({ reps: 8, reserve: 2 });
    await gym.openServer();
  });
});

describe("untouched values", () => {
  test("are sent as asked and not said, and never as numbers", async () => {
    await phone.link(await gym.link());
    await phone.start();
    await phone.finish();
    await phone.until(async () => (await gym.stored()).length === 24);
    const sets = (await gym.stored()).filter(({ kind }) => kind === "set-done");
    expect(sets).toHaveLength(22);
    expect(JSON.stringify(sets.map(({ data }) => data))).not.toMatch(/:\d/);
  });
});

describe("a clock an hour behind", () => {
  test("changes no order: the later word stands, here and on the server", async () => {
    await phone.link(await gym.link());
    await phone.start();
    await phone.done();
    await phone.until(async () => (await gym.stored()).some(({ kind }) => kind === "set-done"));
    await phone.close();

    phone = await PhoneInHand.take(browser, gym.way.origin, {}, NOON - HOUR);
    await phone.link(await gym.link());
    await phone.start();
    await phone.sees("1 of 22 sets");
    await phone.tap("Whole session");
    await phone.tap(/^set 1: done/);
    await phone.tap("Repetitions: one fewer");
    await phone.tap("Save the change");
    await phone.until(async () => (await gym.stored()).some(({ replaces }) => replaces !== undefined));
    const stored = await gym.stored();
    const correction = stored.find(({ replaces }) => replaces !== undefined)!;
    const first = stored.find(({ id }) => id === correction.replaces)!;
    expect(correction.n).toBeGreaterThan(first.n);
    expect(first.at - correction.at).toBeGreaterThan(HOUR * 0.9);
    await phone.tap("Whole session");
    await phone.sees("set 1: 9");
    const { slots } = await gym.page();
    const squat = slots.find(({ slot }) => slot === "squat")!.past.at(-1)!;
    expect(squat.strokes[0]).toMatchObject({ state: "done", done: { both: 9 } });
  });
});

describe("the plan changes on the server in mid-session", () => {
  test("nothing moves under the thumb; what waits is told when its turn comes; the rest comes after the session", async () => {
    await phone.link(await gym.link());
    await phone.start();
    await phone.tap("Repetitions: one fewer");
    await phone.until(async () => (await phone.state()).includes('"9"'));
    const shown = await phone.state();
    await gym.decide({
      id: "desk-decision-0001",
      person: "ana",
      kind: "pinned",
      patch: { slot: "row", change: "pause" },
    });
    await phone.networkComesBack();
    await phone.until(async () => gym.way.passed.filter(({ path }) => path.endsWith("/bundle")).length >= 2);
    await phone.page.waitForTimeout(300);
    expect(await phone.state()).toBe(shown);

    for (let set = 0; set < 4; set++) await phone.done();
    await phone.sees(/row waits/i);
    await phone.tap("Go on");
    await phone.button("Done").waitFor();
    expect(await phone.title()).not.toMatch(/row/i);
    await phone.finish();
    await phone.sees("sent to your coach");
    const stored = (await gym.stored()).filter(({ device }) => device !== "stave-desk");
    expect(stored.filter(({ of, kind }) => kind === "set-done" && of?.slot === "row")).toEqual([]);
    const before = new Set(stored.map(({ of }) => of!.plan));
    expect(before.size).toBe(1);

    await phone.tap(/^Start/);
    await phone.until(async () => (await gym.stored()).filter(({ kind }) => kind === "session-started").length === 2);
    const after = (await gym.stored()).filter(({ kind }) => kind === "session-started").map(({ of }) => of!.plan);
    expect(after[1]).not.toBe(after[0]);
  });
});

describe("two at once", () => {
  test("two phones with no network merge: each shows all, each event is stored once", async () => {
    const other = await PhoneInHand.take(browser, gym.way.origin);
    await phone.link(await gym.link());
    await other.link(await gym.link());
    await gym.closeServer();
    await phone.start();
    for (let set = 0; set < 3; set++) await phone.done();
    await other.start();
    await other.tap("Repetitions: one more");
    await other.done();
    await other.tap("Whole session");
    await other.page.getByRole("button", { name: "set 3", exact: true }).last().click();
    await other.done();

    await gym.openServer();
    for (const one of [phone, other, phone, other]) {
      await one.networkComesBack();
      await one.sees("sent to your coach");
    }
    for (const one of [phone, other]) {
      await one.until(async () => (await one.progress()) === "4 of 22 sets");
      expect(ids((await one.kept()).map(({ event }) => event))).toEqual(ids(await gym.stored()));
      await one.tap("Whole session");
      await one.sees("set 2: done");
    }
    // Of two words on the first set the later one stands, on both phones alike.
    const first = /set 1[^s]*/;
    expect(first.exec(await phone.screen())?.[0]).toBe(first.exec(await other.screen())?.[0]);
    expect(other.faults).toEqual([]);
    await other.close();
  });

  test("a set that is tapped twice at once is said once, and another tab shows it", async () => {
    await phone.link(await gym.link());
    await phone.start();
    const second = await phone.context.newPage();
    await second.goto(`${gym.way.origin}/go/`);
    await second.getByRole("button", { name: "Done", exact: true }).waitFor();
    await phone.button("Done").evaluate((button: HTMLButtonElement) => {
      button.click();
      button.click();
    });
    await phone.sees("1 of 22 sets");
    await second.getByText("1 of 22 sets").first().waitFor();
    await second.getByRole("button", { name: "Repetitions: one fewer" }).click();
    await phone.until(async () => (await phone.state()).includes('"9"'));
    await phone.until(async () => (await gym.stored()).length === 2);
    expect((await gym.stored()).map(about)).toEqual(["session-started", "set-done squat 0"]);
  });
});

describe("a link", () => {
  test("asks nothing of the server before the tap, leaves the address, and opens on one phone only", async () => {
    const path = await gym.link();
    const asked = () => gym.way.passed.filter(({ method }) => method === "POST").length;
    await phone.page.goto(gym.way.origin + path);
    await phone.button("Put my plan on this phone").waitFor();
    expect(asked()).toBe(0);
    expect(await phone.page.evaluate(() => location.href)).toBe(`${gym.way.origin}/go/`);

    // The answer is lost; the tap after that asks the same question and gets in.
    gym.way.over = (to) => to.endsWith("/exchange");
    gym.way.weather = "answers lost";
    await phone.tap("Put my plan on this phone");
    await phone.sees(/No network, or no answer/);
    gym.way.weather = "open";
    await phone.tap("Put my plan on this phone");
    await phone.sees(/your sessions/);
    expect(
      gym.way.passed.some(({ path: to, headers }) => `${to}${headers.referer ?? ""}`.includes(path.slice(5))),
    ).toBe(false);

    const stranger = await PhoneInHand.take(browser, gym.way.origin);
    await stranger.page.goto(gym.way.origin + path);
    await stranger.tap("Put my plan on this phone");
    await stranger.sees("This link does not work any more. Ask your coach for a new one.");
    await stranger.close();
    phone.faults.length = 0;
  });
});

describe("pain", () => {
  test("says whom to call until the server has it, and then that the coach can see it", async () => {
    await phone.link(await gym.link());
    await phone.start();
    await gym.closeServer();
    await phone.tap("This hurts");
    await phone.tap("Chest");
    await phone.tap("7");
    await phone.tap("Tell my coach");
    await phone.sees("Not sent yet. Call Imke Farrowdale on 01632 960 123.");
    await phone.sees(/^Stop now/);
    expect(await phone.button("Go on").count()).toBe(0);
    await phone.die();
    await phone.sees("Not sent yet. Call Imke Farrowdale on 01632 960 123.");
    await gym.openServer();
    await phone.networkComesBack();
    await phone.sees("Your coach can see it now.");
    expect((await gym.stored()).filter(({ kind }) => kind === "hurt").map(({ data }) => data)).toEqual([
      { where: "chest", howMuch: 7 },
    ]);
    await phone.tap("End here for today");
    expect(await phone.button("Stay").count()).toBe(0);
    await phone.tap("End the session");
    await phone.sees(/everything waits until a doctor has been asked/);
    expect(await phone.button(/^Start/).count()).toBe(0);
  });
});

describe("what the server will not take", () => {
  test("another record under the same id is a conflict: it stays, both stand where they are, and it is shown", async () => {
    await phone.link(await gym.link());
    await phone.start();
    await phone.until(async () => (await gym.stored()).length === 1);
    await gym.closeServer();
    await phone.done();
    await phone.done();
    await phone.sees("saved on this phone · 2 to send");
    const mine = (await phone.kept()).find(({ event }) => event.of?.set === 0)!.event;
    await gym.openServer();
    const token = gym.way.passed.findLast(({ headers }) => headers.authorization !== undefined)!.headers.authorization!;
    gym.way.weather = "closed";
    const other = { ...mine, data: { ...mine.data, reps: 3 } };
    expect((await gym.post("/events", { events: [other] }, { authorization: token })).status).toBe(200);
    gym.way.weather = "open";
    await phone.networkComesBack();
    await phone.sees("sent to your coach");
    await phone.tap("Whole session");
    await phone.tap("End here for today");
    await phone.tap("End the session");
    await phone.sees("One entry stands on this phone only. Show this to your coach.");
    await phone.sees(/Goblet squat, set 1: the record holds something else/);
    expect((await phone.kept()).find(({ event }) => event.id === mine.id)).toMatchObject({
      fate: "conflict",
      event: mine,
    });
    expect((await gym.stored()).find(({ id }) => id === mine.id)).toEqual(other);
  });
});
